package fingering.musicxml.timeline;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.musicxml.timeline.HeldWords.Event;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.musicxml.words.StringWords;
import fingering.musicxml.words.StringWords.Instruction;
import fingering.musicxml.words.StringWords.Kind;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Direction;

/**
 * Collects the words of a part that ask for one string, and how long they hold (common practice, no
 * source). A line printed after them, dashed or not, shows it. Without a line they hold until the
 * next words that name strings or end such words, or until a rest of a quarter or longer, which
 * ends the phrase. If the next words free the strings again, shorter rests do not end them, only a
 * rest of a measure. {@code ord.} and {@code nat.} end a special place of the bow if one was asked
 * for since, otherwise the string.
 */
public final class StringMarks {
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
    // A line alone belongs to the last words at the same position.
    Optional<Event<Instruction>> owner =
        text.isBlank()
            ? words.lastAt(start, voice).filter(event -> isString(event) && !event.hasLine())
            : Optional.empty();
    for (Instruction instruction : StringWords.standard().read(text, !started.isEmpty())) {
      if (instruction.kind() != Kind.THUMB) {
        Event<Instruction> event = words.add(instruction, text, measure, start, voice);
        owner = isString(event) ? Optional.of(event) : owner;
      }
    }
    owner.ifPresent(event -> words.attach(started, event));
  }

  private static boolean isString(Event<Instruction> event) {
    return event.meaning().kind() == Kind.STRING;
  }

  /** Returns the stretches that belong on one string, in order of time. */
  public ImmutableList<Stretch<Instruction>> stretches(
      ImmutableList<Slot> slots, List<Measure> measures) {
    List<Event<Instruction>> inTime = words.inTime();
    ImmutableList.Builder<Stretch<Instruction>> found = ImmutableList.builder();
    for (int i = 0; i < inTime.size(); i++) {
      if (isString(inTime.get(i))) {
        Optional<Event<Instruction>> next = closing(inTime, i);
        boolean freed = next.map(event -> !isString(event)).orElse(false);
        found.add(words.stretch(inTime.get(i), next, freed, slots, measures));
      }
    }
    return found.build();
  }

  /** The next words that end those at an index. */
  private static Optional<Event<Instruction>> closing(List<Event<Instruction>> events, int at) {
    boolean bowPlace = bowPlaceBefore(events, at);
    for (Event<Instruction> event : events.subList(at + 1, events.size())) {
      boolean sharesVoice = event.sharesVoice(events.get(at));
      switch (event.meaning().kind()) {
        case STRING, ENDS -> {
          if (sharesVoice) {
            return Optional.of(event);
          }
        }
        case PLACE -> bowPlace = true;
        case BOW -> bowPlace = false;
        case THUMB -> {}
        case USUAL -> {
          if (!bowPlace && sharesVoice) {
            return Optional.of(event);
          }
          bowPlace = false;
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a special place of the bow is in effect before the words at an index. */
  private static boolean bowPlaceBefore(List<Event<Instruction>> events, int at) {
    boolean bowPlace = false;
    for (Event<Instruction> event : events.subList(0, at)) {
      bowPlace =
          switch (event.meaning().kind()) {
            case PLACE -> true;
            case BOW, USUAL -> false;
            case STRING, ENDS, THUMB -> bowPlace;
          };
    }
    return bowPlace;
  }
}
