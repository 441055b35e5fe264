package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The fingerboard of an instrument for a certain hand: finds the placements of a pitch. */
public final class Fingerboard {
  private final Instrument instrument;
  private final HandModel hand;
  private final Harmonics harmonics;

  private Fingerboard(Instrument instrument, HandModel hand) {
    this.instrument = instrument;
    this.hand = hand;
    harmonics = new Harmonics(instrument, hand);
  }

  /** The fingerboard of an instrument for a medium-sized hand. */
  public static Fingerboard of(Instrument instrument) {
    return of(instrument, LeftHand.MEDIUM);
  }

  /** The fingerboard of an instrument for a certain hand. */
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

  /** All hand frames from the nut up, thumb position last. */
  public ImmutableList<Frame> frames() {
    return hand.frames();
  }

  /** The frames for single notes, in the same order; the others are for double stops only. */
  public ImmutableList<Frame> singleNoteFrames() {
    return hand.frames().stream()
        .filter(hand::forSingleNotes)
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * All placements of a sounding pitch, by string from the highest, then by frame and finger. An
   * open string has one placement for each frame, because the hand can be anywhere. Empty if the
   * pitch is out of range.
   */
  public ImmutableList<Placement> placements(Pitch sounding) {
    return placements(PitchRequest.of(sounding), false);
  }

  /** All placements of a note, in the same order. */
  public ImmutableList<Placement> placements(PitchRequest note) {
    return placements(note, false);
  }

  /** The same, with the wide stretches of double stops if {@code wide} is set. */
  ImmutableList<Placement> placements(PitchRequest note, boolean wide) {
    if (note.harmonic().isPresent()) {
      ImmutableList<Placement> touching = harmonics.placements(note.pitch(), note.harmonic().get());
      if (!touching.isEmpty()) {
        return touching;
      }
      // If no node gives the pitch, stop it instead, as players do if a harmonic is impossible.
    }
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (OpenString string : instrument.strings()) {
      open(string, note.pitch(), wide, found);
      found.addAll(hand.stopped(string, note.pitch(), wide));
    }
    ImmutableList<Placement> all = found.build();
    // At the end of the fingerboard the fourth finger may be the only one, with none left to pluck.
    // Keep its placements then: a plan without the plucking finger is better than none.
    boolean plucking = note.leftPlucked() && all.stream().anyMatch(Fingerboard::canPluck);
    return all.stream()
        .filter(placement -> !plucking || canPluck(placement))
        .map(
            placement ->
                note.trill()
                    .map(upper -> withTrillFinger(placement, upper, wide))
                    .orElse(placement))
        .collect(ImmutableList.toImmutableList());
  }

  private void open(
      OpenString string, Pitch pitch, boolean wide, ImmutableList.Builder<Placement> found) {
    if (string.pitch().midi() != pitch.midi() && string.lowest().midi() != pitch.midi()) {
      return;
    }
    int semitones = pitch.midi() - string.pitch().midi();
    for (Frame frame : hand.frames()) {
      if (wide || hand.forSingleNotes(frame)) {
        found.add(Placement.open(string.number(), semitones, instrument.stringLength(), frame));
      }
    }
  }

  /** Whether a higher finger is free to pluck the string. */
  private static boolean canPluck(Placement placement) {
    return placement.finger() != Finger.FOURTH;
  }

  /** The placement with the finger that trills from the same frame, if there is one. */
  private Placement withTrillFinger(Placement placement, Pitch upper, boolean wide) {
    OpenString string = instrument.string(placement.string());
    Optional<Finger> trills =
        hand.stopped(string, upper, wide).stream()
            .filter(above -> above.frame().index() == placement.frame().index())
            .map(Placement::finger)
            .filter(finger -> finger.number() > placement.finger().number())
            .min(Comparator.comparingInt(Finger::number));
    return trills.map(placement::trilling).orElse(placement);
  }

  /**
   * Whether fingers that stop several strings lie across all strings between, and no note there is
   * lower: a bar stops every string below it.
   */
  static boolean barsReach(List<Placement> together) {
    for (Placement one : together) {
      for (Placement other : together) {
        if (one.string() < other.string()
            && one.finger() == other.finger()
            && !one.open()
            && !barReaches(one, other, together)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean barReaches(Placement upper, Placement lower, List<Placement> together) {
    long under =
        together.stream()
            .filter(p -> p.string() > upper.string() && p.string() < lower.string())
            .filter(p -> p.semitones() >= upper.semitones())
            .count();
    return under == lower.string() - upper.string() - 1;
  }

  /**
   * Whether these placements may use a frame. The thumb below its range for single notes is allowed
   * only together with a finger on another string, or for an artificial harmonic.
   */
  boolean allows(Frame frame, List<Placement> together) {
    return hand.forSingleNotes(frame)
        || (together.stream().anyMatch(p -> p.finger() == Finger.THUMB)
            && together.stream().anyMatch(p -> p.finger().number() > 0 || p.touch().isPresent()));
  }

  /**
   * Whether two placements can be held together: on different strings, in one frame, within reach.
   */
  boolean canHoldTogether(Placement a, Placement b) {
    if (a.string() == b.string() || a.frame().index() != b.frame().index()) {
      return false;
    }
    return a.open() || b.open() || hand.canHoldTogether(a, b);
  }
}
