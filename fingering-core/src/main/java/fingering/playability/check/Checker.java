package fingering.playability.check;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PrintedText;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.plan.PlannerFactory;
import fingering.playability.CheckLevel;
import fingering.playability.CheckRequest;
import fingering.playability.Forces;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.part.EasyGrips;
import fingering.playability.part.MovementStarts;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLines;
import fingering.playability.part.Players;
import fingering.playability.part.PrintedNoteIndex;
import fingering.playability.part.ScoreWords;
import fingering.playability.rules.BowRule;
import fingering.playability.rules.ChangeRule;
import fingering.playability.rules.CheckRule;
import fingering.playability.rules.ChordRule;
import fingering.playability.rules.ClefRule;
import fingering.playability.rules.DivisiRule;
import fingering.playability.rules.ExtensionRule;
import fingering.playability.rules.Findings;
import fingering.playability.rules.HarmonicRule;
import fingering.playability.rules.PositionRule;
import fingering.playability.rules.RangeRule;
import fingering.playability.rules.SharedPartRule;
import fingering.playability.rules.SlurRule;
import fingering.playability.rules.StringRule;
import fingering.playability.rules.TempoRule;
import fingering.playability.rules.TrillRule;
import fingering.scoring.Scoring;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instruments;
import fingering.tempo.PlayerSpeed;
import java.util.Optional;

/**
 * Checks scores for a level. It keeps the grips and costs that it has found, so that one checker
 * for many scores is far quicker than one for each. Safe for use by many threads.
 */
public final class Checker {
  private final CheckLevel level;
  private final PlayerSpeed tempo;
  private final PlannerFactory planners;
  private final EasyGrips easy;
  private final ScoreWords words = new ScoreWords();
  private final ImmutableList<CheckRule> rules;
  private final DifficultyScale difficulty;

  private Checker(CheckLevel level) {
    this.level = level;
    tempo = level.tempo();
    planners =
        new PlannerFactory(Scoring.of(StandardRules.all(), level.weights()), LeftHand.MEDIUM);
    easy = new EasyGrips(level);
    rules =
        ImmutableList.of(
            new RangeRule(level, Instruments.standard()),
            new ChordRule(level),
            new TempoRule(level),
            new PositionRule(level, easy),
            new ExtensionRule(level),
            new SlurRule(level),
            new HarmonicRule(level),
            new TrillRule(),
            new BowRule(level),
            new ChangeRule(level),
            new ClefRule(level),
            new DivisiRule(),
            new StringRule(),
            new SharedPartRule());
    difficulty = new DifficultyScale();
  }

  /** A checker for a level. */
  public static Checker of(CheckLevel level) {
    return new Checker(level);
  }

  /** The level it checks for. */
  public CheckLevel level() {
    return level;
  }

  /** Checks every string part of a score that shows itself. */
  public ScoreCheck check(Score score) {
    return check(score, CheckRequest.WHOLE);
  }

  /**
   * Checks parts of a score.
   *
   * @throws fingering.musicxml.SelectionException if the request names a part that is not there, or
   *     one whose instrument neither it nor the request shows
   * @throws fingering.musicxml.UnreadableScoreException if a part cannot be read
   */
  public ScoreCheck check(Score score, CheckRequest request) {
    ImmutableSet<PartInfo> chosen = chosen(score, request);
    ImmutableList.Builder<PartCheck> parts = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    remarks.addAll(score.remarks());
    for (PartInfo part : chosen) {
      if (request.parts().isEmpty() && !score.hasNotes(part) && score.readable(part)) {
        remarks.add(part.name() + " has no note and is left out");
      } else {
        parts.add(check(score, part, request));
      }
    }
    ImmutableList<PartCheck> checked = parts.build();
    if (checked.isEmpty()) {
      remarks.add("no part shows a string instrument; name parts with --part and --instrument");
    } else if (request.forces().isEmpty()) {
      Seating.remark(checked, words).ifPresent(remarks::add);
    }
    return new ScoreCheck(
        score.title(),
        level,
        checked,
        score.parts().stream()
            .filter(part -> !chosen.contains(part) || !score.hasNotes(part))
            .collect(ImmutableList.toImmutableList()),
        remarks.build());
  }

  private static ImmutableSet<PartInfo> chosen(Score score, CheckRequest request) {
    return request.parts().isEmpty()
        ? score.parts().stream()
            .filter(part -> part.instrument().isPresent() && !part.guessed())
            .collect(ImmutableSet.toImmutableSet())
        : request.parts().stream().map(score::part).collect(ImmutableSet.toImmutableSet());
  }

  private PartCheck check(Score score, PartInfo part, CheckRequest request) {
    PassageRequest asked =
        new PassageRequest(
            Optional.empty(),
            request.parts().isEmpty() ? Optional.empty() : request.instrument(),
            Optional.empty(),
            request.tempo(),
            Optional.empty());
    PartMusic music = music(score, part, score.passage(part, asked, request.built()), request);
    Findings findings = Findings.of(music);
    for (CheckRule rule : rules) {
      rule.check(music, findings);
    }
    return new PartCheck(
        part,
        music.instrument(),
        music.forces(),
        music.passage().measures().size(),
        music.moments().stream().mapToInt(moment -> moment.starting().size()).sum(),
        findings.inOrder(),
        difficulty.of(music),
        music.passage().remarks().stream()
            .filter(remark -> !score.remarks().contains(remark))
            .collect(ImmutableList.toImmutableList()));
  }

  private PartMusic music(Score score, PartInfo part, Passage passage, CheckRequest request) {
    PlayerLines lines = new PlayerLines(passage, planners, easy, tempo);
    ImmutableList.Builder<Optional<Moment>> left = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<Grip>> grips = ImmutableList.builder();
    for (Moment moment : passage.moments()) {
      ImmutableList<Grip> all = lines.ways(moment);
      Optional<Moment> kept = all.isEmpty() ? lines.playable(moment) : Optional.of(moment);
      left.add(kept);
      grips.add(all.isEmpty() ? kept.map(lines::ways).orElse(ImmutableList.of()) : all);
    }
    ImmutableList<Optional<Moment>> playable = left.build();
    ImmutableList<ImmutableList<Grip>> ways = grips.build();
    PrintedNoteIndex prints = new PrintedNoteIndex(score.printed(passage, Optional.empty()));
    ImmutableList<PrintedText> texts = prints.part().texts();
    Forces forces = request.forces().orElseGet(() -> Seating.of(score, part, words));
    Players players =
        Players.of(
            forces, passage.moments(), texts, words, Players.voices(passage.moments(), prints));
    return new PartMusic(
        part,
        passage,
        forces,
        texts,
        words,
        prints,
        players,
        MovementStarts.of(passage, prints),
        playable,
        ways,
        lines.of(playable, ways, players, prints),
        lines::ways);
  }
}
