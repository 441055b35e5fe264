package fingering.cli;

import static fingering.cli.Session.DEMO;
import static fingering.cli.Session.texts;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A part or an excerpt written with its plan, and read again. */
final class WrittenPartTest {
  @TempDir Path folder;

  private static List<String> fingering(JsonNode plan) {
    List<String> all = new ArrayList<>(texts(plan.get("notes"), "finger"));
    all.addAll(texts(plan.get("notes"), "string"));
    all.addAll(texts(plan.get("notes"), "position"));
    return all;
  }

  private static JsonNode json(List<Object> words, Object... more) throws IOException {
    List<Object> all = new ArrayList<>(words);
    all.addAll(List.of(more));
    all.addAll(List.of("--format", "json"));
    return Session.of(all.toArray()).json();
  }

  @ParameterizedTest
  @CsvSource({
    "part, words, 5-24",
    "part, elements, 17-24",
    "excerpt, words, 17-24",
    "excerpt, both, 5-24",
    "excerpt, none, 13-30",
    "score, words, 5-24"
  })
  void theWrittenPlanIsReadAgain(String only, String strings, String measures) throws IOException {
    Path written = folder.resolve("written.musicxml");
    List<Object> plan =
        ImmutableList.of("plan", DEMO, "--choose", "partly", "--measures", measures);
    JsonNode chosen = json(plan, "--write", written, "--only", only, "--string-marks", strings);
    List<Object> kept =
        only.equals("excerpt")
            ? ImmutableList.of("plan", written, "--keep-printed")
            : ImmutableList.of("plan", written, "--keep-printed", "--measures", measures);
    assertThat(fingering(json(kept))).isEqualTo(fingering(chosen));
  }

  private static int count(String part, String text) {
    return Splitter.on(part).splitToList(text).size() - 1;
  }

  @Test
  void anExcerptHasItsMeasuresAndWordsForStrings() throws IOException {
    Path written = folder.resolve("excerpt.musicxml");
    byte[] before = Files.readAllBytes(DEMO);
    Session.of(
            "plan",
            DEMO,
            "--choose",
            "partly",
            "--measures",
            "17-24",
            "--write",
            written,
            "--only",
            "excerpt")
        .succeeded();
    String text = Files.readString(written);
    assertThat(count("<measure ", text)).isEqualTo(8);
    assertThat(text)
        .contains("Lanterns on the Millrace", "number=\"17\"", ">II</words>", "Flowing, unhurried")
        .doesNotContain("<string>", "number=\"16\"", "number=\"25\"");
    assertThat(Files.readAllBytes(DEMO)).isEqualTo(before);
  }

  @Test
  void aWholeScoreHasStringNumbersUnlessWordsAreAskedFor() throws IOException {
    Path numbers = folder.resolve("numbers.musicxml");
    Path words = folder.resolve("words.musicxml");
    Session.of("plan", DEMO, "--choose", "partly", "--write", numbers).succeeded();
    Session.of("plan", DEMO, "--choose", "partly", "--write", words, "--string-marks", "words")
        .succeeded();
    assertThat(count("<string>", Files.readString(numbers))).isPositive();
    assertThat(count("<string>", Files.readString(words))).isZero();
  }

  @Test
  void whatDoesNotFitTogetherIsRefused() {
    assertThat(Session.of("plan", DEMO, "--only", "part").refused(2).err())
        .contains("--only says how much --write writes; give --write too");
    assertThat(Session.of("plan", DEMO, "--string-marks", "words").refused(2).err())
        .contains("--string-marks changes how --write marks the copy; give --write too");
    Path written = folder.resolve("excerpt.musicxml");
    assertThat(Session.of("plan", DEMO, "--write", written, "--only", "excerpt").refused(2).err())
        .contains("--only excerpt needs the measures; give --measures too");
    assertThat(written).doesNotExist();
  }
}
