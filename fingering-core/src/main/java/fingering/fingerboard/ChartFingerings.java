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
import java.util.stream.Stream;

/** The fingers for the notes of a chart, as a teacher would write them. */
final class ChartFingerings {
  private final Fingerboard fingerboard;

  ChartFingerings(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  /** The frames for single notes. */
  ImmutableList<Frame> frames() {
    return fingerboard.singleNoteFrames();
  }

  private Stream<Placement> placements(OpenString string, List<Pitch> names) {
    return names.stream()
        .flatMap(name -> fingerboard.placements(name).stream())
        .filter(placement -> placement.string() == string.number() && !placement.open());
  }

  /** The fingers for a note in one spelling, by frame; those without extension first. */
  ImmutableList<Fingering> on(
      OpenString string, int semitones, Pitch name, ImmutableList<Frame> frames) {
    ImmutableList<Placement> all =
        placements(string, ImmutableList.of(name))
            .filter(placement -> frames.contains(placement.frame()))
            .collect(toImmutableList());
    // Readers see no difference between the same finger in a closed and an extended hand: the key
    // leaves out the shape.
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

  /** Low and high fingers are not extensions; reaching half a semitone further is one. */
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
      return true; // it moves with the hand, so its stretch is 0, but it is away from its usual
      // place
    }
    double semitone =
        Geometry.span(fingerboard.instrument().stringLength(), semitones - 1, semitones);
    return placement.stretch() > semitone / 2;
  }

  /**
   * The placements in a frame to show: on violin and viola only that of the finger for the letter.
   */
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
      // If two fingers can stop a place, the lower one is the substitute: 3 for 4 on the bass.
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

  /** Whether a first or fourth finger reaches outward for a letter that is not its own. */
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
