package fingering.userfile;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import fingering.files.TextFiles;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Saves files of one kind, and never replaces a file of another kind. The text is written beside
 * the file and then moved into place, so that the file holds the old text or the new one, whenever
 * the program ends.
 *
 * @param <T> what a file says
 */
public final class UserFileStore<T> {
  private final String what;
  private final String advice;
  private final BiFunction<String, String, T> parsing;
  private final Function<T, String> writing;
  private final BiFunction<String, T, FileUpdate> changing;

  /**
   * Creates a store.
   *
   * @param what the kind of file, with its article: a lesson
   * @param advice what to do if a file would be too large: remove some of its plans
   * @param parsing reads the name and the text of a file
   * @param writing the text of a new file
   * @param changing the text of a file after a change
   */
  public UserFileStore(
      String what,
      String advice,
      BiFunction<String, String, T> parsing,
      Function<T, String> writing,
      BiFunction<String, T, FileUpdate> changing) {
    this.what = what;
    this.advice = advice;
    this.parsing = parsing;
    this.writing = writing;
    this.changing = changing;
  }

  /**
   * What was saved.
   *
   * @param text the text as saved
   * @param copy the copy of the text before, if this is the first change of the day
   * @param lostRemarks the remarks of the text before that are gone
   */
  public record Saved(String text, Optional<Path> copy, ImmutableList<String> lostRemarks) {}

  /**
   * Checks that a file can be saved: there is none yet, or it is of this kind.
   *
   * @throws FingeringException if it is another file; the message is one sentence
   */
  public void check(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      existing(file);
    }
  }

  private String existing(Path file) {
    try {
      String text = SmallFile.text(file, what);
      T unused = parsing.apply(file.toString(), text);
      return text;
    } catch (FingeringException e) {
      throw new FingeringException(
          "%s is not %s, or has a mistake, and is not replaced: choose another name, or correct it. (%s)"
              .formatted(file, what, e.getMessage()),
          e);
    }
  }

  /**
   * Saves a file.
   *
   * @param file the file; if there is one, it must be of this kind
   * @param before the text as it was read from that file, if it was; the file must not have changed
   *     since
   * @param today the day, for the name of the copy: {@code mill.yaml.2026-12-12~} keeps what the
   *     file said before the first change of that day
   * @throws FingeringException if the file is of another kind, has changed since it was read, or
   *     cannot be written; the message is one sentence, and the file is as it was
   */
  public Saved save(Path file, T value, Optional<String> before, LocalDate today) {
    try {
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        String text = writing.apply(value);
        checkSize(file, text);
        TextFiles.create(file.toAbsolutePath(), text);
        return new Saved(text, Optional.empty(), ImmutableList.of());
      }
      String old = existing(file);
      if (before.isPresent() && !before.get().equals(old)) {
        throw new FingeringException(
            "%s has changed since it was read, and was not saved: try again.".formatted(file));
      }
      FileUpdate update = changing.apply(old, value);
      if (update.text().equals(old)) {
        return new Saved(old, Optional.empty(), ImmutableList.of());
      }
      checkSize(file, update.text());
      Optional<Path> copy = TextFiles.keep(file, old, today);
      TextFiles.replace(file, update.text());
      return new Saved(update.text(), copy, update.lostRemarks());
    } catch (FileAlreadyExistsException e) {
      throw new FingeringException(
          "%s has just been created by another program: try again.".formatted(file), e);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(file, e), e);
    }
  }

  private void checkSize(Path file, String text) {
    if (text.getBytes(StandardCharsets.UTF_8).length > SmallFile.MAX_KIB * 1024) {
      throw new FingeringException(
          "%s would be larger than %d KiB, and was not saved: %s."
              .formatted(file, SmallFile.MAX_KIB, advice));
    }
  }
}
