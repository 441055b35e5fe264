package fingering.cli.practice;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.NewFiles;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.musicxml.UnwritableScoreException;
import fingering.practice.PracticeSpot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Practice spots as text. */
public final class SpotsText {
  private SpotsText() {}

  /** The lines, with an empty line at the end; none if there are no spots. */
  public static List<String> of(
      List<PracticeSpot> spots, Optional<Exercises> written, int columns, TextStyle style) {
    List<String> lines = new ArrayList<>();
    if (spots.isEmpty()) {
      return lines;
    }
    lines.add(style.bold("Practice spots: work on these first, slowly"));
    paragraphs(spots, written)
        .forEach(spot -> lines.addAll(TextLayout.wrap("- " + spot, columns, 2)));
    lines.add("");
    return lines;
  }

  /** A paragraph for each spot. */
  public static ImmutableList<String> paragraphs(
      List<PracticeSpot> spots, Optional<Exercises> written) {
    ImmutableList.Builder<String> paragraphs = ImmutableList.builder();
    for (int i = 0; i < spots.size(); i++) {
      PracticeSpot spot = spots.get(i);
      StringBuilder paragraph =
          new StringBuilder("m. " + spot.measures() + ": " + spot.reason() + ".");
      spot.instructions().forEach(text -> paragraph.append(' ').append(text));
      spot.listenFor().ifPresent(text -> paragraph.append(" Listen: ").append(text).append('.'));
      int number = i;
      written
          .flatMap(exercises -> exercises.file(number))
          .ifPresent(file -> paragraph.append(" Written to ").append(file).append('.'));
      paragraphs.add(paragraph.toString());
    }
    return paragraphs.build();
  }

  /**
   * The exercises for spots, each in its own file.
   *
   * @param folder the folder of the files
   */
  public record Exercises(Path folder, List<PracticeSpot> spots) {
    /**
     * Adds the exercises to the new files.
     *
     * @throws UnwritableScoreException if a file already exists or cannot be written
     */
    public void write(NewFiles files) {
      if (!any()) {
        return;
      }
      for (int i = 0; i < spots.size(); i++) {
        file(i)
            .filter(Files::exists)
            .ifPresent(
                file -> {
                  throw new UnwritableScoreException(
                      file + " already exists; give --exercises a new folder.");
                });
      }
      try {
        files.folder(folder);
      } catch (IOException e) {
        throw new UnwritableScoreException(
            folder + " cannot be created as a folder; give --exercises another name.", e);
      }
      for (int i = 0; i < spots.size(); i++) {
        Optional<Path> file = file(i);
        spots
            .get(i)
            .exercise()
            .ifPresent(
                exercise -> files.score(exercise.stage(file.orElseThrow()), file.orElseThrow()));
      }
    }

    /** Whether there are any. */
    boolean any() {
      return spots.stream().anyMatch(spot -> spot.exercise().isPresent());
    }

    /** The file for a spot; empty if it has no exercise. */
    Optional<Path> file(int spot) {
      String measures = spots.get(spot).measures().replace('–', '-').replaceAll("[^\\w-]", "_");
      return spots
          .get(spot)
          .exercise()
          .map(exercise -> folder.resolve((spot + 1) + "-measure-" + measures + ".musicxml"));
    }
  }
}
