package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Tuning;
import java.util.List;
import java.util.function.ObjDoubleConsumer;
import org.junit.jupiter.api.Test;

/** No placement is out of reach, and no pitch in range is without one. */
class PlacementReachTest {
  private static final List<LeftHand> HANDS =
      List.of(LeftHand.SMALL, LeftHand.MEDIUM, LeftHand.LARGE);

  /** Visits every stopped placement, with the reach of the hand in millimetres. */
  private static void each(
      Instrument instrument, LeftHand hand, ObjDoubleConsumer<Placement> check) {
    Fingerboard fingerboard = Fingerboard.of(instrument, hand);
    int lowest = instrument.lowest().midi();
    for (int midi = lowest; midi <= lowest + 60; midi++) {
      for (Pitch pitch : List.of(Pitches.natural(midi), Pitches.flat(midi))) {
        for (boolean wide : new boolean[] {false, true}) {
          for (Placement placement : fingerboard.placements(PitchRequest.of(pitch), wide)) {
            if (!placement.open()) {
              check.accept(placement, hand.reach(instrument));
            }
          }
        }
      }
    }
  }

  /** Millimetres between two places in semitones: Mersenne's law, equal temperament. */
  private static double between(Instrument instrument, double low, double high) {
    return instrument.stringLength() * (Math.pow(2, -low / 12) - Math.pow(2, -high / 12));
  }

  @Test
  void everyStoppedPlaceIsOnTheFingerboard() {
    for (Instrument instrument : Instruments.standard().all()) {
      each(
          instrument,
          LeftHand.LARGE,
          (placement, reach) -> {
            assertThat(placement.millimetres()).isPositive();
            assertThat(placement.millimetres()).isLessThan(instrument.fingerboardLength());
          });
    }
  }

  // a finger is at most 1¾ semitones from the centre of its letter; letters are 12/7 semitones
  // apart on
  // average
  @Test
  void violinExtensionsAreWithinReach() {
    for (String id : List.of("violin", "viola")) {
      Instrument instrument = Instruments.standard().named(id);
      for (LeftHand hand : HANDS) {
        each(
            instrument,
            hand,
            (placement, reach) -> {
              Frame frame = placement.frame();
              int letters = frame.position().number() + placement.finger().number() - 1;
              double off = placement.semitones() - 12 / 7.0 * letters;
              if (off > 1.75) {
                assertThat(placement.finger()).isEqualTo(Finger.FOURTH);
                assertThat(between(instrument, frame.first(), placement.semitones()))
                    .isLessThanOrEqualTo(reach);
              } else if (off < -1.75) {
                assertThat(placement.finger()).isEqualTo(Finger.FIRST);
                assertThat(between(instrument, placement.semitones(), frame.highest()))
                    .isLessThanOrEqualTo(reach);
              }
            });
      }
    }
  }

  @Test
  void celloFramesAreWithinReach() {
    Instrument cello = Instruments.standard().named("cello");
    for (LeftHand hand : HANDS) {
      for (Frame frame : Fingerboard.of(cello, hand).frames()) {
        double first = frame.first() - (frame.shape() == Frame.Shape.EXTENDED_BACK ? 1 : 0);
        if (frame.thumb().isEmpty()) {
          assertThat(between(cello, first, frame.highest()))
              .as("%s %s", frame.display(), frame.shape())
              .isLessThanOrEqualTo(hand.reach(cello));
        }
      }
    }
  }

  @Test
  void noFingerIsFurtherFromTheThumbThanSixFifthsOfTheReach() {
    for (String id : List.of("cello", "bass")) {
      Instrument instrument = Instruments.standard().named(id);
      for (LeftHand hand : HANDS) {
        each(
            instrument,
            hand,
            (placement, reach) -> {
              if (placement.frame().thumb().isPresent()) {
                int thumb = placement.frame().thumb().getAsInt();
                assertThat(placement.semitones()).isGreaterThanOrEqualTo(thumb);
                assertThat(between(instrument, thumb, placement.semitones()))
                    .isLessThanOrEqualTo(1.2 * reach);
              }
            });
      }
    }
  }

  @Test
  void fourFingerFramesOfTheBassAreWithinReach() {
    Instrument bass = Instruments.standard().named("bass");
    for (LeftHand hand : HANDS) {
      each(
          bass,
          hand.withFourFingers(true),
          (placement, reach) -> {
            if (placement.frame().thumb().isEmpty()) {
              assertThat(between(bass, placement.frame().first(), placement.semitones()))
                  .isLessThanOrEqualTo(reach);
            }
          });
    }
  }

  @Test
  void everyPitchOnTheFingerboardHasAPlacementInEveryTuning() {
    Instruments known = Instruments.standard();
    for (Instrument standard : known.all()) {
      for (Tuning tuning : known.tunings(standard)) {
        Instrument instrument = standard.tuned(tuning);
        int top =
            instrument.strings().stream()
                    .map(OpenString::pitch)
                    .mapToInt(Pitch::midi)
                    .max()
                    .orElse(0)
                + instrument.lastSemitone();
        for (LeftHand hand : HANDS) {
          Fingerboard fingerboard = Fingerboard.of(instrument, hand);
          for (int midi = instrument.lowest().midi(); midi <= top; midi++) {
            for (Pitch pitch : List.of(Pitches.natural(midi), Pitches.flat(midi))) {
              assertThat(fingerboard.placements(pitch))
                  .as("%s of the %s in %s", pitch, instrument.id(), tuning.name())
                  .isNotEmpty();
            }
          }
          assertThat(fingerboard.placements(Pitches.natural(top + 1))).isEmpty();
          assertThat(fingerboard.placements(Pitches.flat(instrument.lowest().midi() - 1)))
              .isEmpty();
        }
      }
    }
  }
}
