package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;

/** An instrument under the hand: every placement of a pitch on every string. */
public final class Fingerboard {
  private final Instrument instrument;
  private final Hand hand;

  private Fingerboard(Instrument instrument, Hand hand) {
    this.instrument = instrument;
    this.hand = hand;
  }

  /** The fingerboard of an instrument under a medium hand of its school. */
  public static Fingerboard of(Instrument instrument) {
    return new Fingerboard(
        instrument,
        switch (instrument.kind()) {
          case VIOLIN -> new ViolinHand(instrument);
          case CELLO -> new CelloHand(instrument);
          case BASS -> new BassHand(instrument);
        });
  }

  /** The instrument. */
  public Instrument instrument() {
    return instrument;
  }

  /** The hand frames, from the nut upward. */
  public ImmutableList<Frame> frames() {
    return hand.frames();
  }

  /**
   * Every playable placement of a sounding pitch, by string from the highest, then by frame and
   * finger. An open string has one for each frame, since the hand stays where it is. Empty where
   * the pitch lies out of range.
   */
  public ImmutableList<Placement> placements(Pitch sounding) {
    return placements(sounding, false);
  }

  /** The placements as above, with the wide reaches that only double stops ask for. */
  ImmutableList<Placement> placements(Pitch sounding, boolean wide) {
    ImmutableList.Builder<Placement> found = ImmutableList.builder();
    for (OpenString string : instrument.strings()) {
      if (string.pitch().midi() == sounding.midi()) {
        for (Frame frame : hand.frames()) {
          found.add(new Placement(string.number(), Finger.OPEN, 0, frame, 0, 0, false));
        }
      }
      found.addAll(hand.stopped(string, sounding, wide));
    }
    return found.build();
  }

  /** Whether two placements can be held at once: different strings, one frame, within reach. */
  boolean together(Placement a, Placement b) {
    if (a.string() == b.string() || a.frame().index() != b.frame().index()) {
      return false;
    }
    return a.open() || b.open() || hand.together(a, b);
  }
}
