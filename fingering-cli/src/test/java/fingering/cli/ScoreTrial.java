package fingering.cli;

import com.google.common.collect.ImmutableSet;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.musicxml.SelectionException;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.musicxml.writing.ScoreExcerpt;
import fingering.plan.Brief;
import fingering.plan.InfeasibleBriefException;
import fingering.plan.Plan;
import fingering.plan.PlanComparer;
import fingering.plan.marks.PlanMarks;
import fingering.playability.CheckLevel;
import fingering.playability.check.Checker;
import fingering.scoring.rules.StandardRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Uses a damaged score like a good one, and lists what must not happen. */
final class ScoreTrial {
  private static final int MAX_PARTS = 4;
  private static final int MAX_MOMENTS = 200;
  private static final int MAX_LENGTH = 300;

  /** One checker for all scores, as in a check of many scores. */
  private static final Checker CHECKER = Checker.of(CheckLevel.preset("intermediate"));

  private final Path folder;
  private final List<String> faults = new ArrayList<>();
  private int plans;

  private ScoreTrial(Path folder) {
    this.folder = folder;
  }

  /**
   * The result.
   *
   * @param faults what must not happen, one line each
   * @param plans the number of plans made
   */
  record Outcome(List<String> faults, int plans) {}

  /** Reads, plans, writes and reads again; the folder must be empty. */
  static Outcome of(DamagedScores.Damaged score, Path folder, Random random) throws IOException {
    ScoreTrial trial = new ScoreTrial(folder);
    Path file = Files.write(folder.resolve("score" + score.ending()), score.bytes().read());
    trial.useLibrary(file, random);
    if (random.nextInt(6) == 0) {
      trial.useCommand(file, random);
    }
    trial.checkFiles(file);
    return new Outcome(trial.faults, trial.plans);
  }

  private void useLibrary(Path path, Random random) {
    attempt(
        () -> {
          ScoreFile file = ScoreFile.read(path);
          Score score = ScoreReader.read(file);
          for (PartInfo part : score.parts().stream().limit(MAX_PARTS).toList()) {
            // Comparing takes longest, so only some parts are compared.
            boolean compared = random.nextInt(3) == 0;
            attempt(() -> plan(file, score, part, compared));
          }
          CHECKER.check(score);
        });
  }

  private void plan(ScoreFile file, Score score, PartInfo part, boolean compared) {
    Passage passage = score.passage(PassageRequest.WHOLE.withPart(String.valueOf(part.number())));
    score.printed(passage, PassageRequest.WHOLE.voice());
    if (passage.moments().size() > MAX_MOMENTS) {
      return;
    }
    PlanComparer comparer =
        PlanComparer.of(
            passage, StandardRules.commonPractice(), LeftHand.MEDIUM, ImmutableSet.of());
    Plan plan =
        compared
            ? comparer.comparePositions(false).plans().get(0)
            : comparer.plan(Brief.free("free choice"));
    plans++;
    Path target = folder.resolve("marked-" + part.number() + ".musicxml");
    String marked = ScoreMarker.mark(file.text(), PlanMarks.of(plan));
    file.writeMarked(marked, target);
    cut(file, marked, passage);
    Optional<Passage> again =
        reread(target)
            .map(
                read -> read.passage(PassageRequest.WHOLE.withPart(String.valueOf(part.number()))));
    int notes = again.map(Passage::notes).map(List::size).orElse(0);
    if (notes != passage.notes().size()) {
      faults.add(
          "%d notes became %d when marks were written".formatted(passage.notes().size(), notes));
    }
  }

  /** Writes the part, and some of its measures, as scores of their own. */
  private void cut(ScoreFile file, String marked, Passage passage) {
    int part = passage.notes().get(0).address().part();
    int middle = passage.measures().size() / 2;
    List<String> cuts =
        List.of(
            ScoreExcerpt.part(marked, part),
            ScoreExcerpt.measures(marked, part, middle, middle + 1));
    for (int i = 0; i < cuts.size(); i++) {
      Path target = folder.resolve("copy.cut-" + part + "-" + i + ".musicxml");
      file.writeMarked(cuts.get(i), target);
      boolean fewer =
          reread(target)
              .filter(score -> score.readable(score.parts().get(0)))
              .filter(score -> score.parts().size() > 1)
              .isPresent();
      if (fewer) {
        faults.add("a part of its own has several parts");
      }
    }
  }

  private void useCommand(Path file, Random random) {
    Path target = folder.resolve(random.nextBoolean() ? "copy.mxl" : "copy.musicxml");
    Path printed = folder.resolve("printed.txt");
    String part = String.valueOf(1 + random.nextInt(3));
    int command = random.nextInt(6);
    Session session =
        switch (command) {
          case 0 -> Session.of("plan", file, "--part", part, "--write", target);
          case 1 -> Session.of("compare", file, "--part", part, "--format", "json");
          case 2 ->
              Session.of("compare", file, "--part", part, "--format", "html", "--output", printed);
          case 3 -> Session.of("marks", file, "--part", part);
          case 4 -> Session.of("check", file);
          default -> Session.of("plan", file, "--write", target);
        };
    boolean found = command == 4 && session.code() == 1;
    if (session.code() == 0 || found) {
      if (!session.complaints().isEmpty()) {
        faults.add("a successful run has messages: " + session.err());
      }
      return;
    }
    if (!session.err().startsWith("fingering: ") || !session.err().endsWith("\n")) {
      faults.add("not a line of the command: " + session.err());
    }
    checkSentence(session.err().replaceFirst("fingering: ", "").replaceFirst("\\R$", ""));
    if (Files.exists(target) || Files.exists(printed)) {
      faults.add("a failed run wrote a file: " + session.err());
    }
  }

  private void checkFiles(Path score) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(one -> !one.equals(score)).toList()) {
        String name = file.getFileName().toString();
        if (name.startsWith(".")) {
          faults.add("unfinished file left: " + name);
        } else if (name.startsWith("copy.")) {
          reread(file);
        }
      }
    }
  }

  /** Reads a written file, which must succeed. */
  private Optional<Score> reread(Path file) {
    try {
      return Optional.of(ScoreReader.read(ScoreFile.read(file)));
    } catch (UnreadableScoreException e) {
      faults.add("written file cannot be read: " + e.getMessage());
      return Optional.empty();
    }
  }

  private void attempt(Runnable action) {
    try {
      action.run();
    } catch (UnreadableScoreException | SelectionException | InfeasibleBriefException e) {
      checkSentence(e.getMessage());
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      faults.add(trace(e));
    }
  }

  private static String trace(Throwable e) {
    return e
        + "\n    at "
        + Stream.of(e.getStackTrace())
            .limit(12)
            .map(String::valueOf)
            .collect(Collectors.joining("\n    at "));
  }

  /** Checks that a message is one short, complete line for users, without terms of Java. */
  private void checkSentence(String message) {
    String text = message.replace(folder.toString(), "");
    boolean good =
        text.lines().count() == 1
            && text.length() <= MAX_LENGTH
            && text.endsWith(".")
            && text.strip().equals(text)
            && !text.matches(
                ".*(\\bnull\\b|Exception|Error\\b|java\\.|javax\\.|fingering\\.[a-z]+\\.|unexpectedly|BigFraction|@[0-9a-f]{4}).*");
    if (!good) {
      faults.add("not a clear sentence: " + message);
    }
  }
}
