package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.OneString.End;
import fingering.musicxml.PartTimeline.Slot;
import fingering.musicxml.StringWords.Asked;
import fingering.musicxml.StringWords.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Bracket;
import org.audiveris.proxymusic.Dashes;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.StartStopContinue;

/**
 * Collects where words ask for one string, and how long (common practice, no source). A line
 * printed behind them, dashed or not, tells it. Without one they hold to the next words that name
 * strings or end such words, or to a quarter rest or longer, where the phrase ends; but words that
 * give the strings back show that they held till there, over any rest shorter than a measure.
 * {@code ord.} and {@code nat.} end a place of the bow where one was asked for since, else the
 * string.
 */
final class StringMarks {

  /**
   * Words for one string, and the time they hold for.
   *
   * @param words as printed
   * @param string the string, by its letter or number
   * @param measure number of the measure in which they stand, as printed
   * @param start quarter notes from the start of the part
   * @param end where they hold no more
   * @param why what ends them
   * @param voice the voice they are for, empty for all
   */
  record Stretch(
      String words,
      String string,
      String measure,
      BigFraction start,
      BigFraction end,
      End why,
      String voice) {
    /** Whether a note is to be played on the string. */
    boolean holds(WrittenNote note) {
      return Quarters.compare(note.start(), start) >= 0
          && Quarters.compare(note.start(), end) < 0
          && (voice.isEmpty() || voice.equals(note.voice()));
    }
  }

  /** The sign of a line: dashed or bracket, and its number. */
  private record Line(boolean dashed, Optional<Integer> number) {}

  /** Words at their place. */
  private static final class Event {
    private final Asked asked;
    private final String words;
    private final String measure;
    private final BigFraction start;
    private final String voice;
    private boolean line;
    private Optional<BigFraction> lineEnd = Optional.empty();

    Event(Asked asked, String words, String measure, BigFraction start, String voice) {
      this.asked = asked;
      this.words = words;
      this.measure = measure;
      this.start = start;
      this.voice = voice;
    }

    private boolean isString() {
      return asked.kind() == Kind.STRING;
    }
  }

  /** A rest in which a phrase ends: a quarter note. */
  private static final BigFraction BREATH = BigFraction.ONE;

  private final List<Event> events = new ArrayList<>();
  private final Map<Line, Event> lines = new HashMap<>();

  /**
   * Takes a direction.
   *
   * @param words its words, empty where it has none
   * @param measure number of the measure in which it stands, as printed
   * @param start where it stands, in quarter notes from the start of the part
   * @param voice the voice it is for, empty for all
   */
  void direction(
      Direction direction, String words, String measure, BigFraction start, String voice) {
    List<Line> started = new ArrayList<>();
    for (DirectionType type : direction.getDirectionType()) {
      Dashes dashes = type.getDashes();
      Bracket bracket = type.getBracket();
      if (dashes != null) {
        line(
            new Line(true, Optional.ofNullable(dashes.getNumber())),
            dashes.getType(),
            start,
            started);
      }
      if (bracket != null) {
        line(
            new Line(false, Optional.ofNullable(bracket.getNumber())),
            bracket.getType(),
            start,
            started);
      }
    }
    Optional<Event> named = Optional.empty();
    for (Asked asked : StringWords.standard().read(words, !started.isEmpty())) {
      Event event = new Event(asked, words.strip().replaceAll("\\s+", " "), measure, start, voice);
      events.add(event);
      named = event.isString() ? Optional.of(event) : named;
    }
    // A line by itself belongs to the words just before it at the same place.
    Optional<Event> owner = words.isBlank() ? lastAt(start, voice) : named;
    owner.ifPresent(
        event -> {
          for (Line line : started) {
            event.line = true;
            lines.put(line, event);
          }
        });
  }

  private Optional<Event> lastAt(BigFraction start, String voice) {
    if (events.isEmpty()) {
      return Optional.empty();
    }
    Event last = events.get(events.size() - 1);
    return last.isString() && !last.line && last.start.equals(start) && last.voice.equals(voice)
        ? Optional.of(last)
        : Optional.empty();
  }

  private void line(Line line, StartStopContinue type, BigFraction at, List<Line> started) {
    if (type == StartStopContinue.START) {
      lines.remove(line);
      started.add(line);
    } else if (type == StartStopContinue.STOP) {
      Event event = lines.remove(line);
      if (event != null && Quarters.compare(at, event.start) > 0) {
        event.lineEnd = Optional.of(at);
      }
    }
  }

  /** The stretches for which one string is asked for, in order of time. */
  ImmutableList<Stretch> stretches(ImmutableList<Slot> slots, List<Measure> measures) {
    List<Event> inTime = new ArrayList<>(events);
    inTime.sort(Comparator.comparing(event -> event.start, Quarters.ORDER));
    ImmutableList.Builder<Stretch> found = ImmutableList.builder();
    for (int i = 0; i < inTime.size(); i++) {
      if (inTime.get(i).isString()) {
        found.add(stretch(inTime, i, slots, measures));
      }
    }
    return found.build();
  }

  private static Stretch stretch(
      List<Event> events, int at, ImmutableList<Slot> slots, List<Measure> measures) {
    Event words = events.get(at);
    Optional<Event> next = closing(events, at);
    BigFraction until =
        words.lineEnd.or(() -> next.map(event -> event.start)).orElse(endOf(measures));
    End why = words.lineEnd.isPresent() ? End.LINE : next.isPresent() ? End.WORDS : End.PART;
    if (words.lineEnd.isEmpty()) {
      boolean givenBack = next.map(event -> !event.isString()).orElse(false);
      Optional<BigFraction> rest = rest(words, until, givenBack, slots, measures);
      if (rest.isPresent()) {
        until = rest.get();
        why = End.REST;
      }
    }
    return new Stretch(
        words.words, words.asked.string(), words.measure, words.start, until, why, words.voice);
  }

  /** The next words that end those. */
  private static Optional<Event> closing(List<Event> events, int at) {
    Event words = events.get(at);
    boolean place = placeBefore(events, at);
    for (Event event : events.subList(at + 1, events.size())) {
      boolean sameVoice =
          event.voice.isEmpty() || words.voice.isEmpty() || event.voice.equals(words.voice);
      switch (event.asked.kind()) {
        case STRING, ENDS -> {
          if (sameVoice) {
            return Optional.of(event);
          }
        }
        case PLACE -> place = true;
        case BOW -> place = false;
        case USUAL -> {
          if (!place && sameVoice) {
            return Optional.of(event);
          }
          place = false;
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a place of the bow is in force where words stand. */
  private static boolean placeBefore(List<Event> events, int at) {
    boolean place = false;
    for (Event event : events.subList(0, at)) {
      place =
          switch (event.asked.kind()) {
            case PLACE -> true;
            case BOW, USUAL -> false;
            case STRING, ENDS -> place;
          };
    }
    return place;
  }

  private static BigFraction endOf(List<Measure> measures) {
    Measure last = measures.get(measures.size() - 1);
    return last.start().add(last.length());
  }

  /** Where the first rest begins that ends a phrase, before a time. */
  private static Optional<BigFraction> rest(
      Event words,
      BigFraction until,
      boolean givenBack,
      ImmutableList<Slot> slots,
      List<Measure> measures) {
    Optional<BigFraction> sounded = Optional.empty();
    for (Slot slot : slots) {
      for (WrittenNote note : slot.notes()) {
        boolean counts =
            Quarters.compare(note.start(), words.start) >= 0
                && Quarters.compare(note.start(), until) < 0
                && (words.voice.isEmpty() || words.voice.equals(note.voice()));
        if (!counts) {
          continue;
        }
        if (sounded.isPresent()) {
          Measure measure = measures.get(note.measure());
          BigFraction breath = givenBack ? measure.length() : BREATH;
          if (Quarters.compare(note.start(), sounded.get().add(breath)) >= 0) {
            return sounded;
          }
        }
        BigFraction end = note.end();
        sounded =
            Optional.of(sounded.filter(before -> Quarters.compare(before, end) > 0).orElse(end));
      }
    }
    return Optional.empty();
  }
}
