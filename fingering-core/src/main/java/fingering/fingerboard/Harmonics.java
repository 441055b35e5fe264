package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.music.Harmonic;
import fingering.tables.Instrument;
import fingering.tables.Node;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.Optional;

/** Finds the placements of harmonics, at nodes k/n of the sounding string. */
final class Harmonics {
  /** Largest difference between a partial and the tempered pitch of its note, in semitones. */
  private static final double IN_TUNE = 0.25;

  /** Interval of the touched note if only the sounding pitch is printed: a fourth, in semitones. */
  private static final int TOUCHED_FOURTH = 5;

  private final Instrument instrument;
  private final HandModel hand;

  Harmonics(Instrument instrument, HandModel hand) {
    this.instrument = instrument;
    this.hand = hand;
  }

  /** All placements of a harmonic; empty if no suitable node is within reach. */
  ImmutableList<Placement> placements(Pitch sounding, Harmonic harmonic) {
    if (harmonic.kind() == Harmonic.Kind.ARTIFICIAL) {
      int above = harmonic.touched().orElseThrow().midi() - harmonic.stopped().orElseThrow().midi();
      return artificial(harmonic.stopped().get(), above);
    }
    ImmutableList<Placement> natural = natural(sounding, harmonic);
    // A circle above a note that is not a partial of an open string: players stop the note two
    // octaves below and touch the fourth above it.
    return natural.isEmpty()
            && harmonic.touched().isEmpty()
            && sounding.midi() - 2 * Pitch.OCTAVE > instrument.lowest().midi()
        ? artificial(sounding.plusOctaves(-2), TOUCHED_FOURTH)
        : natural;
  }

  private ImmutableList<Placement> natural(Pitch sounding, Harmonic harmonic) {
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (OpenString string : instrument.strings()) {
      if (harmonic.stopped().map(open -> open.midi() != string.pitch().midi()).orElse(false)) {
        continue;
      }
      for (Node node : Node.all()) {
        if (fits(node, string, sounding, harmonic.touched())) {
          natural(string, node, found);
        }
      }
    }
    return ImmutableList.sortedCopyOf(
        Comparator.comparingInt(Placement::string)
            .thenComparingInt(placement -> placement.frame().index())
            .thenComparing(Placement::finger),
        found.build());
  }

  private static boolean fits(
      Node node, OpenString string, Pitch sounding, Optional<Pitch> touched) {
    double difference = string.pitch().midi() + node.sounds() - sounding.midi();
    return Math.abs(difference) < IN_TUNE
        && touched.map(t -> near(t.midi() - string.pitch().midi(), node)).orElse(true);
  }

  private static boolean near(int semitones, Node node) {
    return semitones == Math.round(node.place());
  }

  private void natural(OpenString string, Node node, ImmutableList.Builder<Placement> found) {
    double millimetres = node.millimetres(instrument.stringLength());
    for (Placement place : hand.touching(string, node.place())) {
      found.add(place.touching(new HarmonicTouch(place.finger(), millimetres, node.partial())));
    }
  }

  private ImmutableList<Placement> artificial(Pitch stopped, int touchedAbove) {
    Optional<Node> node =
        Node.all().stream().filter(n -> n.numerator() == 1 && near(touchedAbove, n)).findFirst();
    if (node.isEmpty()) {
      return ImmutableList.of();
    }
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (OpenString string : instrument.strings()) {
      for (Placement base : hand.stopped(string, stopped, true)) {
        double remaining = instrument.stringLength() - base.millimetres();
        double touched = base.millimetres() + node.get().millimetres(remaining);
        if (touched - base.millimetres() <= hand.reach(base.finger())) {
          Finger above = base.finger() == Finger.THUMB ? Finger.THIRD : Finger.FOURTH;
          found.add(base.touching(new HarmonicTouch(above, touched, node.get().partial())));
        }
      }
    }
    return found.build();
  }
}
