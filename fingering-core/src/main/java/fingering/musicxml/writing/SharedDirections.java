package fingering.musicxml.writing;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import fingering.musicxml.writing.DirectionCopy.Shared;
import fingering.musicxml.writing.MeasureClock.Timed;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Tempi, rehearsal marks and jumps that are printed in one part for all. A copyist of parts writes
 * them into each.
 */
final class SharedDirections {
  /** A direction and its place. */
  private record Placed(int measure, BigFraction onset, XmlNode node) {
    boolean isAfter(Placed other) {
      return measure != other.measure ? measure > other.measure : onset.compareTo(other.onset) > 0;
    }
  }

  /** Something that a part already has at a time. */
  private record Present(int measure, BigFraction onset, Shared kind) {}

  private final int first;
  private final List<Placed> others = new ArrayList<>();
  private final Set<Present> present = new HashSet<>();
  private Optional<Placed> heading = Optional.empty();
  private Optional<Placed> sound = Optional.empty();

  /**
   * Begins without any.
   *
   * @param first index of the first measure that is kept
   */
  SharedDirections(int first) {
    this.first = first;
  }

  /**
   * Adds a direction or a sound.
   *
   * @param own whether it is in the part that is kept
   */
  void add(int measure, Timed item, boolean own) {
    XmlNode node = item.node();
    if (!node.is("direction") && !node.is("sound")) {
      return;
    }
    ImmutableSet<Shared> kinds = DirectionCopy.shared(node);
    if (kinds.isEmpty()) {
      return;
    }
    Placed placed = new Placed(measure, item.onset(), node);
    if (measure < first) {
      if (DirectionCopy.isTempoHeading(node)) {
        heading = later(heading, placed);
      }
      if (DirectionCopy.soundTempo(node).isPresent()) {
        sound = later(sound, placed);
      }
    } else if (own) {
      kinds.forEach(kind -> present.add(new Present(measure, item.onset(), kind)));
    } else {
      others.add(placed);
    }
  }

  private static Optional<Placed> later(Optional<Placed> one, Placed other) {
    return one.isEmpty() || other.isAfter(one.get()) ? Optional.of(other) : one;
  }

  /** Writes what other parts have in a measure and this part lacks. */
  void write(int measure, List<Timed> items, Insertion at) {
    for (Placed other : others) {
      if (other.measure() == measure) {
        Set<Present> says = new HashSet<>();
        DirectionCopy.shared(other.node())
            .forEach(kind -> says.add(new Present(measure, other.onset(), kind)));
        if (!Sets.difference(says, present).isEmpty()) {
          present.addAll(says);
          write(other, items, at);
        }
      }
    }
  }

  private static void write(Placed other, List<Timed> items, Insertion at) {
    Optional<Timed> exact =
        items.stream()
            .filter(item -> isPlace(item) && item.written().equals(other.onset()))
            .findFirst();
    if (exact.isPresent()) {
      DirectionCopy.text(other.node(), 0, true)
          .ifPresent(text -> at.before(exact.get().node(), text));
      return;
    }
    BigFraction divisions =
        items.isEmpty() ? BigFraction.ONE : items.get(items.size() - 1).divisions();
    long offset = Math.round(other.onset().multiply(divisions).doubleValue());
    DirectionCopy.text(other.node(), offset, true).ifPresent(at::start);
  }

  private static boolean isPlace(Timed item) {
    return switch (item.node().name()) {
      case "note" -> !item.node().has("chord");
      case "backup", "forward" -> true;
      default -> false;
    };
  }

  /** The tempo in force at the start of the first measure, if the part does not name one there. */
  List<String> tempoInForce() {
    boolean named =
        present.contains(new Present(first, BigFraction.ZERO, Shared.TEMPO))
            || others.stream()
                .anyMatch(
                    other ->
                        other.measure() == first
                            && other.onset().signum() <= 0
                            && DirectionCopy.shared(other.node()).contains(Shared.TEMPO));
    List<String> texts = new ArrayList<>();
    if (named) {
      return texts;
    }
    boolean changed =
        sound.isPresent() && (heading.isEmpty() || sound.get().isAfter(heading.get()));
    heading.flatMap(one -> DirectionCopy.text(one.node(), 0, !changed)).ifPresent(texts::add);
    if (changed) {
      sound
          .flatMap(one -> DirectionCopy.soundTempo(one.node()))
          .ifPresent(tempo -> texts.add("<sound tempo=\"" + tempo + "\"/>"));
    }
    return texts;
  }

  /** Where directions go. */
  interface Insertion {
    /** Before a child of the measure. */
    void before(XmlNode child, String direction);

    /** At the start of the measure, after its clef and key. */
    void start(String direction);
  }
}
