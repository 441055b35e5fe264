package fingering.cli;

import fingering.music.Passage;
import fingering.music.PrintedPart;
import fingering.music.Tempo;
import fingering.musicxml.PartInfo;
import fingering.musicxml.PassageRequest;
import fingering.musicxml.Score;
import fingering.musicxml.ScoreFile;
import fingering.musicxml.ScoreReader;
import fingering.tables.Instrument;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What to read of a score, and how; shared by the commands. */
final class ScoreOptions extends PartOptions {
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
  Passage read(ScoreFile file, Students students) {
    return read(ScoreReader.read(file), students);
  }

  /** Reads the passage from a score that has been read. */
  Passage read(Score score, Students students) {
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
  PrintedPart printed(Score score, Passage passage) {
    return score.printed(passage, voice);
  }

  /** Whether they say of which size the instrument is. */
  boolean sized() {
    return built.size.isPresent();
  }

  static final class TempoConverter implements ITypeConverter<Tempo> {
    @Override
    public Tempo convert(String text) {
      return converted(() -> Tempo.parse(text));
    }
  }

  static <T> T converted(java.util.function.Supplier<T> reading) {
    try {
      return reading.get();
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }
}
