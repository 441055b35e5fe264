package fingering.abc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fingering.abc.syntax.AbcException;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.Instruments;
import java.util.List;
import java.util.Optional;

/** Music typed in ABC, read into a passage. */
final class Typed {
  private Typed() {}

  static TuneScore written(String abc) {
    return Tunebook.parse("study", abc).choose(Optional.empty());
  }

  static Passage passage(String abc) {
    return passage(abc, PassageRequest.WHOLE);
  }

  static Passage passage(String abc, PassageRequest request) {
    TuneScore written = written(abc);
    return ScoreReader.read(ScoreFile.of(written.musicXml(), written.remarks())).passage(request);
  }

  static PassageRequest on(String instrument) {
    return PassageRequest.WHOLE.withInstrument(Instruments.standard().named(instrument));
  }

  /** The notes, as C4 or F#5, separated by blanks. */
  static String pitches(String abc) {
    return String.join(
        " ", passage(abc).notes().stream().map(note -> note.written().toString()).toList());
  }

  /** The lengths in eighths, such as 1 and 3/2; 0 for grace notes. */
  static String eighths(String abc) {
    return String.join(" ", passage(abc).notes().stream().map(Typed::eighths).toList());
  }

  private static String eighths(Note note) {
    return note.length().multiply(2).toString().replace(" ", "");
  }

  /** The numbers of the measures. */
  static List<String> numbers(String abc) {
    return passage(abc).measures().stream().map(measure -> measure.number()).toList();
  }

  /** Checks that it is read, with a remark that begins like this. */
  static void assertRepaired(String abc, String remark) {
    assertThat(written(abc).remarks())
        .as(abc)
        .anySatisfy(one -> assertThat(one).startsWith(remark).doesNotEndWith("."));
  }

  /** The message of its refusal, without the name of the source. */
  static String refusal(String abc) {
    AbcException thrown = catchThrowableOfType(AbcException.class, () -> written(abc));
    assertThat(thrown).as("refused: %s", abc).isNotNull();
    assertThat(thrown.getMessage()).startsWith("study").endsWith(".").doesNotContain("\n");
    return thrown.getMessage().substring("study".length());
  }
}
