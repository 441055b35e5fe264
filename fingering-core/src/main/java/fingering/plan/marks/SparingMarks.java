package fingering.plan.marks;

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
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
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
 * Selects the marks needed by a reader who keeps the hand in place unless a mark says otherwise. A
 * redundant mark makes the others harder to see. The fingerings that a reader chooses without a
 * mark are computed for a medium hand, without stretches.
 */
final class SparingMarks {
  /** A reader who has played this many measures without a finger wants to be sure of the place. */
  private static final int LONGEST_WITHOUT = 4;

  /**
   * The last fingering of a pitch.
   *
   * @param measure index of its measure
   * @param stay number of the stay in which it was played
   */
  private record LastFingering(int string, Finger finger, int measure, int stay) {}

  private final Plan plan;
  private final Fingerboard board;
  private final Map<Pitch, LastFingering> lastFingerings = new HashMap<>();

  /** The strings on which a finger has stopped a note in this stay. */
  private final Set<Integer> stoppedStrings = new HashSet<>();

  /** The number of the current stay; it grows with each shift. */
  private int stay;

  /** Whether no stopped note has shown the new position yet. */
  private boolean positionPending;

  /** The measure with the last finger that is printed. */
  private int lastMarked;

  /** The end of the last sounding note, in quarter notes. */
  private BigFraction soundEnd = BigFraction.ZERO;

  private SparingMarks(Plan plan) {
    this.plan = plan;
    board = Fingerboard.of(plan.passage().instrument());
  }

  /**
   * The marks that a reader needs.
   *
   * @param full the marks at every note of the plan, in the order of its notes
   */
  static ImmutableList<NoteMarks> of(Plan plan, List<NoteMarks> full) {
    return new SparingMarks(plan).select(full);
  }

  private ImmutableList<NoteMarks> select(List<NoteMarks> full) {
    ImmutableList.Builder<NoteMarks> selected = ImmutableList.builder();
    int from = 0;
    while (from < full.size()) {
      int moment = plan.notes().get(from).moment();
      int to = from + 1;
      while (to < full.size() && plan.notes().get(to).moment() == moment) {
        to++;
      }
      boolean placesHand = placesHand(plan.notes().get(from));
      for (int i = from; i < to; i++) {
        select(plan.notes().get(i), full.get(i), placesHand).ifPresent(selected::add);
      }
      for (int i = from; i < to; i++) {
        remember(plan.notes().get(i));
      }
      from = to;
    }
    return selected.build();
  }

  /** Whether the hand is placed at a note: after a shift, a long rest, or at the beginning. */
  private boolean placesHand(PlannedNote note) {
    boolean first = note.moment() == 0;
    boolean moves = note.shift() || (!first && frame(note.moment() - 1).shiftsTo(frame(note)));
    if (moves) {
      stay++;
      stoppedStrings.clear();
    }
    boolean starts = first || afterMeasureOfRest(note.note());
    positionPending |= moves || (starts && aboveFirst(note));
    return moves || starts;
  }

  private Frame frame(int moment) {
    return plan.grips().get(moment).frame();
  }

  private static Frame frame(PlannedNote note) {
    return note.placement().frame();
  }

  private static boolean aboveFirst(PlannedNote note) {
    return frame(note).position().compareTo(Position.FIRST) > 0;
  }

  private boolean afterMeasureOfRest(Note note) {
    BigFraction silence = note.start().subtract(soundEnd);
    return plan.passage()
        .measure(note.place().measureIndex())
        .map(SparingMarks::meterLength)
        .filter(length -> silence.compareTo(length) >= 0)
        .isPresent();
  }

  /** The length of a full measure in quarter notes. */
  private static BigFraction meterLength(Measure measure) {
    return BigFraction.of(4 * measure.beats(), measure.beatType());
  }

  private void remember(PlannedNote note) {
    Placement placement = note.placement();
    int measure = note.note().place().measureIndex();
    lastFingerings.put(
        note.note().sounding(),
        new LastFingering(placement.string(), placement.finger(), measure, stay));
    positionPending &= note.open();
    if (!note.open()) {
      stoppedStrings.add(placement.string());
    }
    BigFraction end = note.note().end();
    soundEnd = end.compareTo(soundEnd) > 0 ? end : soundEnd;
  }

  private Optional<NoteMarks> select(PlannedNote note, NoteMarks full, boolean placesHand) {
    boolean showsPosition = placesHand || (positionPending && !note.open());
    boolean harmonic = note.placement().touch().isPresent();
    Marks printed = note.note().marks();
    boolean finger =
        showsPosition
            || (!repeated(note.moment()) && needsFinger(note))
            || needsReminder(note)
            || printed.finger().filter(other -> !other.equals(note.finger())).isPresent();
    boolean string =
        (showsPosition && aboveFirst(note) && !note.open())
            || (finger && (harmonic || ambiguousString(note)))
            || (printed.string().isPresent()
                && printed.string().getAsInt() != note.placement().string());
    NoteMarks selected =
        new NoteMarks(
            full.note(),
            finger ? full.finger() : Optional.empty(),
            string ? full.string() : OptionalInt.empty(),
            full.words());
    if (finger) {
      lastMarked = note.note().place().measureIndex();
    }
    return Optional.of(selected).filter(marks -> !marks.isEmpty());
  }

  /** Whether a moment repeats the one before with the same fingers. */
  private boolean repeated(int moment) {
    if (moment == 0) {
      return false;
    }
    List<Placement> before = plan.grips().get(moment - 1).placements();
    List<Placement> now = plan.grips().get(moment).placements();
    if (before.size() != now.size()) {
      return false;
    }
    for (int i = 0; i < now.size(); i++) {
      if (!sameFingering(before.get(i), now.get(i))
          || before.get(i).semitones() != now.get(i).semitones()) {
        return false;
      }
    }
    return true;
  }

  private static boolean sameFingering(Placement one, Placement other) {
    return one.string() == other.string() && one.finger() == other.finger();
  }

  /** Whether a reader without a mark might choose another fingering for a note. */
  private boolean needsFinger(PlannedNote note) {
    Placement placement = note.placement();
    boolean chord = plan.grips().get(note.moment()).placements().size() > 1;
    if (chord
        || placement.touch().isPresent()
        || placement.finger() == Finger.THUMB
        || newString(note)
        || slides(note)
        || differsFromLast(note)) {
      return true;
    }
    if (knownFromMeasure(note)) {
      return false;
    }
    List<Placement> inPlace = inPlace(note);
    if (placement.open()) {
      return aboveFirst(note) && canBeStopped(note);
    }
    boolean natural = inPlace.stream().anyMatch(one -> sameFingering(one, placement));
    boolean open = inPlace.stream().anyMatch(Placement::open);
    boolean otherFinger =
        inPlace.stream().anyMatch(one -> !one.open() && !sameFingering(one, placement));
    return !natural || otherFinger || (open && placement.finger() == Finger.FOURTH);
  }

  /** Whether a note comes after many measures without a finger, and its place is not obvious. */
  private boolean needsReminder(PlannedNote note) {
    return note.note().place().measureIndex() - lastMarked > LONGEST_WITHOUT
        && !note.open()
        && (aboveFirst(note) || ambiguousString(note));
  }

  /** Whether a note is the first stopped one on its string in a stay above 1st position. */
  private boolean newString(PlannedNote note) {
    return aboveFirst(note) && !note.open() && !stoppedStrings.contains(note.placement().string());
  }

  /** Whether the finger has just stopped another note on the string. */
  private boolean slides(PlannedNote note) {
    Placement now = note.placement();
    return !now.open()
        && note.moment() > 0
        && plan.grips().get(note.moment() - 1).placements().stream()
            .anyMatch(
                before -> sameFingering(before, now) && before.semitones() != now.semitones());
  }

  /** Whether the same pitch had another fingering in this measure or the one before. */
  private boolean differsFromLast(PlannedNote note) {
    LastFingering last = lastFingerings.get(note.note().sounding());
    return last != null
        && last.stay == stay
        && last.measure >= note.note().place().measureIndex() - 1
        && !sameFingering(last, note);
  }

  /** Whether the fingering is known from earlier in the measure, as an accidental would be. */
  private boolean knownFromMeasure(PlannedNote note) {
    LastFingering last = lastFingerings.get(note.note().sounding());
    return last != null
        && last.stay == stay
        && last.measure == note.note().place().measureIndex()
        && sameFingering(last, note);
  }

  private static boolean sameFingering(LastFingering last, PlannedNote note) {
    return last.string == note.placement().string() && last.finger == note.placement().finger();
  }

  private List<Placement> allPlacements(PlannedNote note) {
    return board.placements(PitchRequest.of(note.note()));
  }

  private boolean canBeStopped(PlannedNote note) {
    return allPlacements(note).stream().anyMatch(Placement::stopped);
  }

  /**
   * The placements of a note without a shift: open, with the hand in its normal shape, or in the
   * shape of the moment before.
   */
  private List<Placement> inPlace(PlannedNote note) {
    Frame hand = frame(note);
    Frame before = note.moment() == 0 ? hand : frame(note.moment() - 1);
    return allPlacements(note).stream()
        .filter(one -> one.touch().isEmpty() && one.stretch() == 0 && !one.respelled())
        .filter(one -> !hand.shiftsTo(one.frame()))
        .filter(one -> one.open() || normal(one.frame()) || one.frame().shape() == before.shape())
        .toList();
  }

  /** Whether the hand is not extended. */
  private static boolean normal(Frame frame) {
    return switch (frame.shape()) {
      case LETTERS, CLOSED, THUMB -> true;
      case EXTENDED_BACK, EXTENDED_FORWARD -> false;
    };
  }

  /** Whether the same finger can also play the note on another string without a shift. */
  private boolean ambiguousString(PlannedNote note) {
    Placement placement = note.placement();
    return inPlace(note).stream()
        .anyMatch(one -> one.finger() == placement.finger() && one.string() != placement.string());
  }
}
