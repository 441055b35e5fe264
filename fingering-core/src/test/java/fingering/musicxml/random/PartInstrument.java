package fingering.musicxml.random;

import java.util.List;
import java.util.Random;

/** An instrument of a random score, with random notes that it can play. */
enum PartInstrument {
  VIOLIN("Violin", 55, 91, 0),
  VIOLA("Viola", 48, 84, 0),
  CELLO("Violoncello", 36, 76, 0),
  BASS("Contrabass", 40, 67, -1);

  private static final String[] STEPS = {
    "C", "C1", "D", "E-1", "E", "F", "F1", "G", "A-1", "A", "B-1", "B"
  };
  private final String printed;
  private final int lowest;
  private final int highest;
  private final int octaves;

  /**
   * Creates an instrument.
   *
   * @param lowest the lowest written note as a MIDI number
   * @param highest the highest written note as a MIDI number
   * @param octaves octaves from the written note to the sounding one
   */
  PartInstrument(String printed, int lowest, int highest, int octaves) {
    this.printed = printed;
    this.lowest = lowest;
    this.highest = highest;
    this.octaves = octaves;
  }

  /** Its name in a score. */
  String printed() {
    return printed;
  }

  int octaves() {
    return octaves;
  }

  /** A written note as a MIDI number. */
  int any(Random random) {
    return lowest + 2 + random.nextInt(highest - lowest - 4);
  }

  /** A note or two, as MIDI numbers. */
  List<Integer> chord(Random random) {
    int first = any(random);
    return random.nextInt(6) == 0 && first + 9 < highest
        ? List.of(first, first + 3 + random.nextInt(6))
        : List.of(first);
  }

  /** A note in MusicXML, by its MIDI number. */
  static String pitch(int midi) {
    String step = STEPS[midi % 12];
    String alter = step.length() > 1 ? "<alter>" + step.substring(1) + "</alter>" : "";
    return "<pitch><step>%s</step>%s<octave>%d</octave></pitch>"
        .formatted(step.charAt(0), alter, midi / 12 - 1);
  }
}
