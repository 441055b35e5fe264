package fingering.engraving.notes;

import fingering.music.KeySignature;
import fingering.music.Measure;
import fingering.music.NoteAddress;
import fingering.music.print.Accidental;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import fingering.tables.Pitch;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The accidentals to draw: those of the file, or, if it has none at all, those that follow from key
 * and measure.
 */
public final class Accidentals {
  private final boolean printed;
  private final Map<NoteAddress, Integer> computed = new HashMap<>();

  /** The accidentals of a part. */
  public Accidentals(PrintedPart part, List<Measure> measures) {
    printed =
        part.measures().stream()
            .flatMap(measure -> measure.notes().stream())
            .anyMatch(note -> note.accidental().isPresent());
    if (!printed) {
      Set<Pitch> tied = new HashSet<>();
      for (int i = 0; i < measures.size(); i++) {
        tied = compute(part.measures().get(i), measures.get(i), tied);
      }
    }
  }

  private Set<Pitch> compute(PrintedMeasure measure, Measure planned, Set<Pitch> tiedOver) {
    Map<Integer, Integer> inForce = new HashMap<>();
    Set<Pitch> tied = new HashSet<>(tiedOver);
    for (PrintedNote note : measure.notes()) {
      if (note.rest()) {
        continue;
      }
      Pitch pitch = note.pitch().orElseThrow();
      boolean continued = tied.remove(pitch);
      int line = pitch.letterNumber();
      int fifths = measure.fifthsAt(note.onset(), planned.fifths());
      int now = inForce.getOrDefault(line, KeySignature.alter(pitch.letter(), fifths));
      if (now != pitch.alter() && !continued) {
        computed.put(note.address(), pitch.alter());
        inForce.put(line, pitch.alter());
      }
      if (note.tied()) {
        tied.add(pitch);
      }
    }
    return tied;
  }

  /** The accidental before a note: semitones from -2 to 2; empty if none is drawn. */
  public OptionalInt shown(PrintedNote note) {
    if (printed) {
      return note.accidental().stream().mapToInt(Accidental::semitones).findFirst();
    }
    Integer alter = computed.get(note.address());
    return alter == null ? OptionalInt.empty() : OptionalInt.of(alter);
  }
}
