package fingering.check;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.files.FileNames;
import fingering.files.FileProblem;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/** Finds score files by name, folder or pattern. */
public final class ScoreFinder {
  private static final ImmutableSet<String> IN_FOLDERS =
      ImmutableSet.of(".musicxml", ".xml", ".mxl");
  private static final String ABC = ".abc";
  private static final Pattern WILD = Pattern.compile("[*?\\[{]");

  /**
   * The files that were found.
   *
   * @param files the files, each once, in the order of the arguments; those of a folder by name
   * @param problems what could not be found or read, a sentence each
   */
  public record Found(ImmutableList<Path> files, ImmutableList<String> problems) {}

  private final Map<Path, Path> files = new LinkedHashMap<>();
  private final List<String> problems = new ArrayList<>();

  private ScoreFinder() {}

  /**
   * Finds files. A file may have any name. In a folder and the folders below it, all files that end
   * in .musicxml, .xml or .mxl are found. An argument that is no existing file may be a pattern
   * with {@code *}, {@code **}, {@code ?}, {@code [ab]} and {@code {a,b}}, for shells that do not
   * expand them. Names that begin with a dot are skipped.
   */
  public static Found find(Iterable<String> arguments) {
    ScoreFinder finder = new ScoreFinder();
    arguments.forEach(finder::add);
    return new Found(
        ImmutableList.copyOf(finder.files.values()), ImmutableList.copyOf(finder.problems));
  }

  /** Whether the name of a file is that of a compressed score. */
  static boolean compressed(Path file) {
    return Ascii.toLowerCase(file.toString()).endsWith(".mxl");
  }

  private void add(String argument) {
    if (argument.isBlank()) {
      problems.add("The name of a score is empty: name a file or a folder.");
      return;
    }
    try {
      Path path = Path.of(argument);
      if (Files.isDirectory(path)) {
        addFolder(path);
        return;
      }
      if (Files.exists(path) || !WILD.matcher(argument).find()) {
        // If it does not exist, reading it will report that.
        addFile(path);
        return;
      }
    } catch (InvalidPathException e) {
      if (!WILD.matcher(argument).find()) {
        problems.add(FileNames.fault(argument) + ".");
        return;
      }
    }
    addPattern(argument.replace('\\', '/'));
  }

  private void addFolder(Path folder) {
    if (!walk(folder, file -> isScore(file, false))) {
      problems.add(
          "%s contains no scores: their names must end in .musicxml, .xml or .mxl."
              .formatted(folder));
    }
  }

  private void addPattern(String pattern) {
    int slash = pattern.lastIndexOf('/', wild(pattern));
    String start = slash < 0 ? "" : pattern.substring(0, Math.max(1, slash));
    boolean any = false;
    try {
      Path base = Path.of(start);
      if (Files.isDirectory(base)) {
        PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + pattern);
        any = walk(base, file -> isScore(file, true) && matcher.matches(file));
      }
    } catch (InvalidPathException | PatternSyntaxException e) {
      problems.add(
          "'" + pattern + "' is not a valid pattern: write, for example, *.mxl or scores/**.mxl.");
      return;
    }
    if (!any) {
      problems.add(
          "No score matches '%s': check the folder, and that names end in .musicxml, .xml or .mxl."
              .formatted(pattern));
    }
  }

  private static int wild(String pattern) {
    return WILD.matcher(pattern).results().findFirst().orElseThrow().start();
  }

  private static boolean isScore(Path file, boolean named) {
    String name = Ascii.toLowerCase(String.valueOf(file.getFileName()));
    return IN_FOLDERS.stream().anyMatch(name::endsWith) || (named && name.endsWith(ABC));
  }

  /** Adds the matching files below a folder, sorted by name, and returns whether there are any. */
  private boolean walk(Path folder, PathMatcher wanted) {
    List<Path> found = new ArrayList<>();
    try {
      Files.walkFileTree(folder.toString().isEmpty() ? Path.of(".") : folder, new Walk(found));
    } catch (IOException e) {
      problems.add(FileProblem.reading(folder, e));
    }
    boolean any = false;
    for (Path file : found.stream().map(ScoreFinder::withoutDot).sorted().toList()) {
      if (wanted.matches(file) && Files.isRegularFile(file)) {
        addFile(file);
        any = true;
      }
    }
    return any;
  }

  /** Removes a leading dot for the current folder. */
  private static Path withoutDot(Path file) {
    return file.startsWith(".") && file.getNameCount() > 1
        ? file.subpath(1, file.getNameCount())
        : file;
  }

  private void addFile(Path file) {
    files.putIfAbsent(file.toAbsolutePath().normalize(), file);
  }

  private final class Walk extends SimpleFileVisitor<Path> {
    private final List<Path> found;

    Walk(List<Path> found) {
      this.found = found;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      return hidden(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      if (!hidden(file)) {
        found.add(file);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
      problems.add(FileProblem.reading(file, e));
      return FileVisitResult.CONTINUE;
    }

    private boolean hidden(Path path) {
      String name = String.valueOf(path.getFileName());
      return name.startsWith(".") && !name.equals(".") && !name.equals("..");
    }
  }
}
