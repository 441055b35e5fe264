package fingering.playability;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.PrintedText;
import fingering.musicxml.PartInfo;
import fingering.musicxml.PassageRequest;
import fingering.musicxml.Score;
import fingering.plan.Planners;
import fingering.scoring.Rules;
import fingering.scoring.Scoring;
import fingering.tables.Instruments;
import fingering.tempo.Level;
import java.util.Optional;

/**
 * Checks scores for a level. It keeps the grips and costs that it has found, so that one checker
 * for many scores is far quicker than one for each. Safe for use by many threads.
 */
public final class Checker {
  private final CheckLevel level;
  private final Level tempo;
  private final Planners planners;
  private final EasyWays easy;
  private final ScoreWords words = new ScoreWords();
  private final ImmutableList<CheckRule> rules;
  private final DifficultyScale difficulty;

  private Checker(CheckLevel level) {
    this.level = level;
    tempo = level.tempo();
    planners = new Planners(Scoring.of(Rules.all(), level.weights()), LeftHand.MEDIUM);
    easy = new EasyWays(level);
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
   * @throws fingering.musicxml.ChoiceException if the request names a part that is not there, or
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
        music.moments().stream().mapToInt(moment -> moment.struck().size()).sum(),
        findings.inOrder(),
        difficulty.of(music),
        music.passage().remarks().stream()
            .filter(remark -> !score.remarks().contains(remark))
            .collect(ImmutableList.toImmutableList()));
  }

  private PartMusic music(Score score, PartInfo part, Passage passage, CheckRequest request) {
    Lines lines = new Lines(passage, planners, easy, tempo);
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
    Prints prints = new Prints(score.printed(passage, Optional.empty()));
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
        Movements.of(passage, prints),
        playable,
        ways,
        lines.of(playable, ways, players, prints),
        lines::ways);
  }
}
