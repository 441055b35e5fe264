import static fingering.music.BeatUnit.EIGHTH;
import static fingering.music.BeatUnit.HALF;
import static fingering.music.BeatUnit.QUARTER;

import com.google.common.collect.ImmutableList;
import fingering.demand.OwnLimit;
import fingering.demand.OwnSkill;
import fingering.fingerboard.Finger;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.music.builder.PassageBuilder;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instruments;
import java.util.stream.Collectors;

/** Plans music written in code, with a rule, a limit and a required skill of its own. */
class PlanFromCode {
  private static final long LIMIT = 10_000_000_000L; // nanoseconds

  /** Charges each note that the second finger plays: this player's is taped today. */
  record TapedFinger() implements NoteRule {
    @Override
    public String id() {
      return "taped-finger";
    }

    @Override
    public String name() {
      return "Taped finger";
    }

    @Override
    public String explanation() {
      return "A taped finger feels the string badly.";
    }

    @Override
    public String unit() {
      return "note";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      return grip.placements().stream().filter(p -> p.finger() == Finger.SECOND).count();
    }
  }

  public static void main(String[] arguments) {
    Passage passage =
        PassageBuilder.of(Instruments.standard().named("viola"))
            .key(-2)
            .meter(3, 4)
            .tempo("quarter=96")
            .pickup(QUARTER)
            .note("D4", QUARTER)
            .slur(EIGHTH, "G4", "A4", "Bb4", "A4").note("G4", QUARTER)
            .tuplet(3, 2, t -> t.notes(EIGHTH, "F#4", "G4", "A4")).note("D5", HALF).tie()
            .note("D5", QUARTER).grace("C5").note("Bb4", QUARTER).chord(QUARTER, "D4", "A4")
            .note("G4", HALF).note("B2", QUARTER) // below the lowest string
            .build();

    CostRule taped = new TapedFinger();
    ImmutableList<CostRule> rules =
        ImmutableList.<CostRule>builder().addAll(StandardRules.all()).add(taped).build();
    Weights weights = Weights.preset("intermediate").with("shift", 15).with(taped, 8);

    Brief brief =
        Brief.builder("vibrato")
            .addDemand(
                OwnLimit.of(
                    "stop notes of a second and more",
                    (moment, grip) -> moment.soundMicros() < 1_000_000 || !grip.open()))
            .addDemand(
                OwnSkill.of(
                    "show the fourth finger on string II",
                    2,
                    (moment, grip) ->
                        grip.placements().stream()
                            .anyMatch(p -> p.string() == 2 && p.finger() == Finger.FOURTH)))
            .build();

    Planner planner = Planner.of(passage, Scoring.of(rules, weights));
    planner.passage().unplayable()
        .forEach(note -> System.out.printf("left out: %s in %s%n", note.written(), note.place()));

    // After the time limit a search ends with a CancellationException.
    long start = System.nanoTime();
    ImmutableList<Plan> plans =
        planner.withCancellation(() -> System.nanoTime() - start > LIMIT).plans(brief, 3);
    for (Plan plan : plans) {
      String fingers =
          plan.notes().stream()
              .map(note -> note.string() + "/" + note.finger())
              .collect(Collectors.joining(" "));
      System.out.printf("%d points: %s%n", plan.total(), fingers);
    }

    Plan best = plans.get(0);
    String positions =
        best.notes().stream()
            .map(note -> note.open() ? "open" : note.position().toString())
            .collect(Collectors.joining(" "));
    System.out.printf("positions: %s%n", positions);
    best.rules().forEach(rule -> System.out.printf("%4d  %s%n", rule.cost(), rule.name()));
  }
}
