package fingering.fingerboard;

import static com.google.common.collect.ImmutableList.toImmutableList;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Chart.Fingering;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which fingers of which hands take the notes of a chart, as a teacher would write them down. */
final class ChartFingerings {
  private final Fingerboard fingerboard;

  ChartFingerings(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  /** The hands that take single notes. */
  ImmutableList<Frame> frames() {
    return fingerboard.lineFrames();
  }

  private java.util.stream.Stream<Placement> placements(OpenString string, List<Pitch> names) {
    return names.stream()
        .flatMap(name -> fingerboard.placements(name).stream())
        .filter(placement -> placement.string() == string.number() && !placement.open());
  }

  /** The fingers that take a note under one of its names, by frame; those at rest first. */
  ImmutableList<Fingering> on(
      OpenString string, int semitones, Pitch name, ImmutableList<Frame> frames) {
    ImmutableList<Placement> all =
        placements(string, ImmutableList.of(name))
            .filter(placement -> frames.contains(placement.frame()))
            .collect(toImmutableList());
    // The key of a fingering is what a reader sees: the same finger in a closed and an open hand is
    // one.
    Map<List<Object>, Fingering> fingerings = new LinkedHashMap<>();
    for (Frame frame : frames) {
      for (Placement placement : shown(string, name, frame, all)) {
        Fingering fingering = fingering(string, semitones, name, placement);
        fingerings.putIfAbsent(
            List.of(frame.position(), frame.first(), fingering.finger(), fingering.extended()),
            fingering);
      }
    }
    return fingerings.values().stream()
        .sorted(
            Comparator.<Fingering, Double>comparing(fingering -> fingering.frame().first())
                .thenComparing(Fingering::extended))
        .collect(toImmutableList());
  }

  private Fingering fingering(OpenString string, int semitones, Pitch name, Placement placement) {
    return new Fingering(
        name, placement.finger(), placement.frame(), extended(string, semitones, name, placement));
  }

  /** Low and high belong to the hand at rest; reaching half a semitone further does not. */
  private boolean extended(OpenString string, int semitones, Pitch name, Placement placement) {
    if (outward(string, name, placement)) {
      return placement.stretch() > 0;
    }
    boolean letters = placement.frame().shape() == Frame.Shape.LETTERS;
    if (letters && placement.finger() != Finger.FOURTH) {
      return false;
    }
    if (placement.frame().shape() == Frame.Shape.EXTENDED_FORWARD
        && placement.finger() == Finger.SECOND) {
      return true; // it falls by itself there, but not where the closed hand has it
    }
    double semitone =
        Geometry.span(fingerboard.instrument().stringLength(), semitones - 1, semitones);
    return placement.stretch() > semitone / 2;
  }

  /** Of the placements in a frame those worth showing: where letters count, the letter's finger. */
  private static ImmutableList<Placement> shown(
      OpenString string, Pitch name, Frame frame, ImmutableList<Placement> all) {
    ImmutableList<Placement> here =
        all.stream()
            .filter(placement -> placement.frame().index() == frame.index())
            .collect(toImmutableList());
    if (frame.shape() == Frame.Shape.THUMB) {
      return ImmutableList.sortedCopyOf(
          Comparator.comparing(placement -> placement.finger().number()), here);
    }
    if (frame.shape() != Frame.Shape.LETTERS) {
      // Where two fingers share a place, the lower one is the stand-in: 3 for 4 on the bass.
      return ImmutableList.sortedCopyOf(Comparator.comparing(Placement::finger).reversed(), here);
    }
    return here.stream()
        .filter(placement -> !placement.respelled() || outward(string, name, placement))
        .min(
            Comparator.comparing(Placement::respelled)
                .thenComparing(Placement::stretch)
                .thenComparing(Placement::finger))
        .map(ImmutableList::of)
        .orElse(ImmutableList.of());
  }

  /** Whether a first or fourth finger reaches for the letter beyond its own. */
  private static boolean outward(OpenString string, Pitch name, Placement placement) {
    if (placement.frame().shape() != Frame.Shape.LETTERS || !placement.respelled()) {
      return false;
    }
    int letters = name.letterNumber() - string.pitch().letterNumber();
    int own = placement.frame().position().number() + placement.finger().number() - 1;
    return switch (placement.finger()) {
      case FIRST -> letters < own;
      case FOURTH -> letters > own;
      default -> false;
    };
  }
}
