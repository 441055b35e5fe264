package fingering.musicxml.reading;

import com.google.common.base.Strings;
import com.google.common.collect.ImmutableList;
import fingering.musicxml.xml.XmlText;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.MidiInstrument;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScoreInstrument;
import org.audiveris.proxymusic.ScorePart;

/**
 * What a part shows of its instrument by itself, without its neighbours. A musician trusts the
 * sound that the part names, then a name in full, then the MIDI program, then the rest.
 *
 * @param id the part's id in the file; empty if it has none
 * @param name the part's name
 * @param names all its names and abbreviations
 * @param kind how sure the instrument is
 * @param instrument the bowed string, if the part names one
 * @param reason why it is not taken for a bowed string, a few words; empty if it is
 * @param byClef the instrument that the first clef suggests
 */
record PartSigns(
    String id,
    String name,
    ImmutableList<String> names,
    Kind kind,
    Optional<Instrument> instrument,
    String reason,
    Optional<Instrument> byClef) {
  /** The reason of a part that is named for something else. */
  static final String OTHER_NAME = "another instrument or a voice";

  private static final int PERCUSSION_CHANNEL = 10;

  /** How sure the instrument of a part is. */
  enum Kind {
    /** For a bowed string. */
    STRING,
    /** The name is shared with voices and other instruments: Bass. */
    SHARED,
    /** The name is only a letter: B. */
    INITIAL,
    /** For a keyboard. */
    KEYBOARD,
    /** For a voice or another instrument. */
    OTHER,
    /** The part says nothing. */
    UNKNOWN
  }

  /** Kind, instrument and reason of a part. */
  private record Verdict(Kind kind, Optional<Instrument> instrument, String reason) {
    static Verdict string(Instrument instrument) {
      return new Verdict(Kind.STRING, Optional.of(instrument), "");
    }

    static Verdict not(Kind kind, String reason) {
      return new Verdict(kind, Optional.empty(), reason);
    }
  }

  /**
   * Reads the signs of a part.
   *
   * @param number its number, from 1
   * @param listed its entry in the list of parts, if it has one
   * @param part its music, read to the end
   */
  static PartSigns of(
      int number, Optional<ScorePart> listed, PartReader part, Instruments instruments) {
    ImmutableList<String> names = names(listed);
    Optional<Instrument> byClef =
        part.firstClef().flatMap(clef -> ClefReading.of(clef, instruments));
    Verdict verdict =
        bySound(listed, instruments)
            .or(() -> byFullName(names, instruments))
            .or(() -> byProgram(listed, instruments))
            .or(() -> bySharedName(names, part, instruments))
            .orElseGet(() -> Verdict.not(Kind.UNKNOWN, "no instrument named"));
    return new PartSigns(
        Strings.nullToEmpty(listed.map(ScorePart::getId).orElse("")),
        name(number, listed),
        names,
        verdict.kind,
        verdict.instrument,
        verdict.reason,
        byClef);
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
                scoreInstruments(listed)
                    .map(ScoreInstrument::getInstrumentName)
                    .filter(Objects::nonNull),
                listed.map(ScorePart::getPartAbbreviation).map(PartName::getValue).stream()))
        .map(XmlText::printable)
        .filter(name -> !name.isEmpty())
        .collect(ImmutableList.toImmutableList());
  }

  private static Stream<ScoreInstrument> scoreInstruments(Optional<ScorePart> listed) {
    return listed.stream().flatMap(entry -> entry.getScoreInstrument().stream());
  }

  private static Optional<Verdict> bySound(Optional<ScorePart> listed, Instruments instruments) {
    ImmutableList<String> sounds =
        scoreInstruments(listed)
            .map(ScoreInstrument::getInstrumentSound)
            .filter(Objects::nonNull)
            .map(String::strip)
            .collect(ImmutableList.toImmutableList());
    return sounds.stream()
        .flatMap(sound -> instruments.bySound(sound).stream())
        .findFirst()
        .map(Verdict::string)
        .or(
            () ->
                sounds.stream()
                    .filter(instruments::isOtherSound)
                    .findFirst()
                    .map(
                        sound ->
                            Verdict.not(
                                sound.startsWith("keyboard") ? Kind.KEYBOARD : Kind.OTHER,
                                "sound " + XmlText.printable(sound))));
  }

  /** The first name that names an instrument in full decides. */
  private static Optional<Verdict> byFullName(
      ImmutableList<String> names, Instruments instruments) {
    boolean shared = names.stream().anyMatch(instruments::isSharedName);
    for (String name : names) {
      Optional<Instrument> named = instruments.byPartName(name);
      if (instruments.isSharedName(name)) {
        continue;
      }
      if (named.isPresent()) {
        return named.map(Verdict::string);
      }
      // Programs call the instrument of any part a piano.
      boolean keyboard = instruments.namesKeyboard(name);
      if (keyboard ? !shared : instruments.namesOtherInstrument(name)) {
        return Optional.of(Verdict.not(keyboard ? Kind.KEYBOARD : Kind.OTHER, OTHER_NAME));
      }
    }
    return Optional.empty();
  }

  private static Optional<Verdict> byProgram(Optional<ScorePart> listed, Instruments instruments) {
    ImmutableList<Integer> programs =
        listed.stream()
            .flatMap(entry -> entry.getMidiDeviceAndMidiInstrument().stream())
            .flatMap(one -> one instanceof MidiInstrument midi ? Stream.of(midi) : Stream.empty())
            .filter(
                midi ->
                    midi.getMidiChannel() == null || midi.getMidiChannel() != PERCUSSION_CHANNEL)
            .map(MidiInstrument::getMidiProgram)
            .filter(Objects::nonNull)
            .collect(ImmutableList.toImmutableList());
    return programs.stream()
        .flatMap(program -> instruments.byProgram(program).stream())
        .findFirst()
        .map(Verdict::string)
        .or(
            () ->
                programs.stream()
                    .filter(instruments::isOtherProgram)
                    .findFirst()
                    .map(program -> Verdict.not(Kind.OTHER, "MIDI program " + program)));
  }

  /** A name shared with voices is one of them with lyrics, or in treble clef (common practice). */
  private static Optional<Verdict> bySharedName(
      ImmutableList<String> names, PartReader part, Instruments instruments) {
    Optional<String> name = names.stream().filter(instruments::isSharedName).findFirst();
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (part.hasLyrics()) {
      return Optional.of(Verdict.not(Kind.OTHER, "with lyrics"));
    }
    if (part.firstClef().map(clef -> clef.getSign() == ClefSign.G).orElse(false)) {
      return Optional.of(Verdict.not(Kind.OTHER, "in treble clef"));
    }
    return Optional.of(
        new Verdict(
            instruments.isInitial(name.get()) ? Kind.INITIAL : Kind.SHARED,
            instruments.byPartName(name.get()),
            ""));
  }
}
