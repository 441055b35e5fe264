package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.PrintedString.End;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.musicxml.timeline.StringWords.Asked;
import fingering.musicxml.timeline.StringWords.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Direction;

/**
 * Collects where words ask for one string, and how long (common practice, no source). A line
 * printed behind them, dashed or not, tells it. Without one they hold to the next words that name
 * strings or end such words, or to a quarter rest or longer, where the phrase ends; but words that
 * give the strings back show that they held till there, over any rest shorter than a measure.
 * {@code ord.} and {@code nat.} end a place of the bow where one was asked for since, else the
 * string.
 */
public final class StringMarks {

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
  public record Stretch(
      String words,
      String string,
      String measure,
      BigFraction start,
      BigFraction end,
      End why,
      String voice) {
    /** Whether a note is to be played on the string. */
    public boolean holds(WrittenNote note) {
      return note.within(start, end, voice);
    }
  }

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

    private void lineEnds(BigFraction at) {
      if (Quarters.compare(at, start) > 0) {
        lineEnd = Optional.of(at);
      }
    }
  }

  private final List<Event> events = new ArrayList<>();
  private final DirectionLines<Event> lines = new DirectionLines<>();

  /**
   * Takes a direction.
   *
   * @param words its words, empty where it has none
   * @param measure number of the measure in which it stands, as printed
   * @param start where it stands, in quarter notes from the start of the part
   * @param voice the voice it is for, empty for all
   */
  public void direction(
      Direction direction, String words, String measure, BigFraction start, String voice) {
    List<DirectionLines.Line> started = lines.take(direction, start, Event::lineEnds);
    Optional<Event> named = Optional.empty();
    for (Asked asked : StringWords.standard().read(words, !started.isEmpty())) {
      if (asked.kind() == Kind.THUMB) {
        continue;
      }
      Event event = new Event(asked, words.strip().replaceAll("\\s+", " "), measure, start, voice);
      events.add(event);
      named = event.isString() ? Optional.of(event) : named;
    }
    // A line by itself belongs to the words just before it at the same place.
    Optional<Event> owner = words.isBlank() ? lastAt(start, voice) : named;
    owner.ifPresent(
        event -> {
          event.line |= !started.isEmpty();
          lines.belong(started, event);
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

  /** The stretches for which one string is asked for, in order of time. */
  public ImmutableList<Stretch> stretches(ImmutableList<Slot> slots, List<Measure> measures) {
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
        words.lineEnd.or(() -> next.map(event -> event.start)).orElse(PhraseEnd.ofPart(measures));
    End why = words.lineEnd.isPresent() ? End.LINE : next.isPresent() ? End.WORDS : End.PART;
    if (words.lineEnd.isEmpty()) {
      boolean givenBack = next.map(event -> !event.isString()).orElse(false);
      PhraseEnd phrase = new PhraseEnd(words.start, until, words.voice);
      Optional<BigFraction> rest = phrase.rest(givenBack, slots, measures);
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
        case THUMB -> {}
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
            case STRING, ENDS, THUMB -> place;
          };
    }
    return place;
  }
}
