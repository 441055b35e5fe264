package fingering.dependencies;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The libraries of all modules, from the lists that the build writes before it compiles tests. */
final class Libraries {
  private static final Path PROJECT = Path.of("..");
  private static final List<String> MODULES =
      List.of("tuning-tables", "fingering-core", "fingering-cli");
  private static final String WHAT_IS_HANDED_OUT = "fingering-cli";
  private static final Pattern LINE =
      Pattern.compile(
          "\\s+(?<group>[^:\\s]+):(?<artifact>[^:]+):jar:(?<version>[^:]+)"
              + ":(?<scope>compile|runtime|test|provided):(?<jar>.+?)( -- module .*)?");

  private Libraries() {}

  /** Every library once, by name; none of the project's own modules. */
  static Collection<Library> resolved() {
    Map<String, Library> libraries = new TreeMap<>();
    for (String module : MODULES) {
      Path list = PROJECT.resolve(module).resolve("target/dependencies.txt");
      lines(list)
          .map(LINE::matcher)
          .filter(Matcher::matches)
          .map(line -> library(line, module))
          .filter(library -> !library.group().equals("fingering"))
          .forEach(library -> libraries.merge(library.name(), library, Libraries::either));
    }
    return libraries.values();
  }

  private static Library library(Matcher line, String module) {
    return new Library(
        line.group("group"),
        line.group("artifact"),
        line.group("version"),
        module.equals(WHAT_IS_HANDED_OUT) && !line.group("scope").equals("test"),
        Path.of(line.group("jar")));
  }

  private static Library either(Library one, Library other) {
    if (!one.version().equals(other.version())) {
      throw new IllegalStateException(
          "The modules take " + one.name() + " in two versions; manage one in pom.xml.");
    }
    return one.inJar() ? one : other;
  }

  private static Stream<String> lines(Path list) {
    try {
      return Files.readAllLines(list).stream();
    } catch (IOException e) {
      throw new UncheckedIOException("Run this test by Maven, which writes " + list, e);
    }
  }
}
