package fingering.page.staff;

import fingering.music.KeySignature;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedNote;
import fingering.music.PrintedPart;
import fingering.tables.Pitch;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Which accidentals are drawn: those of the file, or, where it has none at all, those that key and
 * measure ask for.
 */
final class DrawnAccidentals {
  private final boolean printed;
  private final Map<NoteAddress, Integer> reckoned = new HashMap<>();

  DrawnAccidentals(PrintedPart part, List<Measure> measures) {
    printed =
        part.measures().stream()
            .flatMap(measure -> measure.notes().stream())
            .anyMatch(note -> note.accidental().isPresent());
    if (!printed) {
      Set<Pitch> tied = new HashSet<>();
      for (int i = 0; i < measures.size(); i++) {
        tied = reckon(part.measures().get(i), measures.get(i), tied);
      }
    }
  }

  private Set<Pitch> reckon(PrintedMeasure measure, Measure read, Set<Pitch> tiedOver) {
    Map<Integer, Integer> inForce = new HashMap<>();
    Set<Pitch> tied = new HashSet<>(tiedOver);
    for (PrintedNote note : measure.notes()) {
      if (note.rest()) {
        continue;
      }
      Pitch pitch = note.pitch().orElseThrow();
      boolean continued = tied.remove(pitch);
      int line = pitch.letterNumber();
      int fifths = measure.fifthsAt(note.onset(), read.fifths());
      int now = inForce.getOrDefault(line, KeySignature.alter(pitch.letter(), fifths));
      if (now != pitch.alter() && !continued) {
        reckoned.put(note.address(), pitch.alter());
        inForce.put(line, pitch.alter());
      }
      if (note.tied()) {
        tied.add(pitch);
      }
    }
    return tied;
  }

  /** The accidental drawn before a note: semitones, -2 to 2; empty where none is. */
  OptionalInt shown(PrintedNote note) {
    if (printed) {
      return note.accidental();
    }
    Integer alter = reckoned.get(note.address());
    return alter == null ? OptionalInt.empty() : OptionalInt.of(alter);
  }
}
