package fingering.page.student;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import fingering.player.Extension;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.ShiftKind;
import fingering.tables.Instrument;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Students in a teacher's words. */
final class StudentWords {
  private StudentWords() {}

  /** Instrument, level and what is learned, in a line. */
  static String about(Player player) {
    List<String> parts = new ArrayList<>();
    player.instrument().map(Instrument::nameInSentence).ifPresent(parts::add);
    player.size().map(size -> text("students.size", size)).ifPresent(parts::add);
    player.preset().map(StudentWords::shortLevel).ifPresent(parts::add);
    learned(player.positions().map(all -> named(player, all)), Position::display)
        .map(all -> text("students.positions", all))
        .ifPresent(parts::add);
    learned(player.patterns(), FingerPattern::word)
        .map(all -> text("students.patterns", all))
        .ifPresent(parts::add);
    learned(player.extensions(), Extension::word)
        .map(all -> text("students.extensions", all))
        .ifPresent(parts::add);
    learned(player.shifts(), ShiftKind::word)
        .map(all -> text("students.shifts", all))
        .ifPresent(parts::add);
    return String.join("; ", parts);
  }

  /** The positions without those that only lie between two others. */
  private static Set<Position> named(Player player, ImmutableSet<Position> all) {
    return Sets.intersection(
        all, new LearnedPositions(player.instrument().map(Instrument::kind), all).shown());
  }

  private static <T extends Comparable<? super T>> Optional<String> learned(
      Optional<? extends Collection<T>> all, Function<T, String> word) {
    return all.map(
        items ->
            items.isEmpty()
                ? text("students.none")
                : items.stream().sorted().map(word).collect(Collectors.joining(", ")));
  }

  private static String shortLevel(String preset) {
    return switch (preset) {
      case "beginner" -> text("level.beginner");
      case "intermediate" -> text("level.intermediate");
      case "advanced" -> text("level.sound");
      default -> text("level.advanced");
    };
  }

  /** A level, and what it means for the plans. */
  static String level(String preset) {
    return switch (preset) {
      case "beginner" -> text("level.beginner-means");
      case "intermediate" -> text("level.intermediate-means");
      case "advanced" -> text("level.sound-means");
      default -> text("level.advanced-means");
    };
  }

  static String hand(String size) {
    return switch (size) {
      case "small" -> text("hand.small");
      case "large" -> text("hand.large");
      default -> text("hand.medium");
    };
  }

  static String pattern(FingerPattern pattern) {
    return switch (pattern) {
      case FIRST_LOW -> text("pattern.first-low");
      case FIRST_SECOND -> text("pattern.first-second");
      case SECOND_THIRD -> text("pattern.second-third");
      case THIRD_FOURTH -> text("pattern.third-fourth");
      case APART -> text("pattern.apart");
      case AUGMENTED_SECOND -> text("pattern.augmented");
      case CLOSED -> text("pattern.closed");
      case EXTENDED_BACK -> text("pattern.back");
      case EXTENDED_FORWARD -> text("pattern.forward");
      case THUMB -> text("pattern.thumb");
    };
  }

  static String extension(Extension extension) {
    return switch (extension) {
      case FIRST_BACK -> text("extension.first");
      case FOURTH_FORWARD -> text("extension.fourth");
    };
  }

  static String shift(ShiftKind shift) {
    return switch (shift) {
      case REST -> text("shift-kind.rest");
      case OPEN_STRING -> text("shift-kind.open");
      case SAME_FINGER -> text("shift-kind.same");
      case FIRST_FINGER -> text("shift-kind.first");
      case ANOTHER_FINGER -> text("shift-kind.another");
      case ANOTHER_STRING -> text("shift-kind.string");
      case SLUR -> text("shift-kind.slur");
    };
  }
}
