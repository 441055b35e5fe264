package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Pages of checks to look at. */
public enum CheckPages {
  /** One score with many findings. */
  ORCHESTRA,
  /** Several scores, one without a title but with a long name, and a file that is not a score. */
  SEVERAL;

  /** The page as a file. */
  public Path in(Path folder) throws IOException {
    Path page = folder.resolve("check-" + name().toLowerCase(Locale.ROOT) + ".html");
    if (Files.exists(page)) {
      return page;
    }
    Path scores = Files.createDirectories(folder.resolve(name()));
    Files.copy(CheckCommandTest.LANTERNS, scores.resolve("lanterns.musicxml"));
    if (this == SEVERAL) {
      Path quiet = TinyScore.titled("").part("Viola d'amore e di bravura", "D4", "G6").in(scores);
      Files.move(quiet, scores.resolve("averylongnameofafilewithoutanyblankinit.musicxml"));
      Files.writeString(scores.resolve("bad.xml"), "no score");
    }
    Session session =
        Session.of("check", scores, "--level", "beginner", "--format", "html", "--output", page);
    assertThat(session.code()).isEqualTo(this == SEVERAL ? 2 : 1);
    return page;
  }
}
