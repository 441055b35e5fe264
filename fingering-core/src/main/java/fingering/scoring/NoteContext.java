package fingering.scoring;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.fingerboard.Grip;
import fingering.music.Marks;
import fingering.music.Moment;
import fingering.music.Note;
import java.util.List;

/**
 * The music at one moment as a {@link NoteRule} sees it. Equal contexts cost the same with the same
 * grip, so the search computes each cost once; times are therefore no more precise than the rules
 * need.
 *
 * @param plucked whether the string is plucked
 * @param slurred whether a slur joins the moment to the one before
 * @param accented whether a note that begins has an accent
 * @param grace whether the notes are grace notes
 * @param hundredths length of the longest note that begins, in hundredths of a second, rounded down
 *     to a tenth of a second, at most 200. For a rule, a note of four seconds is as long as one of
 *     two
 * @param trilled indices of the trilled notes among all sounding notes, from 0
 * @param trilledStruck indices of the trilled notes among the notes that begin, from 0
 * @param sounding number of sounding notes
 * @param top MIDI number of the highest note that begins; not part of the {@link #code}, because
 *     the grips of a moment are those of its notes
 * @param pace the pace of the music
 * @param singing how much the line sings, 0 to 2
 * @param line the line around the note
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
    int top,
    Pace pace,
    int singing,
    LineContext line) {
  /** The cap on the length of a note, in hundredths of a second; no rule distinguishes more. */
  public static final long MAX_HUNDREDTHS = 200;

  private static final long TENTH_MICROS = 100_000;

  /** The context of a moment. */
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
        Math.min(MAX_HUNDREDTHS, moment.soundMicros() / TENTH_MICROS * 10),
        trills ? trilled(starting, moment.sounding()) : ImmutableIntArray.of(),
        trills ? trilled(starting, starting) : ImmutableIntArray.of(),
        starting.size() + moment.held().size(),
        starting.get(starting.size() - 1).midi(),
        Pace.of(moment.surroundings().paceMicros()),
        Singing.of(moment),
        LineContext.of(moment));
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

  /** The indices of a grip's placements that play trilled notes. */
  public ImmutableIntArray trilled(Grip grip) {
    return grip.placements().size() == sounding ? trilled : trilledStruck;
  }

  /**
   * A number for everything except {@link #line}, {@link #trilled} and {@link #trilledStruck}: two
   * contexts have the same number only if the rest is equal.
   */
  public long code() {
    long code = hundredths;
    code = code << 8 | sounding;
    code = code << 2 | pace.level();
    code = code << 2 | singing;
    code = code << 1 | (plucked ? 1 : 0);
    code = code << 1 | (slurred ? 1 : 0);
    code = code << 1 | (accented ? 1 : 0);
    return code << 1 | (grace ? 1 : 0);
  }
}
