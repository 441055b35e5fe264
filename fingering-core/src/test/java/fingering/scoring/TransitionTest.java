package fingering.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.primitives.ImmutableIntArray;
import fingering.music.Moment;
import fingering.music.Music;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The time there is to move: common practice, no source. */
class TransitionTest {
  /** The passing to the last of some notes, at a quarter a second. */
  private static Transition to(String events) {
    List<Moment> moments = Music.viola().tempo("quarter=60").notes(events).moments();
    return Transition.between(moments.get(moments.size() - 2), moments.get(moments.size() - 1));
  }

  @Test
  void aDetachedNoteLeavesTheHandItsLastQuarterAndASlurredOneItsLastTenth() {
    assertThat(to("C4/0.25 D4/1").freeMicros()).isEqualTo(62_500);
    assertThat(to("C4/0.25 ~D4/1").freeMicros()).isEqualTo(25_000);
  }

  @Test
  void aRestIsTheHandsBesides() {
    assertThat(to("C4/0.25 r/0.25 D4/1").freeMicros()).isEqualTo(312_500);
  }

  @Test
  void fromAnOpenStringTheHandHasAllTheTimeFromNoteToNote() {
    Transition transition = to("E4/1 G3/0.25 D4/1");
    assertThat(transition.micros(true)).isEqualTo(250_000);
    assertThat(transition.micros(false)).isEqualTo(62_500);
  }

  // A triplet eighth is 333 333 microseconds, and a quarter of it 83 333: arithmetic.
  @Test
  void timesAreToldToTheHalfMillisecondInFavourOfTheHand() {
    Transition triplet = to("E4/1 C4/1:3 D4/1");
    assertThat(triplet.sinceMicros()).isEqualTo(333_500);
    assertThat(triplet.freeMicros()).isEqualTo(83_500);
  }

  @Test
  void aFifthOfASecondIsNoLongerQuick() {
    assertThat(to("C4/0.2 D4/1").quick()).isFalse();
    assertThat(to("C4/0.19 D4/1").quick()).isTrue();
  }

  private static boolean bit(int bits, int which) {
    return (bits >> which & 1) == 1;
  }

  @Test
  void passingsThatDifferInMoreThanTimeHaveCodesOfTheirOwn() {
    Set<Integer> codes = new HashSet<>();
    for (int rises = -Transition.LEAP; rises <= Transition.LEAP; rises++) {
      for (int bits = 0; bits < 256; bits++) {
        Transition transition =
            new Transition(
                bits,
                bits,
                bit(bits, 0),
                bit(bits, 1),
                bit(bits, 2),
                bit(bits, 3),
                bit(bits, 4),
                bit(bits, 5),
                bit(bits, 6),
                bit(bits, 7),
                rises,
                HeldNotes.NONE,
                bits);
        assertThat(codes.add(transition.code())).as(transition.toString()).isTrue();
        assertThat(transition.atLeisure().code()).isEqualTo(transition.code());
      }
    }
  }

  @Test
  void strokesThatDifferInMoreThanPaceHaveCodesOfTheirOwn() {
    Set<Long> codes = new HashSet<>();
    for (long hundredths = 0; hundredths <= NoteContext.LONG_ENOUGH; hundredths += 10) {
      for (int sounding = 1; sounding <= 8; sounding++) {
        for (int bits = 0; bits < 16; bits++) {
          NoteContext context =
              new NoteContext(
                  bit(bits, 0),
                  bit(bits, 1),
                  bit(bits, 2),
                  bit(bits, 3),
                  hundredths,
                  ImmutableIntArray.of(),
                  ImmutableIntArray.of(),
                  sounding,
                  bits);
          assertThat(codes.add(context.code())).as(context.toString()).isTrue();
          assertThat(context.unsung().code()).isEqualTo(context.code());
          assertThat(context.unsung().slowness()).isZero();
        }
      }
    }
  }
}
