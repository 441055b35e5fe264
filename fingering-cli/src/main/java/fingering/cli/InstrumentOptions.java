package fingering.cli;

import fingering.musicxml.ChoiceException;
import fingering.tables.BadTableException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Tuning;
import fingering.tables.Tunings;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How the instrument is strung and built; shared by the commands. */
final class InstrumentOptions {
  /** Far more than eight strings and their sources take. */
  private static final int MAX_KIB = 64;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  @Option(
      names = "--tuning",
      paramLabel = "NAME|FILE",
      description =
          "Another tuning than the standard one, such as five-string or solo, or a file with your"
              + " own. Leave it out for a part that is written as fingered.")
  Optional<String> tuning = Optional.empty();

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      description =
          "Another size than the usual one: 3/4, inches for a viola (15.5), or the string length"
              + " in millimetres (610mm).")
  Optional<String> size = Optional.empty();

  /**
   * The instrument as the options have it strung and built.
   *
   * @param instrument the one that the part is for
   * @throws IllegalArgumentException if there is no such tuning or size of it, or the file of a
   *     tuning cannot be read or is for another instrument; the message is one sentence
   */
  Instrument apply(Instrument instrument) {
    Instruments known = Instruments.standard();
    Instrument built = instrument;
    if (tuning.isPresent()) {
      built = built.tuned(tuning(tuning.get(), instrument, known));
    }
    if (size.isPresent()) {
      built = built.sized(known.size(instrument, size.get()));
    }
    return built;
  }

  /** A name that the tables know wins over a file of that name. */
  private static Tuning tuning(String wanted, Instrument instrument, Instruments known) {
    try {
      return known.tuning(instrument, wanted);
    } catch (IllegalArgumentException e) {
      Path file =
          existing(wanted)
              .orElseThrow(
                  () ->
                      new ChoiceException(
                          e.getMessage()
                              + "; choose one of these with --tuning, or give a file with one of"
                              + " your own."));
      return own(file, instrument, known);
    }
  }

  private static Optional<Path> existing(String name) {
    try {
      return Optional.of(Path.of(name)).filter(Files::exists);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static Tuning own(Path file, Instrument instrument, Instruments known) {
    Tuning own;
    try {
      own = Tunings.read(file.toString(), text(file), known);
    } catch (BadTableException e) {
      throw new ChoiceException(
          e.getMessage()
              + " (a row is: instrument | tuning | string | open pitch | down to, or - | source).");
    }
    if (!own.instrument().equals(instrument.id())) {
      throw new ChoiceException(
          "The tuning '%s' in %s is for the %s, and the part is for the %s: give a tuning for the %s, or choose another part with --part."
              .formatted(
                  own.name(),
                  file,
                  known.named(own.instrument()).spoken(),
                  instrument.spoken(),
                  instrument.spoken()));
    }
    return own;
  }

  private static String text(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw new ChoiceException(
            "%s is a folder: name the file of a tuning inside it.".formatted(file));
      }
      if (!Files.isRegularFile(file)) {
        throw new ChoiceException(
            "%s is a device and no file: save the tuning to a file first.".formatted(file));
      }
      if (Files.size(file) > MAX_KIB * 1024L) {
        throw new ChoiceException(
            "%s is larger than %d KiB and is not read: check that it holds a tuning and no score."
                .formatted(file, MAX_KIB));
      }
      String text = Files.readString(file);
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new ChoiceException(
          "%s is not text in UTF-8: save it again in that encoding.".formatted(file));
    } catch (AccessDeniedException e) {
      throw new ChoiceException(
          "You are not allowed to read %s: change its permissions, or use a copy.".formatted(file));
    } catch (IOException e) {
      throw new ChoiceException(
          "%s could not be read from its disk: copy it elsewhere and try again.".formatted(file));
    }
  }
}
