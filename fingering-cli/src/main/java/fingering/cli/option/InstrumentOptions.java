package fingering.cli.option;

import fingering.fingerboard.TuningFile;
import fingering.musicxml.SelectionException;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Tuning;
import fingering.userfile.SmallFile;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How the instrument is strung and built; shared by the commands. */
public final class InstrumentOptions {
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
  public Optional<String> size = Optional.empty();

  /**
   * The instrument as the options have it strung and built.
   *
   * @param instrument the one that the part is for
   * @throws FingeringException if there is no such tuning or size of it, or the file of a tuning
   *     cannot be read or is for another instrument; the message is one sentence
   */
  public Instrument apply(Instrument instrument) {
    return apply(instrument, Optional.empty());
  }

  /**
   * The same, of a size where the options say none.
   *
   * @throws FingeringException as above
   */
  public Instrument apply(Instrument instrument, Optional<String> otherwise) {
    Instruments known = Instruments.standard();
    Instrument built = instrument;
    if (tuning.isPresent()) {
      built = built.tuned(tuning(tuning.get(), instrument, known));
    }
    Optional<String> wanted = size.or(() -> otherwise);
    if (wanted.isPresent()) {
      built = built.sized(known.size(instrument, wanted.get()));
    }
    return built;
  }

  /** A name that the tables know wins over a file of that name. */
  private static Tuning tuning(String wanted, Instrument instrument, Instruments known) {
    try {
      return known.tuning(instrument, wanted);
    } catch (FingeringException e) {
      Path file =
          existing(wanted)
              .orElseThrow(
                  () ->
                      new SelectionException(
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
    Tuning own = TuningFile.parse(file.toString(), SmallFile.text(file, "a tuning file"), known);
    if (!own.instrument().equals(instrument.id())) {
      throw new SelectionException(
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
}
