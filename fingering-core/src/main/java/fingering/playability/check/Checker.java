package fingering.playability.check;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.music.Moment;
import fingering.music.Movements;
import fingering.music.Passage;
import fingering.music.print.PrintedText;
import fingering.musicxml.reading.PartInfo;
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
 * Checks scores for a level. It caches grips and costs, so one checker for many scores is much
 * faster than one for each. Thread-safe.
 */
public final class Checker {
  private final CheckLevel level;
  private final PlayerSpeed playerSpeed;
  private final PlannerFactory planners;
  private final EasyGrips easyGrips;
  private final ScoreWords scoreWords = new ScoreWords();
  private final ImmutableList<CheckRule> rules;
  private final DifficultyScale difficulty;

  private Checker(CheckLevel level) {
    this.level = level;
    playerSpeed = level.playerSpeed();
    planners =
        new PlannerFactory(Scoring.of(StandardRules.all(), level.weights()), LeftHand.MEDIUM);
    easyGrips = new EasyGrips(level);
    rules =
        ImmutableList.of(
            new RangeRule(level, Instruments.standard()),
            new ChordRule(level),
            new TempoRule(level),
            new PositionRule(level, easyGrips),
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

  /** Creates a checker for a level. */
  public static Checker of(CheckLevel level) {
    return new Checker(level);
  }

  /** Returns the level of the players. */
  public CheckLevel level() {
    return level;
  }

  /**
   * Checks every recognised string part of a score.
   *
   * @throws fingering.musicxml.UnreadableScoreException if a part cannot be read
   */
  public ScoreCheck check(Score score) {
    return check(score, CheckRequest.WHOLE);
  }

  /**
   * Checks parts of a score.
   *
   * @throws fingering.musicxml.SelectionException if the request names a part that the score does
   *     not have, or one whose instrument is neither recognised nor given
   * @throws fingering.musicxml.UnreadableScoreException if a part cannot be read
   */
  public ScoreCheck check(Score score, CheckRequest request) {
    ImmutableSet<PartInfo> chosen = chosen(score, request);
    ImmutableList.Builder<PartCheck> parts = ImmutableList.builder();
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    remarks.addAll(score.remarks());
    for (PartInfo part : chosen) {
      if (request.parts().isEmpty() && !score.hasNotes(part) && score.readable(part)) {
        remarks.add(part.name() + " has no notes to finger and was not checked");
      } else {
        parts.add(check(score, part, request));
      }
    }
    ImmutableList<PartCheck> checked = parts.build();
    if (chosen.isEmpty()) {
      remarks.add(
          "no part was recognised as a string part; choose a part and its instrument: "
              + PartInfo.withReasons(score.parts()));
    } else if (!checked.isEmpty() && request.forces().isEmpty()) {
      ForcesDetector.remark(checked, scoreWords).ifPresent(remarks::add);
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
        ? score.parts().stream().filter(PartInfo::isString).collect(ImmutableSet.toImmutableSet())
        : request.parts().stream().map(score::part).collect(ImmutableSet.toImmutableSet());
  }

  private PartCheck check(Score score, PartInfo part, CheckRequest request) {
    Passage passage = score.passage(part, request.passage(score), request.setup());
    PartMusic music = music(score, part, passage, request);
    Findings findings = Findings.of(music);
    for (CheckRule rule : rules) {
      rule.check(music, findings);
    }
    return new PartCheck(
        part,
        music.instrument(),
        music.forces(),
        music.passage().measures().size(),
        Movements.of(music.passage().measures()),
        music.moments().stream().mapToInt(moment -> moment.starting().size()).sum(),
        findings.inOrder(),
        difficulty.of(music),
        music.passage().remarks().stream()
            .filter(remark -> !score.remarks().contains(remark))
            .collect(ImmutableList.toImmutableList()));
  }

  private PartMusic music(Score score, PartInfo part, Passage passage, CheckRequest request) {
    PlayerLines lines = new PlayerLines(passage, planners, easyGrips, playerSpeed);
    ImmutableList.Builder<Optional<Moment>> playableMoments = ImmutableList.builder();
    ImmutableList.Builder<ImmutableList<Grip>> gripsOfMoments = ImmutableList.builder();
    for (Moment moment : passage.moments()) {
      ImmutableList<Grip> all = lines.grips(moment);
      Optional<Moment> kept = all.isEmpty() ? lines.playable(moment) : Optional.of(moment);
      playableMoments.add(kept);
      gripsOfMoments.add(all.isEmpty() ? kept.map(lines::grips).orElse(ImmutableList.of()) : all);
    }
    ImmutableList<Optional<Moment>> playable = playableMoments.build();
    ImmutableList<ImmutableList<Grip>> grips = gripsOfMoments.build();
    PrintedNoteIndex prints = new PrintedNoteIndex(score.printed(passage, Optional.empty()));
    ImmutableList<PrintedText> texts = prints.part().texts();
    Forces forces =
        request
            .forces()
            .orElseGet(() -> ForcesDetector.of(score, part, level.students(), scoreWords));
    Players players =
        Players.of(
            forces,
            passage.moments(),
            texts,
            scoreWords,
            Players.voices(passage.moments(), prints));
    return new PartMusic(
        part,
        passage,
        forces,
        texts,
        scoreWords,
        prints,
        players,
        MovementStarts.of(passage, prints),
        playable,
        grips,
        lines.of(playable, grips, players, prints),
        lines::grips);
  }
}
