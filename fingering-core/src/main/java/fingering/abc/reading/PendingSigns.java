package fingering.abc.reading;

import fingering.abc.reading.PendingNote.PendingHead;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decoration.Kind;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.Repairs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads decorations before a note, and keeps them until the note comes. */
final class PendingSigns {

  private record Waiting(Decoration sign, LineCursor start) {}

  private final MeasureCollector measures;
  private final ReadingRemarks remarks;
  private final Repairs repairs;
  private List<Waiting> waiting = new ArrayList<>();

  PendingSigns(MeasureCollector measures, ReadingRemarks remarks, Repairs repairs) {
    this.repairs = repairs;
    this.measures = measures;
    this.remarks = remarks;
  }

  /**
   * Reads a decoration, between exclamation marks or plus signs or as a letter, if one comes next;
   * returns whether it did.
   */
  boolean read(LineCursor cursor, NoteDefaults defaults) {
    LineCursor start = cursor.copy();
    if (cursor.peek() == '!' || cursor.peek() == '+') {
      int end = Decorations.end(cursor.line().text(), cursor.at());
      if (end < 0) {
        return false;
      }
      cursor.next();
      String name = cursor.to(end).strip();
      cursor.next();
      Decorations.named(name, start, repairs).ifPresent(sign -> take(sign, start));
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
        leaveOut(one, "is before a rest");
      } else if (one.sign.kind() != Kind.LEFT_HAND) {
        pending.signs.add(one.sign);
      } else if (pending.heads.size() == 1) {
        add(one, pending.heads.get(0));
      } else {
        leaveOut(one, "could belong to any note of the chord");
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

  private void add(Waiting one, PendingHead head) {
    boolean second = isFinger(one.sign) && head.signs.stream().anyMatch(PendingSigns::isFinger);
    if (second) {
      leaveOut(one, "is a second finger for its note");
      return;
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
      leaveOut();
      waiting = before;
    };
  }

  /** Leaves out decorations that no note follows. */
  void leaveOut() {
    waiting.forEach(one -> leaveOut(one, "has no note after it"));
    waiting.clear();
  }

  private void leaveOut(Waiting one, String why) {
    repairs.add(
        one.start, "the decoration '%s' %s; it was left out".formatted(one.sign.name(), why));
  }
}
