package fingering.cli.practice;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.cli.file.NewFiles;
import fingering.cli.file.OwnFiles;
import fingering.cli.terminal.TextLayout;
import fingering.cli.terminal.TextStyle;
import fingering.musicxml.UnwritableScoreException;
import fingering.page.view.PractisedSpot;
import fingering.practice.PracticeSpot;
import fingering.practice.SpotExercise;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
      paragraphs.add("m. " + spots.get(i).measures() + ": " + paragraph(spots, i, written));
    }
    return paragraphs.build();
  }

  /** The spots of a page. */
  public static ImmutableList<PractisedSpot> onPage(
      List<PracticeSpot> spots, Optional<Exercises> written) {
    ImmutableList.Builder<PractisedSpot> all = ImmutableList.builder();
    for (int i = 0; i < spots.size(); i++) {
      all.add(
          new PractisedSpot(
              spots.get(i).measures(), paragraph(spots, i, written), spots.get(i).exercise()));
    }
    return all.build();
  }

  /** The spots of a handout: what to do, without the figures. */
  public static ImmutableList<PractisedSpot> onHandout(List<PracticeSpot> spots) {
    return spots.stream()
        .map(
            spot ->
                new PractisedSpot(
                    spot.measures(),
                    sentences(spot.reason().replaceFirst(";.*", ""), spot).toString(),
                    spot.exercise()))
        .collect(ImmutableList.toImmutableList());
  }

  private static String paragraph(
      List<PracticeSpot> spots, int number, Optional<Exercises> written) {
    StringBuilder paragraph = sentences(spots.get(number).reason(), spots.get(number));
    written
        .flatMap(exercises -> exercises.remark(number))
        .ifPresent(remark -> paragraph.append(' ').append(remark));
    return paragraph.toString();
  }

  private static StringBuilder sentences(String reason, PracticeSpot spot) {
    StringBuilder sentences = new StringBuilder(reason + ".");
    spot.instructions().forEach(text -> sentences.append(' ').append(text));
    spot.listenFor().ifPresent(text -> sentences.append(" Listen: ").append(text).append('.'));
    return sentences;
  }

  /** The exercises for spots, each in its own file. */
  public static final class Exercises {
    private final Path folder;
    private final List<PracticeSpot> spots;

    /** The indexes of spots whose exercises fail; the ladder and the other exercises do not. */
    private final ImmutableSet<Integer> failing;

    /**
     * Takes the exercises of spots.
     *
     * @param folder the folder of the files
     */
    public Exercises(Path folder, List<PracticeSpot> spots) {
      this.folder = folder;
      this.spots = ImmutableList.copyOf(spots);
      failing =
          IntStream.range(0, spots.size())
              .filter(spot -> fails(spots.get(spot)))
              .boxed()
              .collect(ImmutableSet.toImmutableSet());
    }

    private static boolean fails(PracticeSpot spot) {
      try {
        spot.exercise().ifPresent(SpotExercise::text);
        return false;
      } catch (RuntimeException e) {
        return true;
      }
    }

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
            .filter(file -> !OwnFiles.isUnchangedScore(file))
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
        if (file.isPresent()) {
          SpotExercise exercise = spots.get(i).exercise().orElseThrow();
          files.score(exercise.file(), exercise.text(), file.get());
        }
      }
    }

    /** Whether there are any. */
    private boolean any() {
      return IntStream.range(0, spots.size()).anyMatch(spot -> file(spot).isPresent());
    }

    /** Says where the exercise of a spot is; empty if it has none. */
    private Optional<String> remark(int spot) {
      return failing.contains(spot)
          ? Optional.of("Its exercise could not be written.")
          : file(spot).map(file -> "Written to " + file + ".");
    }

    /** The file for a spot; empty if it has no exercise. */
    private Optional<Path> file(int spot) {
      String measures = spots.get(spot).measures().replace('–', '-').replaceAll("[^\\w-]", "_");
      return spots
          .get(spot)
          .exercise()
          .filter(exercise -> !failing.contains(spot))
          .map(exercise -> folder.resolve((spot + 1) + "-measure-" + measures + ".musicxml"));
    }
  }
}
