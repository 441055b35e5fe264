package fingering.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The usual fingerings of major scales in scale books are among the five best plans, in separate
 * bows and eighths at quarter = 80. Each row has the source; the tonic, the octaves and the
 * direction; the positions or the string that the book asks for, or {@code free}; and the fingers
 * on each string, in the order played. A slash separates two usual fingerings.
 */
class ScaleFingeringsTest {
  private static final int BEST = 5;
  private static final ImmutableList<Integer> MAJOR = ImmutableList.of(2, 2, 1, 2, 2, 2, 1);
  private static final Splitter SLASH = Splitter.on('/').trimResults();
  private static final Splitter COMMA = Splitter.on(',').trimResults();

  @ParameterizedTest(name = "{1}, octaves: {2}, {3}, {4} ({0})")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          J. Hřímalý, Scale Studies, from memory    | G3  | 2 | up   | free  | G 0123 D 0123 A 0123 E 012
          J. Hřímalý, Scale Studies, from memory    | A3  | 2 | up   | free  | G 123 D 0123 A 0123 E 0123
          common practice, no source                | G3  | 2 | down | free  | E 210 A 3210 D 3210 G 3210 / E 21 A 4321 D 4321 G 43210
          common practice, no source                | A3  | 2 | down | free  | E 3210 A 3210 D 3210 G 321 / E 321 A 4321 D 4321 G 4321
          common practice, no source                | Ab3 | 2 | up   | free  | G 1234 D 1234 A 1234 E 123
          common practice, open or fourth finger    | Bb3 | 2 | up   | free  | G 23 D 0123 A 01234 E 1234 / G 234 D 1234 A 1234 E 1234
          common practice, open or fourth finger    | Bb3 | 2 | down | free  | E 4321 A 43210 D 3210 G 32 / E 4321 A 4321 D 4321 G 432
          common practice, the fourth finger to C   | C4  | 2 | up   | free  | G 3 D 0123 A 0123 E 012344
          common practice, shift to 3rd on the E    | D4  | 2 | up   | free  | D 0123 A 0123 E 0121234
          common practice, shift to 1st on the E    | D4  | 2 | down | free  | E 4321210 A 3210 D 3210
          common practice, shift to 3rd on the E    | Eb4 | 2 | up   | free  | D 1234 A 1234 E 1212344
          common practice, shift to 4th on the E    | E4  | 2 | up   | free  | D 123 A 0123 E 01231234
          common practice, a finger to each letter  | B3  | 2 | up   | 2     | G 1234 D 1234 A 1234 E 123
          common practice, a finger to each letter  | C4  | 2 | up   | 2     | G 234 D 1234 A 1234 E 1234
          H. Whistler, Introducing the Positions, from memory | C4  | 2 | up   | 3 | G 1234 D 1234 A 1234 E 123
          H. Whistler, Introducing the Positions, from memory | D4  | 2 | up   | 3 | G 234 D 1234 A 1234 E 1234
          common practice, a finger to each letter  | D4  | 2 | down | 3     | E 4321 A 4321 D 4321 G 432
          common practice, a finger to each letter  | Eb4 | 2 | up   | 3     | G 34 D 1234 A 1234 E 12344
          common practice, one string in two places | G3  | 1 | up   | sul G | G 01231234
          common practice, one string by twos       | A3  | 1 | up   | sul G | G 12121234
          common practice, one string in two places | D4  | 1 | up   | sul D | D 01231234
          common practice, one string in two places | E5  | 1 | up   | sul E | E 01231234
          common practice, all shifts on the E      | G3  | 3 | up   | free  | G 0123 D 0123 A 0123 E 0121231234
          common practice, all shifts on the E      | A3  | 3 | up   | free  | G 123 D 0123 A 0123 E 01231231234
          """)
  void scalesOfTheViolin(
      String source, String tonic, int octaves, String direction, String where, String fingering) {
    check("violin", tonic, octaves, direction, where, fingering);
  }

  @ParameterizedTest(name = "{1}, octaves: {2}, {3}, {4} ({0})")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          common practice, no source                | C3  | 2 | up   | free  | C 0123 G 0123 D 0123 A 012
          common practice, no source                | C3  | 2 | down | free  | A 210 D 3210 G 3210 C 3210
          common practice, no source                | D3  | 2 | up   | free  | C 123 G 0123 D 0123 A 0123
          common practice, open or fourth finger    | D3  | 2 | down | free  | A 3210 D 3210 G 3210 C 321 / A 321 D 4321 G 4321 C 4321
          common practice, no source                | Db3 | 2 | up   | free  | C 1234 G 1234 D 1234 A 123
          common practice, open or fourth finger    | Eb3 | 2 | up   | free  | C 23 G 0123 D 01234 A 1234 / C 234 G 1234 D 1234 A 1234
          common practice, shift to 3rd on the A    | G3  | 2 | up   | free  | G 0123 D 0123 A 0121234
          common practice, shift to 4th on the A    | A3  | 2 | up   | free  | G 123 D 0123 A 01231234
          common practice, a finger to each letter  | F3  | 2 | up   | 2     | C 234 G 1234 D 1234 A 1234
          common practice, a finger to each letter  | F3  | 2 | up   | 3     | C 1234 G 1234 D 1234 A 123
          common practice, a finger to each letter  | G3  | 2 | up   | 3     | C 234 G 1234 D 1234 A 1234
          common practice, one string in two places | C3  | 1 | up   | sul C | C 01231234
          common practice, all shifts on the A      | C3  | 3 | up   | free  | C 0123 G 0123 D 0123 A 0121231234
          common practice, all shifts on the A      | D3  | 3 | up   | free  | C 123 G 0123 D 0123 A 01231231234
          """)
  void scalesOfTheViola(
      String source, String tonic, int octaves, String direction, String where, String fingering) {
    check("viola", tonic, octaves, direction, where, fingering);
  }

  @ParameterizedTest(name = "{1}, octaves: {2}, {3}, {4} ({0})")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          S. Suzuki, Cello School 1, from memory    | D3  | 1 | up   | free  | D 0134 A 0134
          common practice, extended forward         | A2  | 1 | up   | free  | G 124 D 0124 A 0
          common practice, extended back            | Bb2 | 1 | up   | free  | G 24 D 0124 A 01
          common practice, extended back            | Eb2 | 1 | up   | free  | C 24 G 0124 D 01
          common practice, no source                | F2  | 1 | up   | free  | C 4 G 0124 D 012
          common practice, no source                | C2  | 2 | up   | free  | C 0134 G 0134 D 0124 A 012
          common practice, no source                | C2  | 2 | down | free  | A 210 D 4210 G 4310 C 4310
          common practice, extended forward         | D2  | 2 | up   | free  | C 124 G 0124 D 0134 A 0134
          common practice, extended forward         | D2  | 2 | down | free  | A 4310 D 4310 G 4210 C 421
          common practice, shift to 4th on the A    | G2  | 2 | up   | free  | G 0134 D 0134 A 0124134
          common practice, shift to 1st on the A    | G2  | 2 | down | free  | A 4314210 D 4310 G 4310
          common practice, shift to 3rd or 4th      | F2  | 2 | up   | free  | C 4 G 0124 D 0124 A 012134 / C 4 G 0124 D 0124 A 012412
          common practice, shift from 3rd or 4th    | F2  | 2 | down | free  | A 431210 D 4210 G 4210 C 4 / A 214210 D 4210 G 4210 C 4
          J. Klengel, Technical Studies, from memory | C2 | 3 | up   | free  | C 0134 G 0134 D 0124 A 0124124123
          common practice, the same back            | C2  | 3 | down | free  | A 3214214210 D 4210 G 4310 C 4310
          common practice, the thumb at the octave  | D2  | 3 | up   | free  | C 124 G 0124 D 0134 A 0134134T123
          """)
  void scalesOfTheCello(
      String source, String tonic, int octaves, String direction, String where, String fingering) {
    check("cello", tonic, octaves, direction, where, fingering);
  }

  // the pitches sound an octave below the written ones
  @ParameterizedTest(name = "{1}, octaves: {2}, {3}, {4} ({0})")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          F. Simandl, New Method, from memory       | F1  | 1 | up   | half  | E 14 A 014 D 024
          F. Simandl, New Method, from memory       | Bb1 | 1 | up   | half  | A 14 D 014 G 024
          F. Simandl, New Method, from memory       | G1  | 1 | up   | free  | E 2 A 012 D 014 G 0
          common practice, no source                | G1  | 1 | down | free  | G 0 D 410 A 210 E 2
          common practice, half throughout or 1st   | F1  | 1 | up   | free  | E 14 A 014 D 024 / E 14 A 014 D 012
          common practice, half throughout or 1st   | F1  | 1 | down | free  | D 420 A 410 E 41 / D 210 A 410 E 41
          common practice, no source                | Bb1 | 1 | up   | free  | A 14 D 014 G 024
          common practice, half position to end     | E1  | 1 | up   | free  | E 014 A 014 D 12
          common practice, half position to end     | A1  | 1 | up   | free  | A 014 D 014 G 12
          common practice, shift to 2nd or 2½       | C2  | 1 | up   | free  | A 2 D 012 G 0124 / A 2 D 012 G 0112
          common practice, shift to 3rd             | D2  | 1 | up   | free  | D 014 G 01424
          common practice, all shifts on the G      | G1  | 2 | up   | free  | E 2 A 012 D 014 G 01414133 / E 2 A 012 D 014 G 01414143
          common practice, the same back            | G1  | 2 | down | free  | G 33141410 D 410 A 210 E 2 / G 34141410 D 410 A 210 E 2
          common practice, all shifts on the G      | F1  | 2 | up   | free  | E 14 A 014 D 024 G 0121412 / E 14 A 014 D 012 G 0121412
          """)
  void scalesOfTheBass(
      String source, String tonic, int octaves, String direction, String where, String fingering) {
    check("bass", tonic, octaves, direction, where, fingering);
  }

  private static void check(
      String instrument,
      String tonic,
      int octaves,
      String direction,
      String where,
      String fingering) {
    Instrument played = Instruments.standard().named(instrument);
    List<Pitch> pitches = new ArrayList<>(major(Pitch.parse(tonic), octaves));
    if (direction.equals("down")) {
      Collections.reverse(pitches);
    }
    String asked = where.startsWith("sul ") ? "$" + string(played, where.substring(4)) : "";
    Passage scale =
        Music.on(instrument)
            .tempo("quarter=80")
            .notes(
                pitches.stream()
                    .map(pitch -> pitch + "/0.5" + asked)
                    .collect(Collectors.joining(" ")));
    List<String> best =
        Planner.of(scale, StandardRules.commonPractice()).plans(brief(where), BEST).stream()
            .map(ScaleFingeringsTest::written)
            .toList();
    assertThat(best).containsAnyElementsOf(SLASH.split(fingering));
  }

  private static Brief brief(String where) {
    if (where.equals("free")) {
      return Brief.free(where);
    }
    if (where.startsWith("sul ")) {
      return Brief.free(where).withKeepPrinted(true);
    }
    return Brief.within(
        where,
        COMMA.splitToStream(where).map(Position::parse).collect(ImmutableSet.toImmutableSet()));
  }

  private static List<Pitch> major(Pitch tonic, int octaves) {
    List<Pitch> scale = new ArrayList<>(List.of(tonic));
    int midi = tonic.midi();
    for (int step = 0; step < octaves * MAJOR.size(); step++) {
      midi += MAJOR.get(step % MAJOR.size());
      scale.add(Pitch.spelled(tonic.letterNumber() + step + 1, midi));
    }
    return scale;
  }

  private static int string(Instrument instrument, String name) {
    return instrument.strings().stream()
        .filter(string -> name(string).equals(name))
        .mapToInt(OpenString::number)
        .findFirst()
        .orElseThrow();
  }

  private static String name(OpenString string) {
    return string.pitch().toString().substring(0, 1);
  }

  /** The fingers of a plan, with the name of the string at each string crossing. */
  private static String written(Plan plan) {
    StringBuilder text = new StringBuilder();
    int before = 0;
    for (PlannedNote note : plan.notes()) {
      int string = note.placement().string();
      if (string != before) {
        text.append(before == 0 ? "" : " ");
        text.append(name(plan.passage().instrument().string(string))).append(' ');
      }
      text.append(note.finger());
      before = string;
    }
    return text.toString();
  }
}
