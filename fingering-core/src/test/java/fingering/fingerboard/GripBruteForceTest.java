package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Moment;
import fingering.music.Music;
import fingering.tables.Instruments;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compares the grips found with all combinations that a hand can hold. */
class GripBruteForceTest {
  private static final List<LeftHand> HANDS =
      List.of(
          LeftHand.SMALL,
          LeftHand.MEDIUM,
          LeftHand.LARGE,
          LeftHand.MEDIUM.withLowThumb(true).withFourFingers(true));

  private static final Map<String, Fingerboard> FINGERBOARDS = new HashMap<>();

  private static Fingerboard fingerboard(String id, int hand) {
    return FINGERBOARDS.computeIfAbsent(
        id + hand, key -> Fingerboard.of(Instruments.standard().named(id), HANDS.get(hand)));
  }

  /** Compares the grips found with exhaustive search, and returns their number. */
  private static int assertSameGrips(String id, int hand, String event) {
    Fingerboard fingerboard = fingerboard(id, hand);
    Moment moment = Music.on(id).notes(event).moments().get(0);
    List<List<Placement>> found = new ArrayList<>();
    for (Grip grip : new GripFinder(fingerboard).grips(moment)) {
      if (!grip.divided()) {
        found.add(grip.placements());
        assertThat(grip.frame()).as(event).isEqualTo(grip.top().frame());
      }
    }
    List<List<Placement>> expected =
        new PhysicalHand(fingerboard, HANDS.get(hand))
            .holds(moment.starting().stream().map(PitchRequest::of).toList(), moment.pizzicato());
    assertThat(new HashSet<>(found)).as(event).isEqualTo(new HashSet<>(expected));
    assertThat(found).as(event).hasSameSizeAs(expected);
    return found.size();
  }

  @ParameterizedTest
  @CsvSource({"violin, 0", "violin, 2", "viola, 1", "cello, 0", "cello, 3", "bass, 1", "bass, 3"})
  void allGripsOfEveryDoubleStopAreFound(String id, int hand) {
    int lowest = fingerboard(id, hand).instrument().lowest().midi();
    int grips = 0;
    for (int low = lowest; low < lowest + 27; low++) {
      for (int high = low; high <= low + 17; high++) {
        String notes = Pitches.flat(low) + "+" + Pitches.natural(high);
        grips += assertSameGrips(id, hand, notes + "/1");
      }
    }
    assertThat(grips).isGreaterThan(1000);
  }

  private static String chord(Random random, int lowest, int notes) {
    List<String> each = new ArrayList<>();
    int midi = lowest + random.nextInt(14);
    for (int i = 0; i < notes; i++) {
      each.add((random.nextBoolean() ? Pitches.flat(midi) : Pitches.natural(midi)).toString());
      midi += 3 + random.nextInt(7);
    }
    return String.join("+", each);
  }

  @Property(tries = 150)
  void allGripsOfRandomChordsAreFound(
      @ForAll long seed,
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 0, max = 3) int hand,
      @ForAll @IntRange(min = 3, max = 4) int notes,
      @ForAll boolean plucked) {
    String id = List.of("violin", "viola", "cello", "bass").get(which);
    int lowest = fingerboard(id, hand).instrument().lowest().midi();
    String chord = chord(new Random(seed), lowest, notes);
    assertSameGrips(id, hand, chord + (plucked ? "/1pz" : "/1"));
  }
}
