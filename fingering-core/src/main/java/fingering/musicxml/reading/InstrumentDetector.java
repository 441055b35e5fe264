package fingering.musicxml.reading;

import com.google.common.base.Strings;
import com.google.common.collect.ImmutableList;
import fingering.musicxml.xml.XmlText;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.math.BigInteger;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScoreInstrument;
import org.audiveris.proxymusic.ScorePart;

/** Detects the instruments of parts from their names, sounds and clefs. */
final class InstrumentDetector {
  /** Names shared by voices and strings; alto is the French name of the viola. */
  private static final Pattern VOICE =
      Pattern.compile("\\b(?:alto|altos|bass|basses|basso|bassi)\\b", Pattern.CASE_INSENSITIVE);

  private final Instruments instruments;

  InstrumentDetector(Instruments instruments) {
    this.instruments = instruments;
  }

  /**
   * Returns the name of a part.
   *
   * @param number its number, from 1
   * @param listed its entry in the list of parts, if it has one
   */
  static String name(int number, Optional<ScorePart> listed) {
    return names(listed).stream().findFirst().orElse("Part " + number);
  }

  private static ImmutableList<String> names(Optional<ScorePart> listed) {
    return Stream.concat(
            listed.map(ScorePart::getPartName).map(PartName::getValue).stream(),
            Stream.concat(
                scoreInstruments(listed).stream()
                    .map(ScoreInstrument::getInstrumentName)
                    .filter(Objects::nonNull),
                listed.map(ScorePart::getPartAbbreviation).map(PartName::getValue).stream()))
        .map(XmlText::printable)
        .filter(name -> !name.isEmpty())
        .collect(ImmutableList.toImmutableList());
  }

  private static ImmutableList<ScoreInstrument> scoreInstruments(Optional<ScorePart> listed) {
    return listed.map(p -> ImmutableList.copyOf(p.getScoreInstrument())).orElse(ImmutableList.of());
  }

  /**
   * Describes a part.
   *
   * @param number its number, from 1
   * @param listed its entry in the list of parts, if it has one
   * @param part its music, read to the end
   */
  PartInfo describe(int number, Optional<ScorePart> listed, PartReader part) {
    String id = Strings.nullToEmpty(listed.map(ScorePart::getId).orElse(""));
    Optional<Instrument> named =
        scoreInstruments(listed).stream()
            .map(ScoreInstrument::getInstrumentSound)
            .filter(Objects::nonNull)
            .flatMap(sound -> instruments.bySound(sound.strip()).stream())
            .findFirst()
            .or(() -> names(listed).stream().flatMap(n -> byName(n, part).stream()).findFirst());
    Optional<Instrument> found = named.or(() -> part.firstClef().flatMap(this::byClef));
    return new PartInfo(
        number,
        id,
        name(number, listed),
        found,
        named.isEmpty() && found.isPresent(),
        found.flatMap(read -> doubt(read, named.isPresent(), listed)));
  }

  /** A remark if a part names several instruments, another instrument, or none. */
  private Optional<String> doubt(Instrument read, boolean named, Optional<ScorePart> listed) {
    if (named) {
      return names(listed).stream()
          .findFirst()
          .flatMap(
              name ->
                  instruments.allInPartName(name).stream()
                      .filter(other -> !other.id().equals(read.id()))
                      .findFirst()
                      .map(
                          other ->
                              "the part name '%s' also mentions the %s; it is read for the %s; use --instrument %s for the other"
                                  .formatted(
                                      name,
                                      other.nameInSentence(),
                                      read.nameInSentence(),
                                      other.id())));
    }
    Optional<String> another =
        names(listed).stream()
            .filter(instruments::namesOtherInstrument)
            .findFirst()
            .or(() -> otherSound(listed).map(sound -> name(0, listed)));
    return Optional.of(
        another
            .map(
                name ->
                    "'%s' is not a part for a bowed string instrument; by its first clef it is read for the %s; use --instrument to choose another"
                        .formatted(name, read.nameInSentence()))
            .orElseGet(
                () ->
                    "the part does not name its instrument; by its first clef it is read for the %s"
                        .formatted(read.id())));
  }

  private Optional<String> otherSound(Optional<ScorePart> listed) {
    return scoreInstruments(listed).stream()
        .map(ScoreInstrument::getInstrumentSound)
        .filter(Objects::nonNull)
        .filter(sound -> instruments.isOtherSound(sound.strip()))
        .findFirst();
  }

  /** The instrument in a part name; an alto or a bass may also be a voice. */
  private Optional<Instrument> byName(String name, PartReader part) {
    Optional<Instrument> found = instruments.byPartName(name);
    if (found.isEmpty() || !VOICE.matcher(name).find()) {
      return found;
    }
    boolean treble = part.firstClef().map(clef -> clef.getSign() == ClefSign.G).orElse(false);
    boolean alto = found.get().id().equals("viola");
    return (treble && alto) || part.hasLyrics() ? Optional.empty() : found;
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
    // Programs give the double bass a bass clef with an 8 below.
    return (sign + line).equals("F4") && octave.intValue() == -1
        ? instruments.byPartName("double bass")
        : Optional.empty();
  }
}
