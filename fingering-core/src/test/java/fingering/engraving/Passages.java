package fingering.engraving;

import static java.nio.charset.StandardCharsets.UTF_8;

import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.ScoreReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Short pieces that show one difficulty of engraving each, written for these tests. */
final class Passages {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "fingering", "engraving", "passages");

  private Passages() {}

  /** The names, in order. */
  static List<String> names() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A piece as MusicXML; most are written in ABC. */
  static String musicXml(String name) {
    try {
      String text = Files.readString(FOLDER.resolve(name), UTF_8);
      return name.endsWith(".abc")
          ? Tunebook.parse(name, text).choose(Optional.empty()).musicXml()
          : text;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Engraver engraver(String name) {
    if (!name.endsWith(".abc")) {
      return Engraved.file(FOLDER.resolve(name));
    }
    try {
      TuneScore tune =
          Tunebook.parse(name, Files.readString(FOLDER.resolve(name), UTF_8))
              .choose(Optional.empty());
      return Engraved.engraver(
          ScoreReader.read(ScoreFile.of(tune.musicXml(), tune.remarks())), PassageRequest.WHOLE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
