package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.KeySignature;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.music.Place;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Notes that are easily misread: an accidental outside the key; a note further on in the measure
 * for which it still holds, though it is not printed there; a new clef (common practice, no
 * source).
 */
final class ReadingCircles {
  /** A line of the staff or a space, which an accidental applies to. */
  private record Line(Letter letter, int octave) {
    static Line of(Pitch pitch) {
      return new Line(pitch.letter(), pitch.octave());
    }
  }

  /** An accidental in force, and the beat on which it is printed. */
  private record InForce(int alter, String beat) {}

  private final List<Circle> found = new ArrayList<>();

  /** The pitches that are tied to the next note on their line. */
  private final Set<Pitch> tied = new HashSet<>();

  private ReadingCircles() {}

  /** Returns the circles, in order of the measures. */
  static ImmutableList<Circle> of(Passage passage, PrintedPart part) {
    ReadingCircles circles = new ReadingCircles();
    Optional<Clef> clef = Optional.empty();
    for (PrintedMeasure measure : part.measures()) {
      Optional<Measure> read = passage.measure(measure.index());
      if (read.isPresent()) {
        clef = Optional.of(circles.clefs(measure, read.get(), clef));
        circles.accidentals(measure, read.get());
      }
    }
    return ImmutableList.copyOf(circles.found);
  }

  /** Adds new clefs, and returns the last one. */
  private Clef clefs(PrintedMeasure measure, Measure read, Optional<Clef> before) {
    if (before.isPresent() && !before.get().equals(measure.clef())) {
      clef(read.place(BigFraction.ZERO), measure.clef());
    }
    Clef last = measure.clef();
    for (PrintedMeasure.ClefChange change : measure.clefs()) {
      if (!change.clef().equals(last)) {
        clef(read.place(change.onset()), change.clef());
      }
      last = change.clef();
    }
    return last;
  }

  private void clef(Place place, Clef clef) {
    found.add(new Circle(Circle.Kind.READING, place, clef.display() + " clef"));
  }

  private void accidentals(PrintedMeasure measure, Measure read) {
    Map<Line, InForce> inForce = new HashMap<>();
    List<PrintedNote> notes =
        measure.notes().stream()
            .filter(note -> !note.cue() && note.pitch().isPresent())
            // Voices follow one another in the file, but the player reads them together.
            .sorted((one, other) -> one.onset().compareTo(other.onset()))
            .toList();
    for (PrintedNote note : notes) {
      Pitch pitch = note.pitch().orElseThrow();
      int key = KeySignature.alter(pitch.letter(), measure.fifthsAt(note.onset(), read.fifths()));
      Place place = read.place(note.onset());
      boolean continued = tied.remove(pitch) && note.accidental().isEmpty();
      if (note.tied()) {
        tied.add(pitch);
      }
      if (continued) {
        continue;
      }
      Optional<InForce> before = Optional.ofNullable(inForce.get(Line.of(pitch)));
      boolean printed = note.accidental().isPresent();
      if (pitch.alter() != key) {
        boolean holds = !printed && before.filter(one -> one.alter() == pitch.alter()).isPresent();
        found.add(
            new Circle(
                Circle.Kind.READING,
                place,
                holds
                    ? "still "
                        + name(pitch)
                        + ": the "
                        + sign(pitch)
                        + " of beat "
                        + before.orElseThrow().beat()
                        + " holds"
                    : name(pitch) + ": not in the key"));
      } else if (before.filter(one -> one.alter() != key).isPresent()) {
        found.add(new Circle(Circle.Kind.READING, place, name(pitch) + " again"));
      }
      if (before.isEmpty() || before.get().alter() != pitch.alter()) {
        inForce.put(Line.of(pitch), new InForce(pitch.alter(), place.beatText()));
      }
    }
  }

  private static String name(Pitch pitch) {
    return pitch.alter() == 0 ? pitch.letter() + " natural" : pitch.letterName();
  }

  private static String sign(Pitch pitch) {
    return pitch.alter() == 0 ? "natural" : pitch.alter() < 0 ? "flat" : "sharp";
  }
}
