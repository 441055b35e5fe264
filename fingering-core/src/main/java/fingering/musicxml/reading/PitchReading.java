package fingering.musicxml.reading;

import fingering.musicxml.element.Ornament;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.Optional;

/** Determines the sounding pitches of a part for an instrument. */
final class PitchReading {
  private final int octaves;
  private final Optional<String> remark;

  private PitchReading(int octaves, Optional<String> remark) {
    this.octaves = octaves;
    this.remark = remark;
  }

  /**
   * Decides how to read a part. If the part states no transposition, a double bass sounds an octave
   * lower than written (MusicXML 4.0, element transpose), unless the octave is in the clef (element
   * clef-octave-change) or leads below the lowest string.
   */
  static PitchReading of(PartTimeline part, Instrument instrument) {
    int octaves = instrument.writtenOctaves();
    if (octaves == 0 || part.transposes()) {
      return new PitchReading(0, Optional.empty());
    }
    if (part.lowClef()) {
      return new PitchReading(
          0,
          Optional.of(
              "the clef has an 8 below it, so the notes are read as sounding at their pitches in the file"));
    }
    Optional<WrittenNote> tooLow = firstBelow(part, instrument.lowest().midi() - 12 * octaves);
    if (tooLow.isPresent()) {
      WrittenNote note = tooLow.get();
      return new PitchReading(
          0,
          Optional.of(
              "the notes are read as sounding as written, because %s in measure %s would be below the lowest string an octave lower; a printed part for the %s is an octave above the sound"
                  .formatted(
                      note.pitch().display(),
                      part.measures().get(note.measure()).number(),
                      instrument.nameInSentence())));
    }
    return new PitchReading(
        octaves,
        Optional.of(
            "the part states no transposition; it is read as sounding an octave lower than written"));
  }

  private static Optional<WrittenNote> firstBelow(PartTimeline part, int lowest) {
    return part.slots().stream()
        .map(Slot::notes)
        .flatMap(notes -> notes.stream())
        .filter(note -> note.pitch().midi() < lowest)
        .findFirst();
  }

  /** Returns a remark on an assumption; empty if there is none. */
  Optional<String> remark() {
    return remark;
  }

  /** Returns whether a note has a sounding pitch. A wrong transposition may lead beyond them. */
  boolean sounds(WrittenNote note) {
    try {
      sounding(note.pitch(), note);
      return true;
    } catch (FingeringException e) {
      return false;
    }
  }

  /**
   * Returns a note with its sounding pitch, harmonics not yet considered.
   *
   * @throws FingeringException if it has {@linkplain #sounds none}
   */
  SoundingNote asPrinted(WrittenNote note) {
    Pitch pitch = sounding(note.pitch(), note);
    return SoundingNote.asPrinted(
        note, pitch, note.upper().flatMap(upper -> upper(upper, note, pitch)));
  }

  private Pitch sounding(Pitch written, WrittenNote note) {
    if (note.transposition().isPresent()) {
      return note.transposition().get().apply(written);
    }
    return octaves == 0 ? written : written.plusOctaves(octaves);
  }

  private Optional<Pitch> upper(Pitch written, WrittenNote note, Pitch pitch) {
    try {
      return Optional.of(sounding(written, note));
    } catch (FingeringException e) {
      return Ornament.above(pitch, 2);
    }
  }
}
