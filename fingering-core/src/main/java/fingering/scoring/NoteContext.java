package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.List;

/**
 * What the bow, or the finger that plucks, does at a moment, whatever the fingering: all that a
 * {@link NoteRule} may know of it. Strokes that are equal cost the same with the same grip, so that
 * the search reckons them once; times are told no finer than rules can use them.
 *
 * @param plucked whether the string is plucked
 * @param slurred whether a slur joins the moment to the one before
 * @param accented whether a note that begins has an accent
 * @param grace whether these are grace notes
 * @param hundredths how long the longest note that begins sounds, in hundredths of a second, to the
 *     tenth below, and no more than {@value #LONG_ENOUGH}
 * @param trilled where the notes with a trill stand among all that sound, from 0
 * @param trilledStruck where they stand among those that begin
 * @param sounding how many notes sound
 * @param slowness how slow the music around is: {@link Slowness#slowness}
 */
public record NoteContext(
    boolean plucked,
    boolean slurred,
    boolean accented,
    boolean grace,
    long hundredths,
    ImmutableIntArray trilled,
    ImmutableIntArray trilledStruck,
    int sounding,
    long slowness) {
  /** A note longer than this asks for nothing more, in hundredths of a second. */
  public static final long LONG_ENOUGH = 200;

  private static final long TENTH = 100_000;

  /** The stroke of a moment. */
  public static NoteContext of(Moment moment) {
    ImmutableList<Note> starting = moment.starting();
    boolean accented = false;
    boolean trills = false;
    for (int i = 0; i < starting.size(); i++) {
      Marks marks = starting.get(i).marks();
      accented |= marks.accent();
      trills |= marks.trill().isPresent();
    }
    return new NoteContext(
        moment.pizzicato(),
        moment.slurred(),
        accented,
        moment.grace(),
        Math.min(LONG_ENOUGH, moment.soundMicros() / TENTH * 10),
        trills ? trilled(starting, moment.sounding()) : ImmutableIntArray.of(),
        trills ? trilled(starting, starting) : ImmutableIntArray.of(),
        starting.size() + moment.held().size(),
        Slowness.slowness(moment));
  }

  private static ImmutableIntArray trilled(List<Note> starting, List<Note> among) {
    ImmutableIntArray.Builder trilled = ImmutableIntArray.builder();
    for (Note note : starting) {
      if (note.marks().trill().isPresent()) {
        trilled.add(among.indexOf(note));
      }
    }
    return trilled.build();
  }

  /** Which placements of a grip are for notes with a trill. */
  public ImmutableIntArray trilled(Grip grip) {
    return grip.placements().size() == sounding ? trilled : trilledStruck;
  }

  /** The same but for the pace, as if the music did not sing. */
  public NoteContext unsung() {
    return slowness == 0
        ? this
        : new NoteContext(
            plucked, slurred, accented, grace, hundredths, trilled, trilledStruck, sounding, 0);
  }

  /** A number for all of it but what is trilled and {@link #slowness}; equal numbers mean equal. */
  public long code() {
    long code = hundredths;
    code = code << 8 | sounding;
    code = code << 1 | (plucked ? 1 : 0);
    code = code << 1 | (slurred ? 1 : 0);
    code = code << 1 | (accented ? 1 : 0);
    return code << 1 | (grace ? 1 : 0);
  }
}
