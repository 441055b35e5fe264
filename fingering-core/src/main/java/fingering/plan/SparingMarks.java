package fingering.plan;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.Frame;
import fingering.fingerboard.PitchRequest;
import fingering.fingerboard.Placement;
import fingering.music.Marks;
import fingering.music.Measure;
import fingering.music.Note;
import fingering.musicxml.marking.NoteMarks;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Picks, of the marks at every note, those that a reader needs who keeps the hand where it is: a
 * mark that tells nothing hides those that do. What the hand takes by itself is reckoned for a
 * medium hand, without any stretch.
 */
final class SparingMarks {
  /** How a pitch was taken last, where, and since which coming of the hand. */
  private record Taken(int string, Finger finger, int measure, int stay) {}

  private final Plan plan;
  private final Fingerboard board;
  private final Map<Pitch, Taken> taken = new HashMap<>();

  /** The strings that a finger has stopped since the hand came. */
  private final Set<Integer> stopped = new HashSet<>();

  private int stay;

  /** Whether a finger has still to show where the hand has come to. */
  private boolean untold;

  private BigFraction silentFrom = BigFraction.ZERO;

  private SparingMarks(Plan plan) {
    this.plan = plan;
    board = Fingerboard.of(plan.passage().instrument());
  }

  /**
   * The marks that are needed.
   *
   * @param full the marks at every note of the plan, in the order of its notes
   */
  static ImmutableList<NoteMarks> of(Plan plan, List<NoteMarks> full) {
    return new SparingMarks(plan).picked(full);
  }

  private ImmutableList<NoteMarks> picked(List<NoteMarks> full) {
    ImmutableList.Builder<NoteMarks> picked = ImmutableList.builder();
    int from = 0;
    while (from < full.size()) {
      int moment = plan.notes().get(from).moment();
      int to = from + 1;
      while (to < full.size() && plan.notes().get(to).moment() == moment) {
        to++;
      }
      boolean begins = begins(plan.notes().get(from));
      for (int i = from; i < to; i++) {
        pick(plan.notes().get(i), full.get(i), begins).ifPresent(picked::add);
      }
      for (int i = from; i < to; i++) {
        remember(plan.notes().get(i));
      }
      from = to;
    }
    return picked.build();
  }

  /** Whether the hand comes to its place at a moment, or begins there anew. */
  private boolean begins(PlannedNote note) {
    boolean first = note.moment() == 0;
    boolean moves = note.shift() || (!first && frame(note.moment() - 1).shiftsTo(frame(note)));
    if (moves) {
      stay++;
      stopped.clear();
    }
    boolean anew = first || afterMeasureOfRest(note.note());
    untold |= moves || (anew && above(note));
    return moves || anew;
  }

  private Frame frame(int moment) {
    return plan.grips().get(moment).frame();
  }

  private static Frame frame(PlannedNote note) {
    return note.placement().frame();
  }

  private static boolean above(PlannedNote note) {
    return frame(note).position().compareTo(Position.FIRST) > 0;
  }

  private boolean afterMeasureOfRest(Note note) {
    BigFraction silence = note.start().subtract(silentFrom);
    return plan.passage().measures().stream()
        .filter(measure -> measure.index() == note.place().measureIndex())
        .map(SparingMarks::whole)
        .anyMatch(length -> silence.compareTo(length) >= 0);
  }

  private static BigFraction whole(Measure measure) {
    return BigFraction.of(4 * measure.beats(), measure.beatType());
  }

  private void remember(PlannedNote note) {
    Placement placement = note.placement();
    int measure = note.note().place().measureIndex();
    taken.put(
        note.note().sounding(), new Taken(placement.string(), placement.finger(), measure, stay));
    untold &= note.open();
    if (!note.open()) {
      stopped.add(placement.string());
    }
    BigFraction end = note.note().end();
    silentFrom = end.compareTo(silentFrom) > 0 ? end : silentFrom;
  }

  private Optional<NoteMarks> pick(PlannedNote note, NoteMarks full, boolean begins) {
    boolean shows = begins || (untold && !note.open());
    boolean harmonic = note.placement().touch().isPresent();
    Marks printed = note.note().marks();
    boolean finger =
        shows
            || (!struckAgain(note.moment()) && asks(note))
            || printed.finger().filter(other -> !other.equals(note.finger())).isPresent();
    boolean string =
        (shows && above(note) && !note.open())
            || (finger && (harmonic || elsewhere(note)))
            || (printed.string().isPresent()
                && printed.string().getAsInt() != note.placement().string());
    NoteMarks picked =
        new NoteMarks(
            full.note(),
            finger ? full.finger() : Optional.empty(),
            string ? full.string() : OptionalInt.empty(),
            full.words());
    boolean any =
        picked.finger().isPresent() || picked.string().isPresent() || picked.words().isPresent();
    return any ? Optional.of(picked) : Optional.empty();
  }

  /** Whether the moment is the one before, struck again with the same fingers. */
  private boolean struckAgain(int moment) {
    if (moment == 0) {
      return false;
    }
    List<Placement> before = plan.grips().get(moment - 1).placements();
    List<Placement> now = plan.grips().get(moment).placements();
    if (before.size() != now.size()) {
      return false;
    }
    for (int i = 0; i < now.size(); i++) {
      if (!alike(before.get(i), now.get(i))
          || before.get(i).semitones() != now.get(i).semitones()) {
        return false;
      }
    }
    return true;
  }

  private static boolean alike(Placement one, Placement other) {
    return one.string() == other.string() && one.finger() == other.finger();
  }

  /** Whether a reader would not take the note so unasked. */
  private boolean asks(PlannedNote note) {
    Placement placement = note.placement();
    boolean together = plan.grips().get(note.moment()).placements().size() > 1;
    if (together
        || placement.touch().isPresent()
        || placement.finger() == Finger.THUMB
        || newString(note)
        || slides(note)
        || departs(note)) {
      return true;
    }
    List<Placement> atHand = atHand(note);
    if (placement.open()) {
      return above(note) && !told(note) && couldBeStopped(note);
    }
    boolean byItself = atHand.stream().anyMatch(one -> alike(one, placement));
    boolean openToo = atHand.stream().anyMatch(Placement::open);
    boolean otherFinger = atHand.stream().anyMatch(one -> !one.open() && !alike(one, placement));
    return !byItself || otherFinger || (openToo && placement.finger() == Finger.FOURTH);
  }

  /** Whether a hand above 1st position finds its first note on the string. */
  private boolean newString(PlannedNote note) {
    return above(note) && !note.open() && !stopped.contains(note.placement().string());
  }

  /** Whether the finger has just stopped another note of the string. */
  private boolean slides(PlannedNote note) {
    Placement now = note.placement();
    return !now.open()
        && note.moment() > 0
        && plan.grips().get(note.moment() - 1).placements().stream()
            .anyMatch(before -> alike(before, now) && before.semitones() != now.semitones());
  }

  /** Whether the same note was taken otherwise in this measure or the one before. */
  private boolean departs(PlannedNote note) {
    Taken last = taken.get(note.note().sounding());
    return last != null
        && last.stay == stay
        && last.measure >= note.note().place().measureIndex() - 1
        && !takenLike(last, note);
  }

  /** Whether the reader knows from earlier in the measure, as of an accidental. */
  private boolean told(PlannedNote note) {
    Taken last = taken.get(note.note().sounding());
    return last != null
        && last.stay == stay
        && last.measure == note.note().place().measureIndex()
        && takenLike(last, note);
  }

  private static boolean takenLike(Taken last, PlannedNote note) {
    return last.string == note.placement().string() && last.finger == note.placement().finger();
  }

  private List<Placement> everywhere(PlannedNote note) {
    return board.placements(PitchRequest.of(note.note()));
  }

  private boolean couldBeStopped(PlannedNote note) {
    return everywhere(note).stream().anyMatch(Placement::stopped);
  }

  /**
   * The ways to take the note where the hand stands: open, or with the hand as it falls, or opened
   * as it was for the moment before.
   */
  private List<Placement> atHand(PlannedNote note) {
    Frame hand = frame(note);
    Frame before = note.moment() == 0 ? hand : frame(note.moment() - 1);
    return everywhere(note).stream()
        .filter(one -> one.touch().isEmpty() && one.stretch() == 0 && !one.respelled())
        .filter(one -> !hand.shiftsTo(one.frame()))
        .filter(one -> one.open() || falls(one.frame()) || one.frame().shape() == before.shape())
        .toList();
  }

  private static boolean falls(Frame frame) {
    return switch (frame.shape()) {
      case LETTERS, CLOSED, THUMB -> true;
      case EXTENDED_BACK, EXTENDED_FORWARD -> false;
    };
  }

  /** Whether the same finger takes the note on another string too, without moving the hand. */
  private boolean elsewhere(PlannedNote note) {
    Placement placement = note.placement();
    return atHand(note).stream()
        .anyMatch(one -> one.finger() == placement.finger() && one.string() != placement.string());
  }
}
