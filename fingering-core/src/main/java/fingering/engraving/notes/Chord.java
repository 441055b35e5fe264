package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import fingering.music.NoteAddress;
import fingering.music.print.NoteShape.Beam;
import fingering.music.print.NoteShape.Stem;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Sign;
import fingering.music.print.PrintedNote.Tremolo;

/**
 * Notes on one stem, or a rest.
 *
 * @param notes the notes, lowest first; a rest is alone
 * @param steps the step of each note above the lowest line of the staff
 * @param up whether the stem goes up
 * @param layer the voice that it belongs to, where a measure has more than one
 */
public record Chord(
    ImmutableList<PrintedNote> notes, ImmutableList<Integer> steps, boolean up, Layer layer) {
  /** The size of grace and cue notes. */
  private static final double SMALL = 0.66;

  /** A voice among those of a measure. */
  public enum Layer {
    /** The only voice with notes. */
    ALONE,
    /** The upper voice: stems up. */
    UPPER,
    /** The lower voice: stems down. */
    LOWER
  }

  /** The first note. */
  public PrintedNote lead() {
    return notes.get(0);
  }

  /** The address of the first note, which identifies the chord. */
  public NoteAddress address() {
    return lead().address();
  }

  /** Whether it is a rest. */
  public boolean rest() {
    return lead().rest();
  }

  /** Whether it is a grace note. */
  public boolean grace() {
    return lead().grace();
  }

  /** The size of heads, flags and accidentals: 1 for normal notes. */
  public double scale() {
    return grace() || lead().cue() || lead().shape().small() ? SMALL : 1;
  }

  /** Whether there is a stem. */
  public boolean stemmed() {
    return !rest() && lead().value().part() >= 2 && lead().shape().stem() != Stem.NONE;
  }

  /** The lowest step. */
  public int lowest() {
    return steps.get(0);
  }

  /** The highest step. */
  public int highest() {
    return steps.get(steps.size() - 1);
  }

  /** The number of beams or flags. */
  public int flags() {
    return lead().value().flags();
  }

  /** The role in each beam as printed; one note of a chord has it, often not the lowest. */
  public ImmutableList<Beam> beams() {
    for (PrintedNote note : notes) {
      if (note.shape().beam() != Beam.NONE) {
        return note.shape().beams();
      }
    }
    return ImmutableList.of();
  }

  /** The tremolo of any of its notes. */
  public Tremolo tremolo() {
    for (PrintedNote note : notes) {
      if (note.tremolo().strokes() > 0) {
        return note.tremolo();
      }
    }
    return Tremolo.NONE;
  }

  /** Whether any of its notes has a sign. */
  public boolean has(Sign sign) {
    for (PrintedNote note : notes) {
      if (note.has(sign)) {
        return true;
      }
    }
    return false;
  }

  /** The y of a step: 0 is the top line of the staff, 4 the bottom line. */
  public static double y(int step) {
    return 4 - step / 2.0;
  }

  /** The y of its highest note. */
  public double top() {
    return y(highest());
  }

  /** The y of its lowest note. */
  public double bottom() {
    return y(lowest());
  }
}
