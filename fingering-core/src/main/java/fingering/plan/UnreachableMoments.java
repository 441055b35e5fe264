package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.demand.AllowPositions;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The moments that cannot be played in the positions allowed, with the reasons and a way out. A
 * teacher would say: first position is not enough, the C in measure 12 is too high; use third there
 * too.
 *
 * @param planner the planner of the passage
 * @param within the positions allowed
 * @param moments the moments that cannot be played there, at least one
 */
record UnreachableMoments(Planner planner, AllowPositions within, BitSet moments) {
  /** The most moments that a message names for one reason. */
  private static final int MAX_NAMED = 3;

  /** The most positions that a message names. */
  private static final int MAX_POSITIONS = 4;

  /** Above the number of halves of every position. */
  private static final int THUMB = 48;

  private enum Reason {
    TOO_HIGH("too high"),
    TOO_LOW("too low"),
    BETWEEN("between the places that the fingers reach there"),
    NO_SHAPE("no hand shape");

    private final String words;

    Reason(String words) {
      this.words = words;
    }
  }

  /** A sentence with the notes, the reasons and the way out. */
  String message() {
    return moments.cardinality() == 1 ? one(moments.nextSetBit(0)) : several();
  }

  private String one(int m) {
    Moment moment = moment(m);
    Reason reason = reason(m);
    BitSet only = new BitSet();
    only.set(m);
    String positions =
        positions(m).stream()
            .filter(position -> !playable(only, Set.of(), position).isEmpty())
            .limit(MAX_POSITIONS)
            .map(Position::toString)
            .collect(Collectors.joining(", "));
    return InfeasibilityDiagnosis.name(moment)
        + " cannot be played in the positions allowed ("
        + allowed()
        + "): "
        + (reason != Reason.NO_SHAPE
            ? "it is " + reason.words
            : moment.starting().size() > 1
                ? "no hand shape there holds these notes together"
                : "no hand shape there holds it with the notes that still sound")
        + (positions.isEmpty()
            ? "; allow more positions"
            : "; it can be played in position " + positions + ", so allow one of these too")
        + divide(moments)
        + ".";
  }

  private String several() {
    Map<Reason, BitSet> byReason = new EnumMap<>(Reason.class);
    moments.stream().forEach(m -> byReason.computeIfAbsent(reason(m), r -> new BitSet()).set(m));
    List<String> clauses = new ArrayList<>();
    byReason.forEach((reason, some) -> clauses.add(clause(reason, some)));
    List<Position> further = further();
    return moments.cardinality()
        + " notes or chords cannot be played in the positions allowed ("
        + allowed()
        + "): "
        + String.join("; ", clauses)
        + "; allow "
        + (further.isEmpty()
            ? "more positions"
            : further.stream().map(Position::toString).collect(Collectors.joining(" and "))
                + " too")
        + divide(byReason.getOrDefault(Reason.NO_SHAPE, new BitSet()))
        + ".";
  }

  private String clause(Reason reason, BitSet some) {
    String names = InfeasibilityDiagnosis.names(planner.passage(), some, MAX_NAMED);
    return reason == Reason.NO_SHAPE
        ? "no hand shape there holds the notes of " + names + " together"
        : names + (some.cardinality() == 1 ? " is " : " are ") + reason.words;
  }

  /** The advice to divide double stops, if there are any. */
  private String divide(BitSet some) {
    long chords = some.stream().filter(m -> moment(m).starting().size() > 1).count();
    return chords == 0
        ? ""
        : chords == 1 ? ", or divide the double stop" : ", or divide the double stops";
  }

  private Moment moment(int m) {
    return planner.passage().moments().get(m);
  }

  private String allowed() {
    return within.positions().stream()
        .sorted()
        .map(Position::toString)
        .collect(Collectors.joining(", "));
  }

  /** The positions of the hand in which a moment can be played, the lowest first. */
  private TreeSet<Position> positions(int m) {
    TreeSet<Position> positions = new TreeSet<>();
    for (Grip grip : planner.grips().get(m)) {
      positions.add(grip.frame().position());
    }
    return positions;
  }

  private Reason reason(int m) {
    if (moment(m).sounding().size() > 1) {
      return Reason.NO_SHAPE;
    }
    TreeSet<Position> possible = positions(m);
    TreeSet<Position> positions = new TreeSet<>(within.positions());
    if (possible.first().compareTo(positions.last()) > 0) {
      return Reason.TOO_HIGH;
    }
    return possible.last().compareTo(positions.first()) < 0 ? Reason.TOO_LOW : Reason.BETWEEN;
  }

  /**
   * Positions to allow too, so that every moment can be played: each time the one that helps most
   * moments, the closest to those allowed first.
   */
  private ImmutableList<Position> further() {
    Set<Position> chosen = new TreeSet<>();
    BitSet left = (BitSet) moments.clone();
    while (!left.isEmpty()) {
      Set<Position> candidates = new TreeSet<>();
      left.stream().forEach(m -> candidates.addAll(positions(m)));
      candidates.removeAll(chosen);
      Position best =
          candidates.stream()
              .min(
                  Comparator.comparingInt((Position p) -> playable(left, chosen, p).cardinality())
                      .reversed()
                      .thenComparingInt(this::distance))
              .orElseThrow();
      BitSet helped = playable(left, chosen, best);
      if (helped.isEmpty()) {
        // A chord that has to be broken may need several positions.
        break;
      }
      left.andNot(helped);
      chosen.add(best);
    }
    return ImmutableList.copyOf(chosen);
  }

  /** The moments that can be played if some positions and one more are allowed too. */
  private BitSet playable(BitSet some, Set<Position> chosen, Position more) {
    AllowPositions wider =
        new AllowPositions(
            ImmutableSet.<Position>builder()
                .addAll(within.positions())
                .addAll(chosen)
                .add(more)
                .build(),
            within.span());
    BitSet playable = new BitSet();
    some.stream()
        .filter(
            m -> planner.grips().get(m).stream().anyMatch(grip -> wider.allows(moment(m), grip)))
        .forEach(playable::set);
    return playable;
  }

  /** The distance of a position from the nearest one allowed, in halves. */
  private int distance(Position position) {
    return within.positions().stream()
        .mapToInt(allowed -> Math.abs(halves(allowed) - halves(position)))
        .min()
        .orElse(0);
  }

  private static int halves(Position position) {
    return position.halves().orElse(THUMB);
  }
}
