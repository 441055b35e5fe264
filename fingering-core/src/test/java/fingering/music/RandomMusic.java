package fingering.music;

import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random events in the notation of {@link Music}, reproducible by seed. */
public final class RandomMusic {
  private static final List<String> LENGTHS = List.of("1", "0.5", "0.25", "1:3", "2", "1.5");
  private static final List<String> TEMPI = List.of("quarter=40", "quarter=96", "half=120");

  private static final List<Letter> LETTERS = List.of(Letter.values());

  private final Random random;

  public RandomMusic(long seed) {
    random = new Random(seed);
  }

  /** A melody between two MIDI numbers, with some slurs and rests. */
  public String line(int notes, int lowest, int highest) {
    return events(notes, lowest, highest, 0);
  }

  /** The same with about one double stop in three events. */
  public String withDoubleStops(int notes, int lowest, int highest) {
    return events(notes, lowest, highest, 3);
  }

  private String events(int notes, int lowest, int highest, int doubleStopInEvery) {
    List<String> events = new ArrayList<>();
    for (int i = 0; i < notes; i++) {
      if (i > 0 && random.nextInt(8) == 0) {
        events.add("r/" + pick(LENGTHS));
      }
      String note = pitch(lowest, highest).toString();
      if (doubleStopInEvery > 0 && random.nextInt(doubleStopInEvery) == 0) {
        note += "+" + pitch(lowest, highest);
      }
      String slur = i > 0 && random.nextInt(3) == 0 ? "~" : "";
      String marks = random.nextInt(9) == 0 ? "!" : random.nextInt(12) == 0 ? "pz" : "";
      events.add(slur + note + "/" + pick(LENGTHS) + marks);
    }
    return String.join(" ", events);
  }

  /** A tempo: slow, common or fast. */
  public String tempo() {
    return pick(TEMPI);
  }

  /** A pitch between two MIDI numbers, sharp, flat or natural. */
  public Pitch pitch(int lowest, int highest) {
    while (true) {
      Letter letter = LETTERS.get(random.nextInt(7));
      Pitch pitch = new Pitch(letter, random.nextInt(3) - 1, 1 + random.nextInt(6));
      if (pitch.midi() >= lowest && pitch.midi() <= highest) {
        return pitch;
      }
    }
  }

  private String pick(List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
