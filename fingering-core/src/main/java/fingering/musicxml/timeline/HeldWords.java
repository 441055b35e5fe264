package fingering.musicxml.timeline;

import fingering.music.Measure;
import fingering.music.PrintedString.End;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.timeline.PartTimeline.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Direction;

/**
 * Words of a part that hold for some time, with the lines printed after them.
 *
 * @param <T> the meaning of the words
 */
final class HeldWords<T> {

  /** Words at their position. */
  static final class Event<T> {
    private final T meaning;
    private final String words;
    private final int measure;
    private final BigFraction start;
    private final String voice;
    private boolean hasLine;
    private Optional<BigFraction> lineEnd = Optional.empty();

    private Event(T meaning, String words, int measure, BigFraction start, String voice) {
      this.meaning = meaning;
      this.words = words;
      this.measure = measure;
      this.start = start;
      this.voice = voice;
    }

    /** The meaning of the words. */
    T meaning() {
      return meaning;
    }

    /** Whether a line begins at the words. */
    boolean hasLine() {
      return hasLine;
    }

    /** Whether these and other words apply to a voice in common. */
    boolean sharesVoice(Event<T> other) {
      return voice.isEmpty() || other.voice.isEmpty() || voice.equals(other.voice);
    }

    private void lineEnds(BigFraction at) {
      if (Quarters.compare(at, start) > 0) {
        lineEnd = Optional.of(at);
      }
    }
  }

  private final List<Event<T>> events = new ArrayList<>();
  private final DirectionLines<Event<T>> lines = new DirectionLines<>();

  /**
   * Ends the lines that end in a direction.
   *
   * @param at quarter notes from the start of the part
   * @return the lines that start in it
   */
  List<DirectionLines.Line> lines(Direction direction, BigFraction at) {
    return lines.read(direction, at, Event::lineEnds);
  }

  /**
   * Adds words.
   *
   * @param measure index of their measure, from 0
   * @param start quarter notes from the start of the part
   * @param voice the voice that they apply to, empty for all
   */
  Event<T> add(T meaning, String words, int measure, BigFraction start, String voice) {
    Event<T> event =
        new Event<>(meaning, words.strip().replaceAll("\\s+", " "), measure, start, voice);
    events.add(event);
    return event;
  }

  /** The last words, if they are at this time and for this voice. */
  Optional<Event<T>> lastAt(BigFraction start, String voice) {
    if (events.isEmpty()) {
      return Optional.empty();
    }
    Event<T> last = events.get(events.size() - 1);
    return last.start.equals(start) && last.voice.equals(voice)
        ? Optional.of(last)
        : Optional.empty();
  }

  /** Assigns lines to the words that they follow. */
  void attach(List<DirectionLines.Line> started, Event<T> event) {
    event.hasLine |= !started.isEmpty();
    lines.attach(started, event);
  }

  /** All words in order of time. */
  List<Event<T>> inTime() {
    List<Event<T>> inTime = new ArrayList<>(events);
    inTime.sort(Comparator.comparing(event -> event.start, Quarters.ORDER));
    return inTime;
  }

  /**
   * The time that words hold: to the end of their line if they have one, otherwise to the next
   * words, a rest, or the end of the part.
   *
   * @param next the next words that end these
   * @param overShortRests whether only a rest of a whole measure ends them
   */
  Stretch<T> stretch(
      Event<T> event,
      Optional<Event<T>> next,
      boolean overShortRests,
      List<Slot> slots,
      List<Measure> measures) {
    BigFraction until =
        event.lineEnd.or(() -> next.map(later -> later.start)).orElse(PhraseEnd.ofPart(measures));
    End endedBy = event.lineEnd.isPresent() ? End.LINE : next.isPresent() ? End.WORDS : End.PART;
    if (event.lineEnd.isEmpty()) {
      Optional<BigFraction> rest =
          new PhraseEnd(event.start, until, event.voice).rest(overShortRests, slots, measures);
      if (rest.isPresent()) {
        until = rest.get();
        endedBy = End.REST;
      }
    }
    return new Stretch<>(
        event.meaning, event.words, event.measure, event.start, until, endedBy, event.voice);
  }
}
