package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableListMultimap;
import fingering.cli.command.Commands;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.Instrument;
import fingering.wide.Figures;
import fingering.wide.Scores;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Every command on every string part of the scores of {@code -Dscores}. None may fail, a refusal is
 * one sentence, and nothing is left behind.
 */
@Tag("wide")
final class EveryCommandOnScoresTest {
  private static final String PER_PART = "part";
  private static final String PER_SCORE = "score";
  private static final String PER_INSTRUMENT = "instrument";

  /** A command that has not printed its address after this time has failed. */
  private static final int OPENING_MILLIS = 20_000;

  /**
   * What is typed, once for each score, part or instrument. SCORE, PART, INSTRUMENT and FOLDER are
   * replaced; of the words between slashes one is taken, another one for each part.
   */
  private static final ImmutableListMultimap<String, String> TYPED =
      ImmutableListMultimap.<String, String>builder()
          .put(PER_SCORE, "open SCORE --folder FOLDER --no-browser")
          .put(PER_SCORE, "check SCORE --format text|json|html|sarif")
          .put(
              PER_PART,
              "compare SCORE --part PART --format text|json|html --save-lesson FOLDER/own.yaml")
          .put(PER_PART, "plan SCORE --part PART --only score|part --write FOLDER/marked.musicxml")
          .put(PER_PART, "plan SCORE --part PART --sparing --write FOLDER/sparing.musicxml")
          .put(PER_PART, "plan --lesson FOLDER/own.yaml --format json|svg|html|text")
          .put(PER_PART, "marks SCORE --part PART --format text|html")
          .put(PER_PART, "handout --lesson FOLDER/own.yaml --output FOLDER/handout.html")
          .put(
              PER_PART,
              "practice --lesson FOLDER/own.yaml --from 40 --to 60 --by 2026-12-12 --today 2026-11-21 --format text|html --calendar FOLDER/days.ics")
          .put(
              PER_PART, "journal add --journal FOLDER/own.journal --clean 50 --at 2026-11-21T18:30")
          .put(PER_PART, "journal show --journal FOLDER/own.journal --format text|svg")
          .put(PER_PART, "lesson list FOLDER")
          .put(PER_PART, "lesson show FOLDER/own.yaml")
          .put(PER_PART, "audition FOLDER/sheet.yaml --format text|json|html")
          .put(PER_PART, "learn FOLDER/marked.musicxml")
          .put(PER_INSTRUMENT, "demo")
          .put(PER_INSTRUMENT, "scale D major --instrument INSTRUMENT --octaves 2")
          .put(PER_INSTRUMENT, "chart INSTRUMENT --position 3")
          .put(PER_INSTRUMENT, "completion bash|zsh")
          .put(PER_INSTRUMENT, "man plan|compare")
          .build();

  @TempDir Path folder;

  private final Figures figures = new Figures("every command");
  private int turn;

  private static List<String> commands(String prefix, CommandLine line) {
    List<String> names = new ArrayList<>();
    line.getSubcommands()
        .forEach(
            (name, command) -> {
              if (command.getSubcommands().isEmpty()) {
                names.add(prefix + name);
              } else {
                names.addAll(commands(prefix + name + " ", command));
              }
            });
    return names;
  }

  @Test
  void everyCommandIsTyped() {
    assertThat(commands("", Commands.all()))
        .isNotEmpty()
        .allMatch(name -> TYPED.values().stream().anyMatch(typed -> is(typed, name)));
  }

  private static boolean is(String typed, String name) {
    return (typed + " ").startsWith(name + " ");
  }

  @Test
  void noCommandFailsOnAnyPart() throws Exception {
    List<String> before = Scores.listing();
    List<Path> files = Scores.files();
    assertThat(files).isNotEmpty();
    int parts = 0;
    for (Instrument instrument : fingering.tables.Instruments.standard().all()) {
      run(PER_INSTRUMENT, "", "", instrument.id());
    }
    for (Path file : files) {
      Score score = ScoreReader.read(ScoreFile.read(file));
      run(PER_SCORE, file.toString(), "", "");
      for (PartInfo part : score.parts()) {
        if (part.isString() && score.hasNotes(part)) {
          parts++;
          run(PER_PART, file.toString(), String.valueOf(part.number()), "");
        }
      }
    }
    figures.print(files.size() + " scores, " + parts + " string parts");
    assertThat(figures.failures()).isEmpty();
    assertThat(Scores.listing()).isEqualTo(before);
  }

  private void run(String kind, String score, String part, String instrument) throws Exception {
    Path made = Files.createTempDirectory(folder, kind);
    if (kind.equals(PER_PART)) {
      Files.writeString(
          made.resolve("sheet.yaml"),
          "pieces:%n  - score: '%s'%n    part: '%s'%n"
              .formatted(Path.of(score).toAbsolutePath().toString().replace("'", "''"), part));
    }
    turn++;
    for (String typed : TYPED.get(kind)) {
      List<String> words = new ArrayList<>();
      for (String word : Splitter.on(' ').split(typed)) {
        List<String> choices = Splitter.on('|').splitToList(word);
        words.add(
            choices
                .get(turn % choices.size())
                .replace("SCORE", score)
                .replace("PART", part)
                .replace("INSTRUMENT", instrument)
                .replace("FOLDER", made.toString()));
      }
      String what = String.join(" ", words).replace(made.toString(), "FOLDER");
      boolean opens = words.get(0).equals("open");
      judge(what, figures.timed(what, () -> opens ? opened(words) : Session.of(words.toArray())));
    }
    try (Stream<Path> left = Files.walk(made)) {
      left.filter(file -> file.getFileName().toString().matches("\\..*|.*\\.(part|tmp)"))
          .forEach(file -> figures.check(false, "left behind: " + file));
    }
  }

  private void judge(String what, Session session) {
    boolean found = what.startsWith("check ") && session.code() == 1;
    if (session.code() != 0 && !found) {
      figures.check(
          session.code() == 2
              && session.complaints().size() == 1
              && session.err().matches("(?s)(Written: [^\n]*\n)*fingering: .*\\.\\R"),
          what + ": exit code " + session.code() + ", " + session.err());
    }
    figures.check(
        !session.err().matches("(?s).*(Exception|\tat |\\bnull\\b).*"),
        what + ": " + session.err());
  }

  /** Opens the page, and ends it as soon as it answers. */
  private static Session opened(List<String> words) throws InterruptedException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Thread command =
        new Thread(
            () ->
                Main.run(
                    new PrintWriter(out, true),
                    new PrintWriter(err, true),
                    words.toArray(new String[0])));
    command.start();
    for (int i = 0; i < OPENING_MILLIS / 20 && command.isAlive(); i++) {
      if (out.toString().contains("Ctrl+C")) {
        break;
      }
      Thread.sleep(20);
    }
    boolean open = out.toString().contains("http://");
    command.interrupt();
    command.join(OPENING_MILLIS);
    return new Session(open && !command.isAlive() ? 0 : 3, out.toString(), err.toString());
  }
}
