package fingering.cli.option;

import fingering.exercise.Scale;
import fingering.tables.FingeringException;
import fingering.tables.Key;
import fingering.tables.NoteNames;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.Option;

/** The language in which notes, keys and scales are typed. */
public final class NoteNamesOption {
  @Option(
      names = "--note-names",
      paramLabel = "LANGUAGE",
      converter = Converters.NoteNamesConverter.class,
      description =
          "Language of the notes that you type: en, de (H is B, and B is Bb), fr, it or es. Default: from words such as Dur, majeur and maggiore.")
  Optional<NoteNames> names = Optional.empty();

  /** The key that a text names. */
  public Key key(String typed) {
    return Key.parse(
        language(typed, Key::parse).map(language -> language.scale(typed)).orElse(typed));
  }

  /** The scale that a text names. */
  public Scale scale(String typed) {
    return Scale.parse(
        language(typed, Scale::parse).map(language -> language.scale(typed)).orElse(typed));
  }

  /** The English name of a pitch that is typed in the same language as a scale. */
  public String pitch(String typed, String scale) {
    return language(scale, Scale::parse).map(language -> language.pitch(typed)).orElse(typed);
  }

  /** The English name of a string; text that is not a note name is returned unchanged. */
  public String string(String typed) {
    try {
      return names.map(language -> language.note(typed).toString()).orElse(typed);
    } catch (FingeringException e) {
      return typed;
    }
  }

  /** The language of the option, else the first that can read a text that is not English. */
  private Optional<NoteNames> language(String typed, Consumer<String> englishParser) {
    if (names.isPresent()) {
      return names;
    }
    try {
      englishParser.accept(typed);
      return Optional.empty();
    } catch (FingeringException e) {
      return NoteNames.all().stream().filter(language -> language.isScale(typed)).findFirst();
    }
  }
}
