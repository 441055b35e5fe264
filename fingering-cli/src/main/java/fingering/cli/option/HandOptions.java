package fingering.cli.option;

import fingering.fingerboard.LeftHand;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The player's left hand. */
public final class HandOptions {
  @Option(
      names = "--hand",
      paramLabel = "SIZE",
      converter = Converters.HandConverter.class,
      description =
          "small, medium (the default) or large for the size of the instrument, or the reach from first to fourth finger along the string: 102mm.")
  Optional<LeftHand> size = Optional.empty();

  @Option(
      names = "--four-fingers",
      description = "Double bass: one finger to a semitone, instead of 1-2-4.")
  boolean fourFingers;

  @Option(
      names = "--low-thumb",
      description = "Cello and bass: use the thumb below the octave for single notes too.")
  boolean lowThumb;

  /** The hand that the options describe; medium by default. */
  public LeftHand hand() {
    return hand(LeftHand.MEDIUM);
  }

  /**
   * The hand that the options describe.
   *
   * @param usual the hand whose reach is used if the options give none
   */
  LeftHand hand(LeftHand usual) {
    return size.orElse(usual).withFourFingers(fourFingers).withLowThumb(lowThumb);
  }
}
