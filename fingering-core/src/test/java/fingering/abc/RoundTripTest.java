package fingering.abc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import fingering.abc.syntax.AbcException;
import fingering.music.Passage;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;

/** Random lines, written as ABC by a separate writer and read back. */
class RoundTripTest {
  private static final List<Letter> LETTERS = List.of(Letter.values());
  private static final String[] SIGNS = {"__", "_", "=", "^", "^^"};

  /** The expected sound: pitch, start and length in quarter notes. */
  private record Heard(String pitch, String start, String length) {}

  private record Line(String abc, List<Heard> heard) {}

  /** Writes a line in eighths; tracks accidentals by letter, as ABC does. */
  private static Line line(Random random) {
    StringBuilder abc = new StringBuilder("X:1\nM:none\nL:1/8\nK:C\n");
    List<Heard> heard = new ArrayList<>();
    BigFraction now = BigFraction.ZERO;
    int measures = 1 + random.nextInt(5);
    for (int m = 0; m < measures; m++) {
      Map<Letter, Integer> altered = new EnumMap<>(Letter.class);
      int notes = 1 + random.nextInt(8);
      for (int i = 0; i < notes; i++) {
        BigFraction length = BigFraction.of(1 + random.nextInt(12), 1 << random.nextInt(4));
        String times = length.getNumerator() + "/" + length.getDenominator();
        BigFraction quarters = length.divide(2);
        if (random.nextInt(6) == 0) {
          abc.append('z').append(times).append(' ');
        } else {
          heard.add(
              new Heard(
                  note(random, altered, abc).toString(), now.toString(), quarters.toString()));
          abc.append(times).append(random.nextBoolean() ? " " : "");
        }
        now = now.add(quarters);
      }
      abc.append(random.nextInt(4) == 0 ? "||" : "|").append(random.nextBoolean() ? "\n" : "");
    }
    // A line of rests only would be refused.
    heard.add(new Heard("C4", now.toString(), "1 / 2"));
    return new Line(abc + "=C|]", heard);
  }

  private static Pitch note(Random random, Map<Letter, Integer> altered, StringBuilder abc) {
    Letter letter = LETTERS.get(random.nextInt(LETTERS.size()));
    if (random.nextInt(3) == 0) {
      int sign = random.nextInt(SIGNS.length);
      altered.put(letter, sign - 2);
      abc.append(SIGNS[sign]);
    }
    int octave = 2 + random.nextInt(5);
    abc.append(octave > 4 ? letter.name().toLowerCase(java.util.Locale.ROOT) : letter.name());
    abc.append(octave > 5 ? "'".repeat(octave - 5) : octave < 4 ? ",".repeat(4 - octave) : "");
    return new Pitch(letter, altered.getOrDefault(letter, 0), octave);
  }

  @Property(tries = 300)
  void aLineReadBackHasTheSamePitchesAndTimes(@ForAll long seed) {
    Line line = line(new Random(seed));

    Passage passage = Typed.passage(line.abc());

    assertThat(passage.notes())
        .as(line.abc())
        .extracting(
            note ->
                new Heard(
                    note.written().toString(), note.start().toString(), note.length().toString()))
        .isEqualTo(line.heard());
  }

  @Property(tries = 300)
  void aDamagedTuneIsReadOrRefusedWithLineAndColumn(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int damages) {
    Random random = new Random(seed);
    StringBuilder abc = new StringBuilder(line(random).abc());
    abc.append("\n(3:2:3{g}!1![DA]>B!trill!c-c (de)|:f4:|[1 Z|\"^pizz.\"[K:D]g\n");
    for (int i = 0; i < damages; i++) {
      int at = random.nextInt(abc.length());
      if (random.nextBoolean()) {
        abc.deleteCharAt(at);
      } else {
        abc.insert(at, "|:[](){}<>-!\"^_=/.,'0129zZxyKTHhu~$&+\\%\n".charAt(random.nextInt(40)));
      }
    }
    assertThatCode(
            () -> {
              try {
                assertThat(Typed.written(abc.toString()).musicXml()).endsWith("-partwise>\n");
              } catch (AbcException e) {
                assertThat(e)
                    .hasMessageMatching("study(, line \\d+, column \\d+: | holds )\\S.*\\S");
              }
            })
        .as(abc.toString())
        .doesNotThrowAnyException();
  }
}
