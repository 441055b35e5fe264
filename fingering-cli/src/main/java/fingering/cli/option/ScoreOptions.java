package fingering.cli.option;

import fingering.music.Passage;
import fingering.music.PrintedPart;
import fingering.music.Tempo;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What to read of a score, and how; shared by the commands. */
public final class ScoreOptions extends PartOptions {
  @Option(
      names = "--measures",
      paramLabel = "RANGE",
      description = "Measures as printed (9-24), or rehearsal marks ('B to D').")
  Optional<String> measures = Optional.empty();

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = TempoConverter.class,
      description =
          "Tempo at the beginning (half=84, dotted-quarter=63); later ones are scaled alike.")
  Optional<Tempo> tempo = Optional.empty();

  @Option(
      names = "--ignore-words",
      description = "Leave words that name a string, such as 'sul G', out of account.")
  boolean ignoreWords;

  /** Reads the passage that the options ask for, for the instrument that the students play. */
  public Passage read(ScoreFile file, Students students) {
    return read(ScoreReader.read(file), students);
  }

  /** Reads the passage from a score that has been read. */
  public Passage read(Score score, Students students) {
    Optional<Instrument> played = instrument.or(() -> students.instrument());
    PartInfo info = part.map(score::part).orElseGet(() -> score.onlyPart(played));
    if (instrument.isEmpty()) {
      students.refuseOther(info);
    }
    Passage passage =
        score.passage(
            new PassageRequest(part, played, measures, tempo, voice, !ignoreWords),
            one -> built.apply(one, built.size.isPresent() ? built.size : students.size(one)));
    students.refuseOtherPatterns(passage.instrument());
    return passage;
  }

  /** What is printed of a passage, in the voice that the options ask for. */
  public PrintedPart printed(Score score, Passage passage) {
    return score.printed(passage, voice);
  }

  /** Whether they say of which size the instrument is. */
  boolean sized() {
    return built.size.isPresent();
  }

  public static final class TempoConverter implements ITypeConverter<Tempo> {
    @Override
    public Tempo convert(String text) {
      return converted(() -> Tempo.parse(text));
    }
  }

  public static <T> T converted(java.util.function.Supplier<T> reading) {
    try {
      return reading.get();
    } catch (FingeringException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
