package fingering.musicxml.print;

import fingering.musicxml.element.NoteTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the ends of slurs and similar lines between notes. Open lines have different numbers, but
 * two voices may use the same number at once, and the voices of a measure follow one another in the
 * file.
 *
 * @param <T> what is known at the start of a line
 */
final class OpenSpans<T> {
  /** A note at which a line starts or ends; not seen if the note is hidden. */
  record Anchor(NoteTime time, boolean seen) {}

  /** A line. */
  record Span<T>(T value, Anchor from, Anchor to) {
    /** Whether both notes are printed. */
    boolean seen() {
      return from.seen() && to.seen();
    }
  }

  private record Open<T>(T value, Anchor from, int number) {
    boolean in(String voice) {
      return from.time().voice().equals(voice);
    }
  }

  private record End(Anchor to, int number) {}

  private final List<Open<T>> open = new ArrayList<>();
  private final List<Open<T>> lost = new ArrayList<>();
  private final List<End> early = new ArrayList<>();

  /** Starts a line. An open line with this number in this voice has lost its end. */
  void start(T value, Anchor from, int number) {
    open.stream()
        .filter(other -> other.number() == number && other.in(from.time().voice()))
        .findFirst()
        .ifPresent(
            other -> {
              open.remove(other);
              lost.add(other);
            });
    open.add(new Open<>(value, from, number));
  }

  /** Ends a line: the one in the same voice, otherwise the latest with this number. */
  Optional<Span<T>> stop(Anchor to, int number) {
    Optional<Open<T>> found = Optional.empty();
    for (Open<T> each : open) {
      boolean better =
          each.in(to.time().voice()) || found.isEmpty() || !found.get().in(to.time().voice());
      if (each.number() == number && better) {
        found = Optional.of(each);
      }
    }
    if (found.isEmpty()) {
      early.add(new End(to, number));
      return Optional.empty();
    }
    open.remove(found.get());
    return Optional.of(new Span<>(found.get().value(), found.get().from(), to));
  }

  /**
   * Lines whose end is in a voice that precedes the voice of their start in the file. They end in
   * the measure in which they start.
   */
  List<Span<T>> rest() {
    lost.addAll(open);
    open.clear();
    lost.sort(Comparator.comparing(each -> each.from().time().address()));
    List<Span<T>> spans = new ArrayList<>();
    for (Open<T> each : lost) {
      early.stream()
          .filter(end -> follows(each, end))
          .findFirst()
          .ifPresent(
              end -> {
                early.remove(end);
                spans.add(new Span<>(each.value(), each.from(), end.to()));
              });
    }
    lost.clear();
    return spans;
  }

  private static boolean follows(Open<?> start, End end) {
    NoteTime from = start.from().time();
    NoteTime to = end.to().time();
    return start.number() == end.number()
        && from.address().measure() == to.address().measure()
        && from.onset().compareTo(to.onset()) < 0;
  }
}
