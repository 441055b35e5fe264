package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.PrintedPart;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import fingering.musicxml.element.WrittenNote;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * All that a part holds, in order of time, as the file has it.
 *
 * @param measures its measures
 * @param implicit indices of the measures that the file marks as not counted
 * @param slots its pitched notes
 * @param tempi the tempi that stand in it
 * @param pluckings where it changes between bow and plucking
 * @param strings where words ask for one string
 * @param positions where words name a position
 * @param tunings the tunings it tells
 * @param print what is printed on its staff
 * @param transposes whether it says how it transposes
 * @param lowClef whether it has a clef with an 8 below
 * @param microtones how many pitches were brought to the nearest semitone
 * @param unpitched how many notes without pitch were left out
 */
public record PartTimeline(
    ImmutableList<Measure> measures,
    ImmutableSet<Integer> implicit,
    ImmutableList<Slot> slots,
    ImmutableList<TempoMark> tempi,
    ImmutableList<Plucking> pluckings,
    ImmutableList<StringMarks.Stretch> strings,
    ImmutableList<PositionMarks.Stretch> positions,
    ImmutableList<TuningMarks.Told> tunings,
    PrintedPart print,
    boolean transposes,
    boolean lowClef,
    int microtones,
    int unpitched) {

  /** So many notes may sound together; an organ has not so many keys. */
  public static final int MOST_TOGETHER = 1_000;

  private static final Comparator<WrittenNote> IN_TIME =
      Comparator.comparing(WrittenNote::start, Quarters.ORDER)
          .thenComparing(note -> !note.grace())
          .thenComparing(WrittenNote::address);

  /**
   * Notes that begin together: all main notes of an onset, or the grace notes of one stem.
   *
   * @param start quarter notes from the start of the part
   * @param grace whether they are grace notes
   * @param notes the notes, in document order
   */
  public record Slot(BigFraction start, boolean grace, ImmutableList<WrittenNote> notes) {}

  /**
   * A change between bow and plucking.
   *
   * @param start quarter notes from the start of the part
   * @param plucked whether the strings are plucked from there on
   */
  public record Plucking(BigFraction start, boolean plucked) {}

  /** Of some moments the struck notes that are written like this, in order. */
  public List<Note> starting(List<Moment> moments, Predicate<WrittenNote> written) {
    ImmutableSet<NoteAddress> wanted =
        slots.stream()
            .flatMap(slot -> slot.notes().stream())
            .filter(written)
            .map(WrittenNote::address)
            .collect(ImmutableSet.toImmutableSet());
    return moments.stream()
        .flatMap(moment -> moment.starting().stream())
        .filter(note -> wanted.contains(note.address()))
        .toList();
  }

  /**
   * Refuses more notes at once than any music has: what is done with each and every other takes
   * longer and longer.
   *
   * @param name the part's name, for messages
   * @return this timeline
   * @throws UnreadableScoreException if too many notes begin together
   */
  public PartTimeline withoutClusters(String name) {
    for (Slot slot : slots) {
      if (slot.notes().size() > MOST_TOGETHER) {
        throw tooMany("%s, measure %s".formatted(name, number(slot.notes().get(0))));
      }
    }
    return this;
  }

  private String number(WrittenNote note) {
    return measures.get(note.measure()).number();
  }

  /** What is told where too many notes sound together. */
  public static UnreadableScoreException tooMany(String where) {
    return new UnreadableScoreException(
        "More than %d notes sound together in %s: mend that measure in your notation program and export the score again."
            .formatted(MOST_TOGETHER, where));
  }

  /** Sorts notes by time and groups those that begin together. */
  public static ImmutableList<Slot> slots(List<WrittenNote> notes) {
    ImmutableList.Builder<Slot> slots = ImmutableList.builder();
    List<WrittenNote> together = new ArrayList<>();
    for (WrittenNote note : ImmutableList.sortedCopyOf(IN_TIME, notes)) {
      if (!together.isEmpty() && !joins(note, together.get(0))) {
        slots.add(slot(together));
        together.clear();
      }
      together.add(note);
    }
    if (!together.isEmpty()) {
      slots.add(slot(together));
    }
    return slots.build();
  }

  private static boolean joins(WrittenNote note, WrittenNote first) {
    return note.start().equals(first.start())
        && note.grace() == first.grace()
        && (!note.grace() || note.chord());
  }

  private static Slot slot(List<WrittenNote> notes) {
    WrittenNote first = notes.get(0);
    return new Slot(first.start(), first.grace(), ImmutableList.copyOf(notes));
  }
}
