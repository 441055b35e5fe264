package fingering.cli.student;

import com.google.common.base.Ascii;
import com.google.common.io.MoreFiles;
import fingering.musicxml.SelectionException;
import fingering.musicxml.reading.PartInfo;
import fingering.player.FingerPattern;
import fingering.player.Player;
import fingering.player.StoredPlayer;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A student that plans are made for.
 *
 * @param file the player file that describes the student, as typed
 * @param player the player that the file describes
 */
public record Student(String file, Player player) {
  /**
   * Reads a player file.
   *
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  public static Student read(Path file) {
    return new Student(file.toString(), StoredPlayer.read(file).player());
  }

  /** The name of the student: that of the file, {@code Imke} for {@code students/imke.yaml}. */
  String name() {
    String name = MoreFiles.getNameWithoutExtension(Path.of(file));
    return name.isEmpty() ? file : Ascii.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  /**
   * The size of the student's instrument; empty if the student plays another instrument or the file
   * names no size.
   *
   * @throws SelectionException if the instrument has no such size
   */
  Optional<String> size(Instrument instrument) {
    boolean same =
        player.instrument().map(Instrument::id).map(instrument.id()::equals).orElse(true);
    if (!same || player.size().isEmpty()) {
      return Optional.empty();
    }
    try {
      Instruments.standard().size(instrument, player.size().get());
      return player.size();
    } catch (FingeringException e) {
      throw new SelectionException(file + ": " + e.getMessage() + ".");
    }
  }

  /**
   * Checks that a part is for the student's instrument. A part that shows its instrument only by
   * its clef is accepted.
   *
   * @throws SelectionException if it is for another instrument
   */
  void requirePart(PartInfo part) {
    if (player.instrument().isEmpty() || !part.isString()) {
      return;
    }
    Instrument own = player.instrument().get();
    Instrument other = part.instrument().orElseThrow();
    if (!own.id().equals(other.id())) {
      throw new SelectionException(
          "The player of %s plays the %s, and the part '%s' is for the %s: choose another part with --part, or add --instrument %s to play this part on the %s."
              .formatted(
                  file,
                  own.nameInSentence(),
                  part.name(),
                  other.nameInSentence(),
                  own.id(),
                  own.nameInSentence()));
    }
  }

  /**
   * Checks that at least one of the student's finger patterns is for an instrument.
   *
   * @throws SelectionException if there are patterns, but none for it
   */
  void requirePatterns(Instrument instrument) {
    boolean fits =
        player.patterns().stream()
            .allMatch(all -> all.stream().anyMatch(pattern -> pattern.fits(instrument.kind())));
    if (!fits) {
      throw new SelectionException(
          "%s lists no finger pattern for the %s: add some of %s, or remove the line 'patterns'."
              .formatted(
                  file,
                  instrument.nameInSentence(),
                  Arrays.stream(FingerPattern.values())
                      .filter(pattern -> pattern.fits(instrument.kind()))
                      .map(FingerPattern::word)
                      .collect(Collectors.joining(", "))));
    }
  }
}
