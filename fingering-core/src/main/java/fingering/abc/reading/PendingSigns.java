package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decoration.Kind;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.LineCursor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads decorations before a note, and keeps them until the note comes. */
final class PendingSigns {

  private record Waiting(Decoration sign, LineCursor start) {}

  private final MeasureCollector measures;
  private final ReadingRemarks remarks;
  private List<Waiting> waiting = new ArrayList<>();

  PendingSigns(MeasureCollector measures, ReadingRemarks remarks) {
    this.measures = measures;
    this.remarks = remarks;
  }

  /**
   * Reads a decoration, between exclamation marks or as a letter, if one comes next; returns
   * whether it did.
   */
  boolean read(LineCursor cursor, NoteDefaults defaults) {
    LineCursor start = cursor.copy();
    if (cursor.take('!')) {
      String name = cursor.upTo('!', "the decoration", start).strip();
      take(Decorations.named(name, start), start);
      return true;
    }
    Optional<Decoration> symbol = defaults.symbols().get(cursor.peek());
    if (symbol == null) {
      return false;
    }
    cursor.next();
    symbol.ifPresent(sign -> take(sign, start));
    return true;
  }

  private void take(Decoration sign, LineCursor start) {
    if (sign.kind() == Kind.LEFT_OUT) {
      remarks.leftOut(sign);
    } else if (sign.atStaff()) {
      measures.current().items.add(() -> new MeasureItem.StaffSign(sign));
    } else {
      waiting.add(new Waiting(sign, start));
    }
  }

  /** Attaches the pending decorations to a note, a chord or a rest. */
  void attachTo(PendingNote pending) {
    for (Waiting one : waiting) {
      if (pending.rest() && !one.sign.fitsRest()) {
        throw one.start.error(
            "the decoration '%s' is before a rest: write it before a note."
                .formatted(one.sign.name()));
      }
      if (one.sign.kind() != Kind.LEFT_HAND) {
        pending.signs.add(one.sign);
      } else if (pending.heads.size() == 1) {
        add(one, pending.heads.get(0));
      } else {
        throw one.start.error(
            "the decoration '%s' could belong to any note of the chord: write it inside, before its note, as in [!1!DA]."
                .formatted(one.sign.name()));
      }
    }
    waiting.clear();
  }

  /** Attaches the pending decorations to one note of a chord. */
  void attachTo(PendingNote pending, PendingHead head) {
    for (Waiting one : waiting) {
      if (one.sign.kind() == Kind.LEFT_HAND) {
        add(one, head);
      } else {
        pending.signs.add(one.sign);
      }
    }
    waiting.clear();
  }

  private static void add(Waiting one, PendingHead head) {
    boolean second = isFinger(one.sign) && head.signs.stream().anyMatch(PendingSigns::isFinger);
    if (second) {
      throw one.start.error(
          "the note already has a finger: leave out '%s'.".formatted(one.sign.name()));
    }
    head.signs.add(one.sign);
  }

  private static boolean isFinger(Decoration sign) {
    return sign.element().equals("fingering") || sign.element().equals("thumb-position");
  }

  /**
   * Puts the pending decorations aside while other notes are read. The returned action restores
   * them.
   */
  Runnable aside() {
    List<Waiting> before = waiting;
    waiting = new ArrayList<>();
    return () -> {
      refuse();
      waiting = before;
    };
  }

  /**
   * Refuses decorations that no note follows.
   *
   * @throws AbcException if there are any
   */
  void refuse() {
    Optional<Waiting> first = waiting.stream().findFirst();
    first.ifPresent(
        one -> {
          throw one.start.error(
              "no note follows the decoration '%s': write it immediately before its note."
                  .formatted(one.sign.name()));
        });
  }
}
