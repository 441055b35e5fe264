package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.musicxml.timeline.HeldWords.Event;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.musicxml.words.PositionWords;
import fingering.musicxml.words.PositionWords.Instruction;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Direction;

/**
 * Collects the words of a part that name a position of the hand, and how long they hold (common
 * practice, no source). A line printed after them, dashed or not, shows it. Without a line the hand
 * stays until other words name a position or the thumb, even over rests shorter than a measure.
 */
public final class PositionMarks {
  private static final int STRINGS = 4;

  private final HeldWords<Instruction> words = new HeldWords<>();

  /**
   * Adds a direction.
   *
   * @param text the words of the direction, empty if it has none
   * @param measure index of its measure, from 0
   * @param start quarter notes from the start of the part
   * @param voice the voice that it applies to, empty for all
   */
  public void direction(
      Direction direction, String text, int measure, BigFraction start, String voice) {
    List<DirectionLines.Line> started = words.lines(direction, start);
    // A bare numeral with a line names a string.
    Optional<Instruction> read =
        PositionWords.standard()
            .read(text)
            .filter(
                instruction ->
                    instruction.kind() != PositionWords.Kind.NUMERAL || started.isEmpty());
    // A line alone belongs to the last words at the same position.
    Optional<Event<Instruction>> owner =
        read.isEmpty() && text.isBlank()
            ? words.lastAt(start, voice)
            : read.map(instruction -> words.add(instruction, text, measure, start, voice));
    owner.ifPresent(event -> words.attach(started, event));
  }

  /**
   * Returns the stretches of all words but those for the thumb, in order of time. Words to stay end
   * no stretch.
   */
  public ImmutableList<Stretch<Instruction>> stretches(
      ImmutableList<Slot> slots, List<Measure> measures) {
    List<Event<Instruction>> inTime = withoutStrings(words.inTime());
    ImmutableList.Builder<Stretch<Instruction>> found = ImmutableList.builder();
    for (int i = 0; i < inTime.size(); i++) {
      Event<Instruction> event = inTime.get(i);
      if (event.meaning().kind() != PositionWords.Kind.THUMB) {
        Optional<Event<Instruction>> next =
            inTime.stream()
                .skip(i + 1L)
                .filter(later -> later.meaning().kind() != PositionWords.Kind.STAY)
                .filter(later -> later.sharesVoice(event))
                .findFirst();
        found.add(words.stretch(event, next, true, slots, measures));
      }
    }
    return found.build();
  }

  /**
   * Leaves out bare numerals up to IV if other words name positions: an editor who writes <i>3rd
   * pos.</i> means strings by numerals.
   */
  private static List<Event<Instruction>> withoutStrings(List<Event<Instruction>> events) {
    boolean named =
        events.stream()
            .map(event -> event.meaning().kind())
            .anyMatch(
                kind -> kind == PositionWords.Kind.POSITION || kind == PositionWords.Kind.THUMB);
    return named ? events.stream().filter(event -> !mayBeString(event)).toList() : events;
  }

  private static boolean mayBeString(Event<Instruction> event) {
    return event.meaning().kind() == PositionWords.Kind.NUMERAL
        && event.meaning().position().filter(number -> number.number() <= STRINGS).isPresent();
  }
}
