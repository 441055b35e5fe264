import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.Plan;
import fingering.plan.Planner;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Scoring;
import fingering.scoring.Weights;
import fingering.scoring.rules.StandardRules;
import java.nio.file.Path;

/** Plans with a rule and weights of its own: long notes are stopped, for the vibrato. */
class OwnRule {
  /** Charges each tenth of a second of a long note on an open string. */
  record LongOpen() implements NoteRule {
    private static final long LONG = 50; // hundredths of a second

    @Override
    public String id() {
      return "long-open";
    }

    @Override
    public String name() {
      return "Long note on an open string";
    }

    @Override
    public String explanation() {
      return "A long note needs vibrato, which an open string does not have.";
    }

    @Override
    public String unit() {
      return "tenth of a second";
    }

    @Override
    public long amount(NoteContext context, Grip grip) {
      // Grip.open() means that all its strings are open. To charge a double stop with one open
      // string too, write grip.placements().stream().anyMatch(Placement::open).
      boolean charged = grip.open() && !context.plucked() && context.hundredths() >= LONG;
      return charged ? context.hundredths() / 10 : 0;
    }
  }

  public static void main(String[] arguments) {
    Passage passage =
        ScoreReader.read(ScoreFile.read(Path.of(arguments[0]))).passage(PassageRequest.WHOLE);
    CostRule longOpen = new LongOpen();
    ImmutableList<CostRule> rules =
        ImmutableList.<CostRule>builder().addAll(StandardRules.all()).add(longOpen).build();
    Weights usualWeights = Weights.preset("intermediate");
    Weights ownWeights =
        usualWeights
            .with(longOpen, 60)
            .with("fourth-finger", 5); // usually 12; this player has a strong fourth finger

    Planner usual = Planner.of(passage, Scoring.of(StandardRules.all(), usualWeights));
    Planner own = usual.withScoring(Scoring.of(rules, ownWeights));
    print("usual", usual.plan(Brief.free("usual")));
    print("own", own.plan(Brief.free("own")));
  }

  private static void print(String name, Plan plan) {
    System.out.printf(
        "%s: open strings %d, fourth fingers %d, shifts %d%n",
        name, plan.openStrings(), plan.fourthFingers(), plan.shifts());
  }
}
