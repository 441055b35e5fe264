package fingering.check;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
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

/** Finds the files that files, folders and patterns stand for. */
public final class ScoreFinder {
  private static final ImmutableSet<String> IN_FOLDERS =
      ImmutableSet.of(".musicxml", ".xml", ".mxl");
  private static final String ABC = ".abc";
  private static final Pattern WILD = Pattern.compile("[*?\\[{]");

  /**
   * What was found.
   *
   * @param files the files, each once, in the order of what was asked; those of a folder by name
   * @param problems what could not be found or looked into, a sentence each
   */
  public record Found(ImmutableList<Path> files, ImmutableList<String> problems) {}

  private final Map<Path, Path> files = new LinkedHashMap<>();
  private final List<String> problems = new ArrayList<>();

  private ScoreFinder() {}

  /**
   * Finds files. A file is taken whatever its name; of a folder, and of those inside it, all that
   * end in .musicxml, .xml or .mxl; where there is no such file, {@code *}, {@code **}, {@code ?},
   * {@code [ab]} and {@code {a,b}} stand for names, also where no shell has put them in. Names that
   * begin with a dot are left out.
   */
  public static Found find(Iterable<String> asked) {
    ScoreFinder finder = new ScoreFinder();
    asked.forEach(finder::add);
    return new Found(
        ImmutableList.copyOf(finder.files.values()), ImmutableList.copyOf(finder.problems));
  }

  /** Whether a file's name says that it is compressed. */
  static boolean compressed(Path file) {
    return Ascii.toLowerCase(file.toString()).endsWith(".mxl");
  }

  private void add(String asked) {
    try {
      Path path = Path.of(asked);
      if (Files.isDirectory(path)) {
        addFolder(path);
        return;
      }
      if (Files.exists(path) || !WILD.matcher(asked).find()) {
        // Where there is none, whoever reads it will say so.
        take(path);
        return;
      }
    } catch (InvalidPathException e) {
      if (!WILD.matcher(asked).find()) {
        problems.add("'" + asked + "' is no name of a file here: check its letters.");
        return;
      }
    }
    addPattern(asked.replace('\\', '/'));
  }

  private void addFolder(Path folder) {
    if (!walk(folder, file -> isScore(file, false))) {
      problems.add(
          "%s has no score in it: its files should end in .musicxml, .xml or .mxl."
              .formatted(folder));
    }
  }

  private void addPattern(String pattern) {
    int context = pattern.lastIndexOf('/', wild(pattern));
    String start = context < 0 ? "" : pattern.substring(0, Math.max(1, context));
    boolean any = false;
    try {
      Path base = Path.of(start);
      if (Files.isDirectory(base)) {
        PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + pattern);
        any = walk(base, file -> isScore(file, true) && matcher.matches(file));
      }
    } catch (InvalidPathException | PatternSyntaxException e) {
      problems.add("'" + pattern + "' is no pattern of names: write *.mxl, or scores/**.mxl.");
      return;
    }
    if (!any) {
      problems.add(
          "No score fits '%s': check the folder, and that the names end in .musicxml, .xml or .mxl."
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

  /** Takes the files below a folder that are wanted, by name; tells whether there are any. */
  private boolean walk(Path folder, PathMatcher wanted) {
    List<Path> found = new ArrayList<>();
    try {
      Files.walkFileTree(folder.toString().isEmpty() ? Path.of(".") : folder, new Walk(found));
    } catch (IOException e) {
      problems.add(unseen(folder));
    }
    boolean any = false;
    for (Path file : found.stream().map(ScoreFinder::withoutDot).sorted().toList()) {
      if (wanted.matches(file) && Files.isRegularFile(file)) {
        take(file);
        any = true;
      }
    }
    return any;
  }

  /** Without the dot that stands for this folder. */
  private static Path withoutDot(Path file) {
    return file.startsWith(".") && file.getNameCount() > 1
        ? file.subpath(1, file.getNameCount())
        : file;
  }

  private static String unseen(Path folder) {
    return "%s cannot be looked into: check its permissions.".formatted(folder);
  }

  private void take(Path file) {
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
      problems.add(unseen(file));
      return FileVisitResult.CONTINUE;
    }

    private boolean hidden(Path path) {
      String name = String.valueOf(path.getFileName());
      return name.startsWith(".") && !name.equals(".") && !name.equals("..");
    }
  }
}
