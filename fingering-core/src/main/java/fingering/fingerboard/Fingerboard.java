package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** An instrument under the hand: every placement of a pitch on every string. */
public final class Fingerboard {
  private final Instrument instrument;
  private final HandModel hand;
  private final Harmonics harmonics;

  private Fingerboard(Instrument instrument, HandModel hand) {
    this.instrument = instrument;
    this.hand = hand;
    harmonics = new Harmonics(instrument, hand);
  }

  /** The fingerboard of an instrument under a medium hand of its school. */
  public static Fingerboard of(Instrument instrument) {
    return of(instrument, LeftHand.MEDIUM);
  }

  /** The fingerboard of an instrument under a player's hand. */
  public static Fingerboard of(Instrument instrument, LeftHand hand) {
    return new Fingerboard(
        instrument,
        switch (instrument.kind()) {
          case VIOLIN -> new ViolinHand(instrument, hand);
          case CELLO -> new CelloHand(instrument, hand);
          case BASS -> new BassHand(instrument, hand);
        });
  }

  /** The instrument. */
  public Instrument instrument() {
    return instrument;
  }

  /** The hand frames, from the nut upward, thumb position last. */
  public ImmutableList<Frame> frames() {
    return hand.frames();
  }

  /** The frames that serve single notes, in the same order; the others only serve double stops. */
  public ImmutableList<Frame> lineFrames() {
    return hand.frames().stream().filter(hand::inLine).collect(ImmutableList.toImmutableList());
  }

  /**
   * Every playable placement of a sounding pitch, by string from the highest, then by frame and
   * finger. An open string has one for each frame, since the hand stays where it is. Empty where
   * the pitch lies out of range.
   */
  public ImmutableList<Placement> placements(Pitch sounding) {
    return placements(PitchRequest.of(sounding), false);
  }

  /** The placements of what a note asks for, ordered as above. */
  public ImmutableList<Placement> placements(PitchRequest note) {
    return placements(note, false);
  }

  /** The placements as above, with the wide reaches that only double stops ask for. */
  ImmutableList<Placement> placements(PitchRequest note, boolean wide) {
    if (note.harmonic().isPresent()) {
      ImmutableList<Placement> touched = harmonics.placements(note.pitch(), note.harmonic().get());
      if (!touched.isEmpty()) {
        return touched;
      }
      // What lies on no node can still be stopped, an emergency every player knows.
    }
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (OpenString string : instrument.strings()) {
      open(string, note.pitch(), wide, found);
      found.addAll(hand.stopped(string, note.pitch(), wide));
    }
    ImmutableList<Placement> all = found.build();
    // At the very end of the fingerboard no finger is left above; the plan still has to go on.
    boolean plucked = note.leftPlucked() && all.stream().anyMatch(Fingerboard::plucks);
    return all.stream()
        .filter(placement -> !plucked || plucks(placement))
        .map(
            placement ->
                note.trill().map(upper -> trilled(placement, upper, wide)).orElse(placement))
        .collect(ImmutableList.toImmutableList());
  }

  private void open(
      OpenString string, Pitch pitch, boolean wide, ImmutableList.Builder<Placement> found) {
    if (string.pitch().midi() != pitch.midi() && string.lowest().midi() != pitch.midi()) {
      return;
    }
    int semitones = pitch.midi() - string.pitch().midi();
    for (Frame frame : hand.frames()) {
      if (wide || hand.inLine(frame)) {
        found.add(Placement.open(string.number(), semitones, instrument.stringLength(), frame));
      }
    }
  }

  /** Whether a finger above is left to pluck. */
  private static boolean plucks(Placement placement) {
    return placement.finger() != Finger.FOURTH;
  }

  /**
   * The placement with the finger that beats the upper note from the same frame, if there is one.
   */
  private Placement trilled(Placement placement, Pitch upper, boolean wide) {
    OpenString string = instrument.string(placement.string());
    Optional<Finger> beats =
        hand.stopped(string, upper, wide).stream()
            .filter(above -> above.frame().index() == placement.frame().index())
            .map(Placement::finger)
            .filter(finger -> finger.number() > placement.finger().number())
            .min(Comparator.comparingInt(Finger::number));
    return beats.map(placement::trilling).orElse(placement);
  }

  /**
   * Whether a frame makes sense for these placements: the low thumb only where thumb and finger
   * stop, or one of them touches an artificial harmonic above the other.
   */
  boolean needs(Frame frame, List<Placement> together) {
    return hand.inLine(frame)
        || (together.stream().anyMatch(p -> p.finger() == Finger.THUMB)
            && together.stream().anyMatch(p -> p.finger().number() > 0 || p.touch().isPresent()));
  }

  /** Whether two placements can be held at once: different strings, one frame, within reach. */
  boolean together(Placement a, Placement b) {
    if (a.string() == b.string() || a.frame().index() != b.frame().index()) {
      return false;
    }
    return a.open() || b.open() || hand.together(a, b);
  }
}
