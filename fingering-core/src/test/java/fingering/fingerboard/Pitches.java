package fingering.fingerboard;

import com.google.common.base.Splitter;
import fingering.tables.Pitch;

/** Pitches by MIDI number. */
final class Pitches {
  private static final Splitter BLANK = Splitter.on(' ');

  private Pitches() {}

  /** The pitch of a MIDI number, natural or sharp. */
  static Pitch natural(int midi) {
    String name = BLANK.splitToList("C C# D D# E F F# G G# A A# B").get(midi % 12);
    return Pitch.parse(name + (midi / 12 - 1));
  }

  /** The pitch of a MIDI number, natural or flat. */
  static Pitch flat(int midi) {
    String name = BLANK.splitToList("C Db D Eb E F Gb G Ab A Bb B").get(midi % 12);
    return Pitch.parse(name + (midi / 12 - 1));
  }
}
