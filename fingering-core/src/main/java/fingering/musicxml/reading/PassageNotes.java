package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.reading.TieChains.Onset;
import fingering.musicxml.timeline.PartTimeline;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.RomanNumeral;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The notes of a passage at their sounding pitches. A note that a transposition moves beyond all
 * pitches is left out. A printed string that does not have its note is ignored: a player would take
 * it for a misprint.
 */
final class PassageNotes {
  /** The most places that a remark names. */
  private static final int MAX_NAMED = 3;

  private final Instrument instrument;
  private final ImmutableList<Measure> measures;
  private final PitchReading pitches;
  private final HarmonicReading harmonics;
  private final List<String> withoutPitch = new ArrayList<>();
  private final List<String> withoutString = new ArrayList<>();

  /**
   * Reads for an instrument.
   *
   * @param measures the measures of the part
   */
  PassageNotes(Instrument instrument, ImmutableList<Measure> measures, PitchReading pitches) {
    this.instrument = instrument;
    this.measures = measures;
    this.pitches = pitches;
    harmonics = new HarmonicReading(instrument, pitches::asPrinted);
  }

  /** Returns the wanted notes with the notes tied to them, in order of time. */
  ImmutableList<Onset> read(PartTimeline timeline, Predicate<WrittenNote> wanted) {
    return TieChains.join(
        timeline.slots(),
        slot -> {
          ImmutableList<SoundingNote> notes =
              harmonics.read(slot.notes().stream().filter(wanted).filter(this::sounds).toList());
          notes.forEach(this::checkString);
          return notes;
        });
  }

  private boolean sounds(WrittenNote note) {
    boolean sounds = pitches.sounds(note);
    if (!sounds) {
      withoutPitch.add(place(note));
    }
    return sounds;
  }

  /** Notes a printed string that does not have the note. No plan can keep it. */
  private void checkString(SoundingNote note) {
    int number = note.marks().string().orElse(0);
    if (number != 0 && (number > instrument.strings().size() || !has(number, note))) {
      withoutString.add(RomanNumeral.of(number) + " at " + place(note.note()));
    }
  }

  private boolean has(int number, SoundingNote note) {
    OpenString string = instrument.string(number);
    int midi = note.sounding().midi();
    return string.lowest().midi() <= midi
        && (note.marks().harmonic().isPresent()
            || midi <= string.pitch().midi() + instrument.lastSemitone());
  }

  private String place(WrittenNote note) {
    return note.pitch().display() + " in measure " + measures.get(note.measure()).number();
  }

  /** Returns remarks on what is left out or ignored, without full stop. */
  ImmutableList<String> remarks() {
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    if (!withoutPitch.isEmpty()) {
      remarks.add(
          "%s transposed out of range and left out: %s"
              .formatted(
                  withoutPitch.size() == 1 ? "a note is" : withoutPitch.size() + " notes are",
                  named(withoutPitch)));
    }
    if (!withoutString.isEmpty()) {
      remarks.add(
          "%s not on the printed string, which is ignored: %s"
              .formatted(
                  withoutString.size() == 1 ? "a note is" : withoutString.size() + " notes are",
                  named(withoutString)));
    }
    return remarks.build();
  }

  private static String named(List<String> places) {
    int more = places.size() - MAX_NAMED;
    return places.stream().limit(MAX_NAMED).collect(Collectors.joining("; "))
        + (more > 0 ? "; and " + more + " more" : "");
  }
}
