package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.scoring.Charge;
import fingering.tables.Position;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A fingering for every note of a passage, with its cost.
 *
 * @param brief the brief it meets
 * @param passage the music
 * @param grips a grip for each moment
 * @param notes a planned note for each note, in score order, chords lowest first
 * @param explanation the cost by rule and moment
 * @param total the plan's cost in points
 */
public record Plan(
    Brief brief,
    Passage passage,
    ImmutableList<Grip> grips,
    ImmutableList<PlannedNote> notes,
    Explanation explanation,
    long total) {

  /**
   * Checks that the lists match the passage.
   *
   * @throws IllegalArgumentException if there is not one grip for each moment and one planned note
   *     for each note
   */
  public Plan {
    int expected = passage.moments().stream().mapToInt(moment -> moment.starting().size()).sum();
    if (grips.size() != passage.moments().size() || notes.size() != expected) {
      throw new IllegalArgumentException(
          "%d grips and %d planned notes for %d moments and %d notes"
              .formatted(grips.size(), notes.size(), passage.moments().size(), expected));
    }
  }

  /**
   * The cost of a measure.
   *
   * @param measure its number as printed
   * @param cost points
   * @param costliestRule the name of the rule that charges it most
   */
  public record MeasureCost(String measure, long cost, String costliestRule) {}

  /** The charge of each rule at each moment; together they are the total. */
  public ImmutableList<Charge> charges() {
    return explanation.charges();
  }

  /** The charges added up by rule, most expensive first, without rules that charged nothing. */
  public ImmutableList<RuleCost> rules() {
    return explanation.rules();
  }

  /** The plan's name. */
  public String name() {
    return brief.name();
  }

  /** A copy with another name. */
  public Plan withName(String newName) {
    return new Plan(brief.withName(newName), passage, grips, notes, explanation, total);
  }

  /**
   * Whether another plan has the same string, finger and, if stopped, position for every note.
   *
   * @param other a plan of the same passage
   */
  public boolean sameFingering(Plan other) {
    return IntStream.range(0, notes.size())
        .allMatch(i -> notes.get(i).sameFingering(other.notes.get(i)));
  }

  /** The number of shifts. */
  public int shifts() {
    return (int) notes.stream().filter(PlannedNote::shift).count();
  }

  /** The number of string crossings. */
  public int crossings() {
    return (int) notes.stream().filter(note -> note.crossing() > 0).count();
  }

  /** The number of notes with the fourth finger. */
  public int fourthFingers() {
    return count(Finger.FOURTH);
  }

  /** The number of notes on an open string. */
  public int openStrings() {
    return count(Finger.OPEN);
  }

  private int count(Finger finger) {
    return (int) notes.stream().filter(n -> n.placement().finger() == finger).count();
  }

  /** The highest position with a stopped note; empty if every note is open. */
  public Optional<Position> highestPosition() {
    ImmutableSortedMap<Position, Integer> positions = notesByPosition();
    return positions.isEmpty() ? Optional.empty() : Optional.of(positions.lastKey());
  }

  /** The number of stopped notes by position; open strings and harmonics are not counted. */
  public ImmutableSortedMap<Position, Integer> notesByPosition() {
    TreeMap<Position, Integer> counts = new TreeMap<>();
    for (PlannedNote note : notes) {
      if (note.placement().stopped()) {
        counts.merge(note.placement().frame().position(), 1, Integer::sum);
      }
    }
    return ImmutableSortedMap.copyOf(counts);
  }

  /** The stays between shifts, in order, without those that have no stopped note. */
  public ImmutableList<Stay> stays() {
    ImmutableList.Builder<Stay> stays = ImmutableList.builder();
    int start = 0;
    for (int i = 1; i <= notes.size(); i++) {
      if (i == notes.size() || !positionOf(i).equals(positionOf(start))) {
        int stopped =
            (int) notes.subList(start, i).stream().filter(n -> n.placement().stopped()).count();
        if (stopped > 0) {
          String from = notes.get(start).note().place().measure();
          stays.add(
              new Stay(
                  positionOf(start), from, notes.get(i - 1).note().place().measure(), stopped));
        }
        start = i;
      }
    }
    return stays.build();
  }

  private Position positionOf(int note) {
    return notes.get(note).placement().frame().position();
  }

  /** The number of stopped notes. */
  public int stoppedNotes() {
    return (int) notes.stream().filter(note -> note.placement().stopped()).count();
  }

  /** The number of stopped notes in the positions that the brief prefers. */
  public int notesInPreferred() {
    return (int)
        notes.stream().filter(note -> note.placement().stopped() && !note.outside()).count();
  }

  /** The number of notes outside the positions that the brief prefers. */
  public int notesOutside() {
    return (int) notes.stream().filter(PlannedNote::outside).count();
  }

  /**
   * The most expensive measures, most expensive first, without those that cost nothing.
   *
   * @param limit the maximum number of measures to return, 0 or more
   * @throws IllegalArgumentException if the limit is below 0
   */
  public ImmutableList<MeasureCost> hardestMeasures(int limit) {
    TreeMap<Integer, Map<String, Long>> costs = new TreeMap<>();
    for (Charge charge : charges()) {
      int measure = passage.moments().get(charge.moment()).place().measureIndex();
      costs
          .computeIfAbsent(measure, m -> new TreeMap<>())
          .merge(charge.rule(), charge.cost(), Long::sum);
    }
    return costs.entrySet().stream()
        .map(entry -> measureCost(entry.getKey(), entry.getValue()))
        .sorted(Comparator.comparingLong(MeasureCost::cost).reversed())
        .limit(limit)
        .collect(ImmutableList.toImmutableList());
  }

  private MeasureCost measureCost(int measureIndex, Map<String, Long> costs) {
    String costliest =
        costs.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    String name =
        rules().stream().filter(r -> r.rule().equals(costliest)).findFirst().orElseThrow().name();
    long cost = costs.values().stream().mapToLong(Long::longValue).sum();
    String number = passage.measure(measureIndex).orElseThrow().number();
    return new MeasureCost(number, cost, name);
  }

  /**
   * The charges at one moment; none if the passage does not have that moment.
   *
   * @param moment index of the moment in the passage, from 0
   */
  public ImmutableList<Charge> chargesAt(int moment) {
    return explanation.at(moment);
  }
}
