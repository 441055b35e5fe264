package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.music.PlayingStyle;
import fingering.music.print.PrintedPart;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import fingering.musicxml.element.TempoWord;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.TuningMarks.PartTuning;
import fingering.musicxml.words.PositionWords;
import fingering.musicxml.words.StringWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The content of a part, in order of time.
 *
 * @param measures the measures
 * @param implicit indices of the measures that the file marks as not counted
 * @param slots the notes with a pitch
 * @param tempi the tempo marks
 * @param tempoWords the tempo words
 * @param pizzicatoChanges the changes between pizzicato and bow
 * @param styles the changes of playing style by words
 * @param strings the stretches for which words ask for one string
 * @param positions the stretches for which words name a position
 * @param tunings the tunings that the part states
 * @param print what is printed on the staff
 * @param transposes whether the part states its transposition
 * @param lowClef whether it has a clef with an 8 below
 * @param leftOut what was left out or rounded
 */
public record PartTimeline(
    ImmutableList<Measure> measures,
    ImmutableSet<Integer> implicit,
    ImmutableList<Slot> slots,
    ImmutableList<TempoMark> tempi,
    ImmutableList<TempoWord> tempoWords,
    ImmutableList<PizzicatoChange> pizzicatoChanges,
    ImmutableList<StyleChange> styles,
    ImmutableList<Stretch<StringWords.Instruction>> strings,
    ImmutableList<Stretch<PositionWords.Instruction>> positions,
    ImmutableList<PartTuning> tunings,
    PrintedPart print,
    boolean transposes,
    boolean lowClef,
    LeftOut leftOut) {

  /** The highest number of notes that may sound together; no organ has as many keys. */
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
   * A change between pizzicato and bow.
   *
   * @param start quarter notes from the start of the part
   * @param plucked whether the strings are plucked from there on
   */
  public record PizzicatoChange(BigFraction start, boolean plucked) {}

  /**
   * Words that change how notes are played.
   *
   * @param start quarter notes from the start of the part
   * @param style the style from there on
   */
  public record StyleChange(BigFraction start, PlayingStyle style) {}

  /** Returns the notes that begin at these moments and whose written notes match, in order. */
  public List<Note> starting(List<Moment> moments, Predicate<WrittenNote> condition) {
    ImmutableSet<NoteAddress> wanted =
        slots.stream()
            .flatMap(slot -> slot.notes().stream())
            .filter(condition)
            .map(WrittenNote::address)
            .collect(ImmutableSet.toImmutableSet());
    return moments.stream()
        .flatMap(moment -> moment.starting().stream())
        .filter(note -> wanted.contains(note.address()))
        .toList();
  }

  /**
   * Refuses more simultaneous notes than any music has, because the time to process them grows with
   * their square.
   *
   * @param name the part's name, for messages
   * @return this timeline
   * @throws UnreadableScoreException if too many notes begin together
   */
  public PartTimeline checkSlots(String name) {
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

  /**
   * Returns the exception for too many simultaneous notes.
   *
   * @param where the position, for the message
   */
  public static UnreadableScoreException tooMany(String where) {
    return new UnreadableScoreException(
        "More than %d notes sound together in %s: fix that measure in your notation program and export the score again."
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
