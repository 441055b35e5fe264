package fingering.musicxml.reading;

import fingering.musicxml.element.Ornament;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline;
import fingering.musicxml.timeline.PartTimeline.Slot;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.Optional;

/** Tells how the notes of a part sound on an instrument. */
final class PitchReading {
  private final int octaves;
  private final Optional<String> remark;

  private PitchReading(int octaves, Optional<String> remark) {
    this.octaves = octaves;
    this.remark = remark;
  }

  /**
   * Decides how to read a part. Where the part names no transposition, a double bass sounds an
   * octave lower than written (MusicXML 4.0, element transpose), but not where the octave is in the
   * clef (element clef-octave-change) or where it would lead below the lowest string.
   */
  static PitchReading of(PartTimeline part, Instrument instrument) {
    int octaves = instrument.writtenOctaves();
    if (octaves == 0 || part.transposes()) {
      return new PitchReading(0, Optional.empty());
    }
    if (part.lowClef()) {
      return new PitchReading(
          0,
          Optional.of("the clef has an 8 below, so the notes are taken to sound as in the file"));
    }
    Optional<WrittenNote> tooLow = firstBelow(part, instrument.lowest().midi() - 12 * octaves);
    if (tooLow.isPresent()) {
      WrittenNote note = tooLow.get();
      return new PitchReading(
          0,
          Optional.of(
              "the notes are taken to sound as in the file, for an octave lower %s in measure %s would lie below the lowest string"
                  .formatted(
                      note.pitch().display(), part.measures().get(note.measure()).number())));
    }
    return new PitchReading(
        octaves,
        Optional.of(
            "the part names no transposition; it is taken to sound an octave lower than written"));
  }

  private static Optional<WrittenNote> firstBelow(PartTimeline part, int lowest) {
    return part.slots().stream()
        .map(Slot::notes)
        .flatMap(notes -> notes.stream())
        .filter(note -> note.pitch().midi() < lowest)
        .findFirst();
  }

  /** What was assumed. */
  Optional<String> remark() {
    return remark;
  }

  /**
   * A note at the pitch at which it sounds as printed.
   *
   * @throws FingeringException if no pitch is that high or low
   */
  HeardNote asPrinted(WrittenNote note) {
    Pitch pitch = sounding(note.pitch(), note);
    return HeardNote.asPrinted(
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
