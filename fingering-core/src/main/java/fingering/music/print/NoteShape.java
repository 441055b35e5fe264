package fingering.music.print;

import com.google.common.collect.ImmutableList;

/**
 * How a note is drawn: notehead, stem and beams. One note of a chord, often the first, has the
 * beams of the chord.
 *
 * @param head the shape of the notehead
 * @param small whether it is printed small though it is neither a grace note nor a cue note
 * @param stem the direction of the stem
 * @param beams its role in each beam, the primary beam first; empty if no beam is stated
 * @param slashed whether a stroke crosses the stem of the grace note
 */
public record NoteShape(
    Head head, boolean small, Stem stem, ImmutableList<Beam> beams, boolean slashed) {

  /** The shape of a notehead. */
  public enum Head {
    NORMAL,
    /** An open diamond, for a place that is touched lightly. */
    DIAMOND,
    /** In parentheses, for the sound of a harmonic. */
    PARENTHESES
  }

  /** The direction of a stem. */
  public enum Stem {
    UP,
    DOWN,
    /** No stem is printed. */
    NONE,
    /** The score does not say: by the usual rule. */
    AUTO
  }

  /** The role of a note in one of its beams. */
  public enum Beam {
    NONE,
    BEGIN,
    CONTINUE,
    END,
    /** A short beam to the right. */
    FORWARD_HOOK,
    /** A short beam to the left. */
    BACKWARD_HOOK
  }

  /** Its role in the primary beam: {@code NONE}, {@code BEGIN}, {@code CONTINUE} or {@code END}. */
  public Beam beam() {
    Beam first = beams.isEmpty() ? Beam.NONE : beams.get(0);
    return first == Beam.FORWARD_HOOK || first == Beam.BACKWARD_HOOK ? Beam.NONE : first;
  }
}
