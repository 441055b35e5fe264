package fingering.cli.audition;

import com.google.common.base.Ascii;
import com.google.common.base.CharMatcher;
import fingering.cli.audition.SheetPieces.Ready;
import fingering.cli.file.NewFiles;
import fingering.files.FileProblem;
import fingering.musicxml.UnwritableScoreException;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.marking.ScoreMarker;
import fingering.plan.Plan;
import fingering.plan.marks.PlanMarks;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** A new folder with a marked score for each piece. It is created complete or not at all. */
public final class MarkedFolder {
  /** The longest file name; longer ones are cut, for all file systems. */
  private static final int LONGEST = 60;

  private static final CharMatcher PLAIN =
      CharMatcher.inRange('a', 'z').or(CharMatcher.inRange('0', '9'));

  private MarkedFolder() {}

  /**
   * Checks that a folder does not exist.
   *
   * @throws UnwritableScoreException if it exists
   */
  public static void check(Path folder) {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw exists(folder);
    }
  }

  private static UnwritableScoreException exists(Path folder) {
    return new UnwritableScoreException(
        folder + " already exists, so nothing was written; give --write a new name.");
  }

  /**
   * Adds every piece with its fingering to the new files.
   *
   * @throws UnwritableScoreException if the folder exists, or cannot be written
   */
  public static void write(Path folder, PlannedSheet sheet, NewFiles files) {
    Path place = folder.toAbsolutePath().normalize();
    Path unfinished = place.resolveSibling("." + place.getFileName() + "." + UUID.randomUUID());
    try {
      // In case the user interrupts the program: Java deletes the files first, then the folder.
      unfinished.toFile().deleteOnExit();
      Files.createDirectory(unfinished);
    } catch (IOException e) {
      throw unwritable(folder, e);
    }
    files.add(folder, new Unfinished(folder, place, unfinished));
    for (int i = 0; i < sheet.ready().size(); i++) {
      Ready ready = sheet.ready().get(i);
      ScoreFile file = ready.file();
      Path marked = unfinished.resolve(name(sheet, i));
      marked.toFile().deleteOnExit();
      try {
        Plan plan = sheet.planned(i).plan();
        file.writeMarked(
            ScoreMarker.mark(file.text(), PlanMarks.of(plan), plan.passage().slurs()), marked);
      } catch (UnwritableScoreException e) {
        // The user does not know the temporary folder.
        throw e.getCause() instanceof IOException cause ? unwritable(folder, cause) : e;
      }
    }
  }

  private record Unfinished(Path folder, Path place, Path unfinished)
      implements NewFiles.Unfinished {
    @Override
    public void appear() {
      check(folder);
      try {
        Files.move(unfinished, place);
      } catch (FileAlreadyExistsException e) {
        throw exists(folder);
      } catch (IOException e) {
        throw unwritable(folder, e);
      }
    }

    @Override
    public void undo() {
      delete(place, folder);
    }

    @Override
    public void discard() {
      delete(unfinished, folder);
    }
  }

  private static UnwritableScoreException unwritable(Path folder, IOException e) {
    return new UnwritableScoreException(FileProblem.writing(folder, e), e);
  }

  private static void delete(Path unfinished, Path folder) {
    if (!Files.exists(unfinished)) {
      return;
    }
    try {
      List<Path> written;
      try (Stream<Path> all = Files.list(unfinished)) {
        written = all.toList();
      }
      for (Path one : written) {
        Files.delete(one);
      }
      Files.delete(unfinished);
    } catch (IOException e) {
      throw unwritable(folder, e);
    }
  }

  /** The file name of a piece: {@code 1-g-melodic-minor-2-octaves.musicxml}. */
  static String name(PlannedSheet sheet, int piece) {
    String spoken =
        sheet.ready().get(piece).piece().name().replace("♭", "-flat").replace("♯", "-sharp");
    String plain =
        Ascii.toLowerCase(Normalizer.normalize(spoken, Normalizer.Form.NFD))
            .codePoints()
            .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    String name = PLAIN.negate().trimAndCollapseFrom(plain, '-');
    String cut = name.substring(0, Math.min(LONGEST, name.length()));
    return sheet.number(piece) + (cut.isEmpty() ? "" : "-" + cut) + ".musicxml";
  }
}
