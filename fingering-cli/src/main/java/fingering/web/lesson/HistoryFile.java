package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import fingering.files.TextFiles;
import fingering.lesson.Lesson;
import fingering.lesson.LessonFile;
import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps the history of a lesson over a restart, in the folder {@code .undo} beside it. A history
 * that cannot be read or written is no history: the lesson itself is never in danger.
 */
final class HistoryFile {
  private static final String FOLDER = ".undo";
  private static final String PAST = "past";
  private static final String NOW = "now";
  private static final String FUTURE = "future";
  private static final Pattern STATE = Pattern.compile("(?m)^--- # (past|now|future)\n");

  /** A larger file is not from here. */
  private static final long MOST_BYTES = 64L << 20;

  private HistoryFile() {}

  private static Path file(Path lesson) {
    return lesson.resolveSibling(FOLDER).resolve(String.valueOf(lesson.getFileName()));
  }

  /**
   * Keeps the history of a lesson that is saved.
   *
   * @param texts the text of each state
   */
  static void save(OpenLesson open, Function<Lesson, String> texts) {
    StringBuilder text = new StringBuilder();
    open.history().past().forEach(state -> add(text, PAST, texts.apply(state)));
    add(text, NOW, texts.apply(open.lesson()));
    open.history().future().forEach(state -> add(text, FUTURE, texts.apply(state)));
    Path target = file(open.stored().file());
    Path part = ScoreFile.temporarySibling(target);
    try {
      Files.createDirectories(target.resolveSibling(""));
      Files.writeString(part, text, StandardOpenOption.CREATE_NEW);
      TextFiles.deleteStale(part);
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      deleted(part);
    }
  }

  private static void deleted(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      // What is left is a hidden file beside the history.
      return;
    }
  }

  private static void add(StringBuilder text, String when, String lesson) {
    text.append("--- # ").append(when).append('\n').append(lesson);
  }

  /** The history of a lesson; none if there is none to be read. */
  static History read(StoredLesson lesson) {
    Path file = file(lesson.file());
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
        return History.NONE;
      }
      return parsed(Files.readString(file, StandardCharsets.UTF_8), lesson.lesson());
    } catch (IOException | FingeringException e) {
      return History.NONE;
    }
  }

  private static History parsed(String text, Lesson now) {
    ImmutableList.Builder<Lesson> past = ImmutableList.builder();
    ImmutableList.Builder<Lesson> future = ImmutableList.builder();
    List<String> lessons = List.of(STATE.split(text, -1));
    Matcher states = STATE.matcher(text);
    boolean same = true;
    for (int i = 1; states.find(); i++) {
      Lesson lesson = LessonFile.parse("the history", lessons.get(i));
      switch (states.group(1)) {
        case PAST -> past.add(lesson);
        case FUTURE -> future.add(lesson);
        default -> {
          same = lesson.equals(now);
          if (!same) {
            // The lesson was edited since, which can be undone too.
            past.add(lesson);
          }
        }
      }
    }
    return new History(past.build(), same ? future.build() : ImmutableList.of());
  }
}
