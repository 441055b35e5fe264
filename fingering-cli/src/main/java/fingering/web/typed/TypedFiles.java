package fingering.web.typed;

import static fingering.page.view.PageText.text;

import com.google.common.base.Ascii;
import fingering.files.FileNames;
import fingering.files.FileProblem;
import fingering.files.TextFiles;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Typed scores in the teacher's folder. A file is saved over only by the page that made or opened
 * it, and only as long as nobody else changes it; the text before the first change of a day is kept
 * beside it.
 */
public final class TypedFiles {
  /** Enough for thousands of tunes. */
  private static final int MAX_KIB = 4096;

  private static final int LONGEST_NAME = 100;

  /** Signs that the names of files cannot have on some computers. */
  private static final Pattern UNUSABLE = Pattern.compile("^\\.|[/\\\\:*?\"<>|\\p{C}]");

  private static final String ENDING = ".abc";

  private final Path folder;
  private final Clock clock;

  public TypedFiles(Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /** Whether a name is that of a typed score. */
  public static boolean typed(String name) {
    return Ascii.toLowerCase(name).endsWith(ENDING);
  }

  /**
   * Opens a typed score.
   *
   * @param draft the id that it gets
   * @param file a file of the folder
   * @throws FingeringException if it cannot be read
   */
  public static Draft open(String draft, Path file) {
    String content = read(file);
    return new Draft(draft, String.valueOf(file.getFileName()), content, Optional.of(content));
  }

  private static String read(Path file) {
    return lines(SmallFile.textInAnyEncoding(file, "a file of tunes", MAX_KIB).content());
  }

  private static String lines(String text) {
    return text.replace("\r\n", "\n");
  }

  /**
   * Saves what was typed.
   *
   * @param draft as last saved or opened
   * @param wanted the name of the file, with or without its ending
   * @throws FingeringException if the name cannot be used, or the file cannot be written; the
   *     message is one sentence, and all files are as they were
   */
  public Draft save(Draft draft, String typed, String wanted) {
    String name = name(wanted);
    String content = lines(typed).stripTrailing() + "\n";
    Path file = path(name);
    try {
      Files.createDirectories(folder);
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        TextFiles.create(file, content);
      } else {
        replace(draft, file, content);
      }
      return draft.saved(name, content);
    } catch (FileAlreadyExistsException e) {
      throw new FingeringException(text("type.name.taken", name), e);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(file, e), e);
    }
  }

  private void replace(Draft draft, Path file, String content) throws IOException {
    String name = String.valueOf(file.getFileName());
    if (!draft.name().equals(name) || !file.toRealPath().startsWith(folder.toRealPath())) {
      throw new FingeringException(text("type.name.taken", name));
    }
    String before = read(file);
    if (!draft.stored().equals(Optional.of(before))) {
      throw new FingeringException(text("type.name.changed", name));
    }
    if (!before.equals(content)) {
      TextFiles.keep(file, before, LocalDate.now(clock));
      TextFiles.replace(file, content);
    }
  }

  private static String name(String wanted) {
    String stripped = wanted.strip();
    boolean ends = typed(stripped);
    String bare = ends ? stripped.substring(0, stripped.length() - ENDING.length()) : stripped;
    if (bare.isBlank()) {
      throw new FingeringException(text("type.name.none"));
    }
    if (UNUSABLE.matcher(bare).find() || bare.length() > LONGEST_NAME) {
      throw new FingeringException(text("type.name.unusable"));
    }
    return ends ? stripped : bare + ENDING;
  }

  private Path path(String name) {
    try {
      return folder.resolve(name).toAbsolutePath();
    } catch (InvalidPathException e) {
      throw new FingeringException(FileNames.fault(name) + ".", e);
    }
  }
}
