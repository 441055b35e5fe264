package fingering.cli.option;

import fingering.musicxml.SelectionException;
import fingering.musicxml.reading.PartInfo;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.userfile.SmallFile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A student whom plans are for.
 *
 * @param file the player file that describes the student, as typed
 * @param player what it says
 */
public record Student(String file, Player player) {
  /**
   * Reads a player file.
   *
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  static Student read(Path file) {
    String text = SmallFile.text(file, "a player file");
    return new Student(file.toString(), Player.parse(file.toString(), text));
  }

  /**
   * The size the student plays, where it is a size of that instrument that is asked for.
   *
   * @throws SelectionException if there is no such size of it
   */
  Optional<String> size(Instrument of) {
    boolean same = player.instrument().map(Instrument::id).map(of.id()::equals).orElse(true);
    if (!same || player.size().isEmpty()) {
      return Optional.empty();
    }
    try {
      Instruments.standard().size(of, player.size().get());
      return player.size();
    } catch (FingeringException e) {
      throw new SelectionException(file + ": " + e.getMessage() + ".");
    }
  }

  /**
   * Refuses a part that is for another instrument than the student's.
   *
   * @throws SelectionException if it is, and not only its clef says so
   */
  void refuseOther(PartInfo part) {
    if (player.instrument().isEmpty() || part.instrument().isEmpty() || part.guessed()) {
      return;
    }
    Instrument own = player.instrument().get();
    Instrument other = part.instrument().get();
    if (!own.id().equals(other.id())) {
      throw new SelectionException(
          "The player of %s plays the %s, and the part '%s' is for the %s: choose another part with --part, or say --instrument %s if the part is to be played so."
              .formatted(file, own.spoken(), part.name(), other.spoken(), own.id()));
    }
  }

  /**
   * Refuses an instrument for which none of the finger patterns listed is.
   *
   * @throws SelectionException if there are patterns and none is
   */
  void refuseOtherPatterns(Instrument instrument) {
    boolean fits =
        player.patterns().stream()
            .allMatch(all -> all.stream().anyMatch(pattern -> pattern.fits(instrument.kind())));
    if (!fits) {
      throw new SelectionException(
          "%s lists no finger pattern of the %s: add some of %s, or take the line 'patterns' out."
              .formatted(
                  file,
                  instrument.spoken(),
                  Arrays.stream(FingerPattern.values())
                      .filter(pattern -> pattern.fits(instrument.kind()))
                      .map(FingerPattern::word)
                      .collect(Collectors.joining(", "))));
    }
  }
}
