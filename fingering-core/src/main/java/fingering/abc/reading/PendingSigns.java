package fingering.abc.reading;

import fingering.abc.reading.PendingNote.DraftHead;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decoration.Kind;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.LineCursor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the signs before a note and keeps them until it comes. */
final class PendingSigns {

  private record Waiting(Decoration sign, LineCursor start) {}

  private final MeasureCollector measures;
  private final ReadingRemarks remarks;
  private List<Waiting> waiting = new ArrayList<>();

  PendingSigns(MeasureCollector measures, ReadingRemarks remarks) {
    this.measures = measures;
    this.remarks = remarks;
  }

  /** Reads a sign, between exclamation marks or a letter, if one comes next. */
  boolean read(LineCursor cursor, NoteDefaults setting) {
    LineCursor start = cursor.back(0);
    if (cursor.take('!')) {
      String name = cursor.upTo('!', "the sign", start).strip();
      take(Decorations.named(name, start), start);
      return true;
    }
    Optional<Decoration> symbol = setting.symbols().get(cursor.peek());
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

  /** Puts the signs that wait at a note, a chord or a rest. */
  void attachTo(PendingNote draft) {
    for (Waiting one : waiting) {
      if (draft.rest() && !one.sign.fitsRest()) {
        throw one.start.wrong(
            "the sign '%s' stands before a rest here: put it before a note."
                .formatted(one.sign.name()));
      }
      if (one.sign.kind() != Kind.LEFT_HAND) {
        draft.signs.add(one.sign);
      } else if (draft.heads.size() == 1) {
        add(one, draft.heads.get(0));
      } else {
        throw one.start.wrong(
            "the sign '%s' does not say which note of the chord it is for: put it inside, before that note, as in [!1!DA]."
                .formatted(one.sign.name()));
      }
    }
    waiting.clear();
  }

  /** Puts the signs that wait at one note of a chord. */
  void attachTo(PendingNote draft, DraftHead head) {
    for (Waiting one : waiting) {
      if (one.sign.kind() == Kind.LEFT_HAND) {
        add(one, head);
      } else {
        draft.signs.add(one.sign);
      }
    }
    waiting.clear();
  }

  private static void add(Waiting one, DraftHead head) {
    boolean second = isFinger(one.sign) && head.signs.stream().anyMatch(PendingSigns::isFinger);
    if (second) {
      throw one.start.wrong(
          "the note has a finger already: leave out '%s'.".formatted(one.sign.name()));
    }
    head.signs.add(one.sign);
  }

  private static boolean isFinger(Decoration sign) {
    return sign.element().equals("fingering") || sign.element().equals("thumb-position");
  }

  /**
   * Puts the signs that wait aside while other notes are read; what is returned brings them back.
   */
  Runnable aside() {
    List<Waiting> before = waiting;
    waiting = new ArrayList<>();
    return () -> {
      refuse();
      waiting = before;
    };
  }

  /** Refuses signs to which no note has come. */
  void refuse() {
    Optional<Waiting> first = waiting.stream().findFirst();
    first.ifPresent(
        one -> {
          throw one.start.wrong(
              "no note follows the sign '%s' here: put it right before its note."
                  .formatted(one.sign.name()));
        });
  }
}
