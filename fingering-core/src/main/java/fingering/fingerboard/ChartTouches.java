package fingering.fingerboard;

import static com.google.common.collect.ImmutableList.toImmutableList;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Chart.Touch;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Which fingers of which hands take the notes of a chart, as a teacher would write them down. */
final class ChartTouches {
  private final Fingerboard fingerboard;

  ChartTouches(Fingerboard fingerboard) {
    this.fingerboard = fingerboard;
  }

  ImmutableList<Frame> frames() {
    return fingerboard.frames();
  }

  /** The lowest place where the thumb stops a string in a frame; empty where it lies behind. */
  Optional<Integer> thumb(Frame frame, int last) {
    OpenString string = fingerboard.instrument().string(1);
    return IntStream.rangeClosed(1, last)
        .filter(
            semitones ->
                placements(string, ChartNotes.ALL.name(string, semitones).names())
                    .anyMatch(
                        placement ->
                            placement.finger() == Finger.THUMB
                                && placement.frame().index() == frame.index()))
        .boxed()
        .findFirst();
  }

  private java.util.stream.Stream<Placement> placements(OpenString string, List<Pitch> names) {
    return names.stream()
        .flatMap(name -> fingerboard.placements(name).stream())
        .filter(placement -> placement.string() == string.number() && !placement.open());
  }

  /** The fingers that take a note under one of its names, by frame; those at rest first. */
  ImmutableList<Touch> on(
      OpenString string, int semitones, Pitch name, ImmutableList<Frame> frames) {
    ImmutableList<Placement> all =
        placements(string, ImmutableList.of(name))
            .filter(placement -> frames.contains(placement.frame()))
            .collect(toImmutableList());
    // The key of a touch is what a reader sees: the same finger in a closed and an open hand is
    // one.
    Map<List<Object>, Touch> touches = new LinkedHashMap<>();
    for (Frame frame : frames) {
      for (Placement placement : shown(string, name, frame, all)) {
        Touch touch = touch(string, semitones, name, placement);
        touches.putIfAbsent(
            List.of(frame.position(), frame.first(), touch.finger(), touch.extended()), touch);
      }
    }
    return touches.values().stream()
        .sorted(
            Comparator.<Touch, Double>comparing(touch -> touch.frame().first())
                .thenComparing(Touch::extended))
        .collect(toImmutableList());
  }

  private Touch touch(OpenString string, int semitones, Pitch name, Placement placement) {
    return new Touch(
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
    int own = placement.frame().position().halves() / 2 + placement.finger().number() - 1;
    return switch (placement.finger()) {
      case FIRST -> letters < own;
      case FOURTH -> letters > own;
      default -> false;
    };
  }
}
