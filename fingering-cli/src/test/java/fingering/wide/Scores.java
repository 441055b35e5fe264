package fingering.wide;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.common.base.Splitter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The scores of the folders that {@code -Dscores=FOLDER,FOLDER} names. */
public final class Scores {
  private static final String FILES = "glob:**.{musicxml,xml,mxl,abc}";

  private Scores() {}

  /** The folders; a test without them is skipped. */
  public static List<Path> folders() {
    String named = System.getProperty("scores", "");
    assumeTrue(!named.isEmpty(), "skipped: give folders of scores with -Dscores=FOLDER,FOLDER");
    return Splitter.on(',').splitToStream(named).map(Path::of).toList();
  }

  /** The scores of all folders, in order of their names. */
  public static List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path folder : folders()) {
      try (Stream<Path> all = Files.walk(folder)) {
        all.filter(folder.getFileSystem().getPathMatcher(FILES)::matches)
            .sorted()
            .forEach(files::add);
      }
    }
    return files;
  }

  /** The names of all files in the folders, which no run may change. */
  public static List<String> listing() throws IOException {
    List<String> names = new ArrayList<>();
    for (Path folder : folders()) {
      try (Stream<Path> all = Files.walk(folder)) {
        all.map(file -> file + " " + file.toFile().lastModified()).sorted().forEach(names::add);
      }
    }
    return names;
  }
}
