package fingering.plan;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.scoring.Charge;
import fingering.tables.FingeringException;
import fingering.tables.Position;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A fingering for every note of a passage, with its cost explained.
 *
 * @param brief the brief it meets
 * @param passage the music
 * @param grips a grip for each moment
 * @param notes a planned note for each sounding note, in score order, chords lowest first
 * @param explanation why it costs what it does
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
   * A measure with its cost.
   *
   * @param measure its number as printed
   * @param cost points
   * @param dearest the name of the rule that charges it most
   */
  public record MeasureCost(String measure, long cost, String dearest) {}

  /** What each rule charged each moment; together the total. */
  public ImmutableList<Charge> charges() {
    return explanation.charges();
  }

  /** The charges added up by rule, dearest first; rules that charged nothing are left out. */
  public ImmutableList<RuleCost> rules() {
    return explanation.rules();
  }

  /** The plan's name. */
  public String name() {
    return brief.name();
  }

  /** The same plan by another name. */
  public Plan named(String other) {
    return new Plan(brief.named(other), passage, grips, notes, explanation, total);
  }

  /** How often the hand shifts. */
  public int shifts() {
    return (int) notes.stream().filter(PlannedNote::shift).count();
  }

  /** How often the bow crosses to another string. */
  public int crossings() {
    return (int) notes.stream().filter(note -> note.crossing() > 0).count();
  }

  /** Notes taken by the fourth finger. */
  public int fourthFingers() {
    return count(Finger.FOURTH);
  }

  /** Notes on an open string. */
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

  /** Stopped notes in each position; open strings and harmonics count in none. */
  public ImmutableSortedMap<Position, Integer> notesByPosition() {
    TreeMap<Position, Integer> counts = new TreeMap<>();
    for (PlannedNote note : notes) {
      if (note.placement().stopped()) {
        counts.merge(note.placement().frame().position(), 1, Integer::sum);
      }
    }
    return ImmutableSortedMap.copyOf(counts);
  }

  /** The runs of notes between shifts, in order; runs of open strings alone are left out. */
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

  /** Notes that lie outside the positions the brief prefers. */
  public int notesOutside() {
    return (int) notes.stream().filter(PlannedNote::outside).count();
  }

  /**
   * The measures with the highest cost, dearest first; those that cost nothing are left out.
   *
   * @param howMany how many at the most, 0 or more
   * @throws FingeringException if that is below 0
   */
  public ImmutableList<MeasureCost> hardestMeasures(int howMany) {
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
        .limit(howMany)
        .collect(ImmutableList.toImmutableList());
  }

  private MeasureCost measureCost(int measureIndex, Map<String, Long> costs) {
    String dearest =
        costs.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    String name =
        rules().stream().filter(r -> r.rule().equals(dearest)).findFirst().orElseThrow().name();
    long cost = costs.values().stream().mapToLong(Long::longValue).sum();
    return new MeasureCost(number(measureIndex), cost, name);
  }

  private String number(int measureIndex) {
    return passage.measures().stream()
        .filter(measure -> measure.index() == measureIndex)
        .findFirst()
        .orElseThrow()
        .number();
  }

  /**
   * What the rules charged one moment; nothing where there is no such moment.
   *
   * @param moment index of the moment in the passage, from 0
   */
  public List<Charge> chargesAt(int moment) {
    return charges().stream().filter(charge -> charge.moment() == moment).toList();
  }
}
