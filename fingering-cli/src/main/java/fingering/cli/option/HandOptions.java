package fingering.cli.option;

import fingering.fingerboard.LeftHand;
import fingering.tables.FingeringException;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The player's left hand; shared by the commands. */
public final class HandOptions {
  @Option(
      names = "--hand",
      paramLabel = "SIZE",
      converter = HandConverter.class,
      description =
          "small, medium (the default) or large for the size of the instrument, or the reach between first and fourth finger on the string: 102mm.")
  Optional<LeftHand> size = Optional.empty();

  @Option(
      names = "--four-fingers",
      description = "Double bass: a semitone for each finger, instead of 1-2-4.")
  boolean fourFingers;

  @Option(
      names = "--low-thumb",
      description = "Cello and bass: the thumb on the string below the octave too.")
  boolean lowThumb;

  /** The hand that the options describe. */
  public LeftHand hand() {
    return hand(LeftHand.MEDIUM);
  }

  /** The hand that the options describe, of that reach where they say none. */
  public LeftHand hand(LeftHand otherwise) {
    return size.orElse(otherwise).withFourFingers(fourFingers).withLowThumb(lowThumb);
  }

  static final class HandConverter implements ITypeConverter<LeftHand> {
    @Override
    public LeftHand convert(String text) {
      try {
        return LeftHand.parse(text);
      } catch (FingeringException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}
