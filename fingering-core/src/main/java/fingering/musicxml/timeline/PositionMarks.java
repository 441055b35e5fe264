package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.PrintedString.End;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.musicxml.timeline.PositionWords.Said;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Direction;

/**
 * Collects where words name the position of the hand, and how long (common practice, no source). A
 * line printed behind them, dashed or not, tells it. Without one the hand stays there until other
 * words say where it goes, over any rest shorter than a measure.
 */
public final class PositionMarks {

  /**
   * Words for a position, and the time they hold for.
   *
   * @param words as printed
   * @param position the position
   * @param numeral whether they are a numeral alone, which may as well mean a string
   * @param measure index of the measure in which they stand, from 0
   * @param start quarter notes from the start of the part
   * @param end where they hold no more
   * @param why what ends them
   * @param voice the voice they are for, empty for all
   */
  public record Stretch(
      String words,
      Position position,
      boolean numeral,
      int measure,
      BigFraction start,
      BigFraction end,
      End why,
      String voice) {
    /** Whether the hand is to be there for a note. */
    public boolean holds(WrittenNote note) {
      return note.within(start, end, voice);
    }
  }

  /** Words at their place. */
  private static final class Event {
    private final Said said;
    private final String words;
    private final int measure;
    private final BigFraction start;
    private final String voice;
    private Optional<BigFraction> lineEnd = Optional.empty();

    Event(Said said, String words, int measure, BigFraction start, String voice) {
      this.said = said;
      this.words = words;
      this.measure = measure;
      this.start = start;
      this.voice = voice;
    }

    private void lineEnds(BigFraction at) {
      if (Quarters.compare(at, start) > 0) {
        lineEnd = Optional.of(at);
      }
    }

    private boolean ends(Event before) {
      return voice.isEmpty() || before.voice.isEmpty() || voice.equals(before.voice);
    }
  }

  private final List<Event> events = new ArrayList<>();
  private final DirectionLines<Event> lines = new DirectionLines<>();

  /**
   * Takes a direction.
   *
   * @param words its words, empty where it has none
   * @param measure index of the measure in which it stands, from 0
   * @param start where it stands, in quarter notes from the start of the part
   * @param voice the voice it is for, empty for all
   */
  public void direction(
      Direction direction, String words, int measure, BigFraction start, String voice) {
    List<DirectionLines.Line> started = lines.take(direction, start, Event::lineEnds);
    Optional<Said> said = PositionWords.standard().read(words);
    // With a line a bare numeral is a string.
    if (said.isPresent()
        && (said.get().kind() != PositionWords.Kind.NUMERAL || started.isEmpty())) {
      Event event =
          new Event(said.get(), words.strip().replaceAll("\\s+", " "), measure, start, voice);
      events.add(event);
      lines.belong(started, event);
    } else if (words.isBlank() && !started.isEmpty() && !events.isEmpty()) {
      // A line by itself belongs to the words just before it at the same place.
      Event last = events.get(events.size() - 1);
      if (last.start.equals(start) && last.voice.equals(voice)) {
        lines.belong(started, last);
      }
    }
  }

  /** The stretches for which a position is named, in order of time. */
  public ImmutableList<Stretch> stretches(ImmutableList<Slot> slots, List<Measure> measures) {
    List<Event> inTime = new ArrayList<>(events);
    inTime.sort(Comparator.comparing(event -> event.start, Quarters.ORDER));
    ImmutableList.Builder<Stretch> found = ImmutableList.builder();
    for (int i = 0; i < inTime.size(); i++) {
      Event event = inTime.get(i);
      if (event.said.position().isPresent()) {
        Optional<Event> next =
            inTime.stream().skip(i + 1L).filter(later -> later.ends(event)).findFirst();
        found.add(stretch(event, event.said.position().get(), next, slots, measures));
      }
    }
    return found.build();
  }

  private static Stretch stretch(
      Event words,
      Position position,
      Optional<Event> next,
      ImmutableList<Slot> slots,
      List<Measure> measures) {
    BigFraction until = next.map(event -> event.start).orElse(PhraseEnd.ofPart(measures));
    End why = next.isPresent() ? End.WORDS : End.PART;
    Optional<BigFraction> rest =
        new PhraseEnd(words.start, until, words.voice).rest(true, slots, measures);
    if (words.lineEnd.isPresent()) {
      until = words.lineEnd.get();
      why = End.LINE;
    } else if (rest.isPresent()) {
      until = rest.get();
      why = End.REST;
    }
    return new Stretch(
        words.words,
        position,
        words.said.kind() == PositionWords.Kind.NUMERAL,
        words.measure,
        words.start,
        until,
        why,
        words.voice);
  }
}
