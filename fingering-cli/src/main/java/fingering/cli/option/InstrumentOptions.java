package fingering.cli.option;

import fingering.cli.student.Students;
import fingering.fingerboard.TuningFile;
import fingering.musicxml.SelectionException;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Tuning;
import fingering.userfile.SmallFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The tuning and size of the instrument. */
public final class InstrumentOptions {
  @Option(
      names = "--tuning",
      paramLabel = "NAME|FILE",
      description =
          "Another tuning, such as five-string or solo, or a file with your own. Not for a part whose notes are written as fingered.")
  Optional<String> tuning = Optional.empty();

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      description =
          "Size of the instrument, if not the usual one: 3/4, inches for a viola (15.5), or string length in millimetres (610mm).")
  Optional<String> size = Optional.empty();

  /** Whether a size is given. */
  public boolean hasSize() {
    return size.isPresent();
  }

  /**
   * The instrument with the tuning and size of the options.
   *
   * @param instrument the instrument of the part
   * @throws FingeringException if it has no such tuning or size, or the file of a tuning cannot be
   *     read or is for another instrument; the message is one sentence
   */
  public Instrument apply(Instrument instrument) {
    return apply(instrument, size);
  }

  /**
   * The instrument with the tuning and size of the options, or the students' size if the options
   * give none.
   *
   * @throws FingeringException for the same reasons as {@link #apply(Instrument)}
   */
  public Instrument apply(Instrument instrument, Students students) {
    return apply(instrument, hasSize() ? size : students.size(instrument));
  }

  private Instrument apply(Instrument instrument, Optional<String> wantedSize) {
    Instruments known = Instruments.standard();
    Instrument result = instrument;
    if (tuning.isPresent()) {
      result = result.tuned(tuning(tuning.get(), instrument, known));
    }
    if (wantedSize.isPresent()) {
      result = result.sized(known.size(instrument, wantedSize.get()));
    }
    return result;
  }

  /** A tuning by name, or else from a file of that name. */
  private static Tuning tuning(String wanted, Instrument instrument, Instruments known) {
    try {
      return known.tuning(instrument, wanted);
    } catch (FingeringException e) {
      Path file =
          OptionFiles.existing(wanted)
              .orElseThrow(
                  () ->
                      new SelectionException(
                          e.getMessage() + ", or give a file of your own with --tuning."));
      return own(file, instrument, known);
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
                  known.named(own.instrument()).nameInSentence(),
                  instrument.nameInSentence(),
                  instrument.nameInSentence()));
    }
    return own;
  }
}
