package fingering.musicxml.random;

import java.util.ArrayList;
import java.util.List;

/**
 * What must be read from a part of a random score. The notes are counted while they are written, by
 * the rules of MusicXML 4.0 alone.
 */
final class ExpectedNotes {
  /** Twenty-fourths of a quarter note, the unit of all times here. */
  static final int UNIT = 24;

  /**
   * A note as it must be read.
   *
   * @param voice the voice
   * @param start in units from the start of the part
   * @param length in units with the notes tied to it; 0 for a grace note
   * @param written the MIDI number of the printed note
   * @param sounding the MIDI number of the sounding note
   * @param loose whether a harmonic is near, whose pitch is not predicted here
   */
  record Expected(int voice, int start, int length, int written, int sounding, boolean loose) {}

  /** A part: its number, and its notes. */
  record Part(int number, String name, List<Expected> notes, List<Integer> looseTimes) {}

  private final List<Expected> notes = new ArrayList<>();
  private final List<Integer> looseTimes = new ArrayList<>();

  /** Adds a note, and returns its number. */
  int add(int voice, int time, int length, int written, int transposed) {
    notes.add(new Expected(voice, time, length, written, written + transposed, false));
    return notes.size() - 1;
  }

  /** Makes a note longer by one that is tied to it. */
  void tie(int number, int time, int length) {
    Expected known = notes.get(number);
    notes.set(
        number,
        new Expected(
            known.voice(),
            known.start(),
            time + length - known.start(),
            known.written(),
            known.sounding(),
            known.loose()));
  }

  /** Notes at this time have to do with harmonics. */
  void loose(int time) {
    looseTimes.add(time);
  }

  /** The part with these notes. */
  Part part(int number, String name) {
    return new Part(number, name, loosened(), looseTimes);
  }

  /** The notes; those at the time of a harmonic, or tied over one, are loose. */
  private List<Expected> loosened() {
    List<Expected> all = new ArrayList<>();
    for (Expected note : notes) {
      boolean near =
          looseTimes.stream()
              .anyMatch(
                  time ->
                      time == note.start()
                          || (time > note.start() && time < note.start() + note.length()));
      all.add(
          new Expected(
              note.voice(),
              note.start(),
              note.length(),
              note.written(),
              note.sounding(),
              note.loose() || near));
    }
    all.removeIf(note -> all.stream().anyMatch(other -> unison(other, note)));
    return all;
  }

  /** Whether a note is only the other voice of a longer one, or of one as long that comes first. */
  private static boolean unison(Expected longer, Expected note) {
    return longer.length() > 0
        && note.length() > 0
        && longer.start() == note.start()
        && longer.written() == note.written()
        && longer.voice() != note.voice()
        && (longer.length() > note.length()
            || (longer.length() == note.length() && longer.voice() < note.voice()));
  }
}
