package fingering.cli.option;

import fingering.exercise.Scale;
import fingering.tables.FingeringException;
import fingering.tables.Key;
import fingering.tables.NoteNames;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** In which language notes, keys and scales are typed; shared by the commands. */
public final class NoteNamesOption {
  @Option(
      names = "--note-names",
      paramLabel = "LANGUAGE",
      converter = NamesConverter.class,
      description =
          "How notes are called where you type them: en, de (H is B, and B is Bb), fr, it or es;"
              + " told by words such as Dur, majeur and maggiore otherwise.")
  Optional<NoteNames> names = Optional.empty();

  /** The key that is typed. */
  public Key key(String typed) {
    return Key.parse(
        language(typed, Key::parse).map(language -> language.scale(typed)).orElse(typed));
  }

  /** The scale that is typed. */
  public Scale scale(String typed) {
    return Scale.parse(
        language(typed, Scale::parse).map(language -> language.scale(typed)).orElse(typed));
  }

  /** A pitch in English, typed in the language of a scale. */
  public String pitch(String typed, String scale) {
    return language(scale, Scale::parse).map(language -> language.pitch(typed)).orElse(typed);
  }

  /** A string in English; what is no note stays as it is typed. */
  public String string(String typed) {
    try {
      return names.map(language -> language.note(typed).toString()).orElse(typed);
    } catch (FingeringException e) {
      return typed;
    }
  }

  /** The language asked for, or the first that can be read where English cannot. */
  private Optional<NoteNames> language(String typed, Consumer<String> english) {
    if (names.isPresent()) {
      return names;
    }
    try {
      english.accept(typed);
      return Optional.empty();
    } catch (FingeringException e) {
      return NoteNames.all().stream().filter(language -> language.reads(typed)).findFirst();
    }
  }

  static final class NamesConverter implements ITypeConverter<NoteNames> {
    @Override
    public NoteNames convert(String text) {
      return ScoreOptions.converted(() -> NoteNames.parse(text));
    }
  }
}
