package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.music.Harmonic;
import fingering.tables.Instrument;
import fingering.tables.Node;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.Optional;

/** Where harmonics lie: nodes at k/n of the sounding string, not at tempered places. */
final class Harmonics {
  /** A partial further than this from the note's tempered pitch is another note, in semitones. */
  private static final double IN_TUNE = 0.25;

  /** Semitones of the touch that players use where only the sound is printed: a fourth. */
  private static final int TOUCHED_FOURTH = 5;

  private final Instrument instrument;
  private final HandModel hand;

  Harmonics(Instrument instrument, HandModel hand) {
    this.instrument = instrument;
    this.hand = hand;
  }

  /** Every way to touch a harmonic; empty where it lies on no node within reach. */
  ImmutableList<Placement> placements(Pitch sounding, Harmonic harmonic) {
    if (harmonic.kind() == Harmonic.Kind.ARTIFICIAL) {
      int above = harmonic.touched().orElseThrow().midi() - harmonic.stopped().orElseThrow().midi();
      return artificial(harmonic.stopped().get(), above);
    }
    ImmutableList<Placement> natural = natural(sounding, harmonic);
    // A circle over a note that no open string has among its partials: a touched fourth above the
    // note two octaves below is how players make it.
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
    double off = string.pitch().midi() + node.sounds() - sounding.midi();
    return Math.abs(off) < IN_TUNE
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
        double left = instrument.stringLength() - base.millimetres();
        double touched = base.millimetres() + node.get().millimetres(left);
        if (touched - base.millimetres() <= hand.reach(base.finger())) {
          Finger above = base.finger() == Finger.THUMB ? Finger.THIRD : Finger.FOURTH;
          found.add(base.touching(new HarmonicTouch(above, touched, node.get().partial())));
        }
      }
    }
    return found.build();
  }
}
