package fingering.musicxml;

import com.google.common.base.Strings;
import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.math.BigInteger;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScoreInstrument;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;

/** Tells the parts of a score by the signs they bear. */
final class InstrumentSigns {
  /** Names that voices and strings share: alto is the French viola. */
  private static final Pattern VOICE =
      Pattern.compile("\\b(?:alto|altos|bass|basses|basso|bassi)\\b", Pattern.CASE_INSENSITIVE);

  private final Instruments instruments;

  InstrumentSigns(Instruments instruments) {
    this.instruments = instruments;
  }

  /**
   * Describes a part.
   *
   * @param number its number, from 1
   * @param listed its entry in the list of parts, if there is one
   */
  PartInfo describe(int number, Optional<ScorePart> listed, ScorePartwise.Part part) {
    ImmutableList<ScoreInstrument> players =
        listed.map(p -> ImmutableList.copyOf(p.getScoreInstrument())).orElse(ImmutableList.of());
    ImmutableList<String> names =
        Stream.concat(
                listed.map(ScorePart::getPartName).map(PartName::getValue).stream(),
                Stream.concat(
                    players.stream()
                        .map(ScoreInstrument::getInstrumentName)
                        .filter(Objects::nonNull),
                    listed.map(ScorePart::getPartAbbreviation).map(PartName::getValue).stream()))
            .map(XmlText::printable)
            .filter(name -> !name.isEmpty())
            .collect(ImmutableList.toImmutableList());
    String name = names.isEmpty() ? "Part " + number : names.get(0);
    String id = Strings.nullToEmpty(listed.map(ScorePart::getId).orElse(""));
    Optional<Instrument> shown =
        players.stream()
            .map(ScoreInstrument::getInstrumentSound)
            .filter(Objects::nonNull)
            .flatMap(sound -> instruments.bySound(sound.strip()).stream())
            .findFirst()
            .or(() -> names.stream().flatMap(n -> named(n, part).stream()).findFirst());
    Optional<Instrument> found = shown.or(() -> byFirstClef(part));
    return new PartInfo(number, id, name, found, shown.isEmpty() && found.isPresent());
  }

  /** The instrument that a name speaks of; an alto or a bass may as well be a voice. */
  private Optional<Instrument> named(String name, ScorePartwise.Part part) {
    Optional<Instrument> found = instruments.byPartName(name);
    if (found.isEmpty() || !VOICE.matcher(name).find()) {
      return found;
    }
    boolean treble = firstClef(part).map(clef -> clef.getSign() == ClefSign.G).orElse(false);
    boolean alto = found.get().id().equals("viola");
    return (treble && alto) || sings(part) ? Optional.empty() : found;
  }

  private static boolean sings(ScorePartwise.Part part) {
    return part.getMeasure().stream()
        .flatMap(measure -> measure.getNoteOrBackupOrForward().stream())
        .anyMatch(element -> element instanceof Note note && !note.getLyric().isEmpty());
  }

  private Optional<Instrument> byFirstClef(ScorePartwise.Part part) {
    return firstClef(part).flatMap(this::byClef);
  }

  private static Optional<Clef> firstClef(ScorePartwise.Part part) {
    return part.getMeasure().stream()
        .flatMap(measure -> measure.getNoteOrBackupOrForward().stream())
        .filter(Attributes.class::isInstance)
        .flatMap(attributes -> ((Attributes) attributes).getClef().stream())
        .findFirst();
  }

  private Optional<Instrument> byClef(Clef clef) {
    if (clef.getSign() == null) {
      return Optional.empty();
    }
    String sign = clef.getSign().value();
    String line =
        clef.getLine() == null
            ? switch (sign) {
              case "G" -> "2";
              case "F" -> "4";
              case "C" -> "3";
              default -> "";
            }
            : clef.getLine().toString();
    BigInteger octave = clef.getClefOctaveChange();
    if (octave == null || octave.signum() == 0) {
      return instruments.byClef(sign + line);
    }
    // A bass clef with an 8 below is what programs give the double bass.
    return (sign + line).equals("F4") && octave.intValue() == -1
        ? instruments.byPartName("double bass")
        : Optional.empty();
  }
}
