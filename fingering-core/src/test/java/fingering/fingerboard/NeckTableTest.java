package fingering.fingerboard;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.OpenString;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Tables of the neck positions of cello and double bass: for each position and shape of the hand,
 * the semitones of each finger above the open string.
 */
class NeckTableTest {
  private static final Splitter BLANK = Splitter.on(' ').omitEmptyStrings();

  // common practice, no source; a medium hand extends everywhere on the neck
  private static final String CELLO =
      """
      half CLOSED: 1 1, 2 2, 3 3, 4 4
      half EXTENDED_FORWARD: 1 1, 2 3, 3 4, 4 5
      1st CLOSED: 1 2, 2 3, 3 4, 4 5
      1st EXTENDED_BACK: 1 1, 2 3, 3 4, 4 5
      1st EXTENDED_FORWARD: 1 2, 2 4, 3 5, 4 6
      2nd lowered CLOSED: 1 3, 2 4, 3 5, 4 6
      2nd lowered EXTENDED_BACK: 1 2, 2 4, 3 5, 4 6
      2nd lowered EXTENDED_FORWARD: 1 3, 2 5, 3 6, 4 7
      2nd CLOSED: 1 4, 2 5, 3 6, 4 7
      2nd EXTENDED_BACK: 1 3, 2 5, 3 6, 4 7
      2nd EXTENDED_FORWARD: 1 4, 2 6, 3 7, 4 8
      3rd CLOSED: 1 5, 2 6, 3 7, 4 8
      3rd EXTENDED_BACK: 1 4, 2 6, 3 7, 4 8
      3rd EXTENDED_FORWARD: 1 5, 2 7, 3 8, 4 9
      3rd raised CLOSED: 1 6, 2 7, 3 8, 4 9
      3rd raised EXTENDED_BACK: 1 5, 2 7, 3 8, 4 9
      3rd raised EXTENDED_FORWARD: 1 6, 2 8, 3 9, 4 10
      4th CLOSED: 1 7, 2 8, 3 9, 4 10
      4th EXTENDED_BACK: 1 6, 2 8, 3 9, 4 10
      4th EXTENDED_FORWARD: 1 7, 2 9, 3 10, 4 11
      5th lowered CLOSED: 1 8, 2 9, 2 10, 3 11, 3 12
      5th CLOSED: 1 9, 2 10, 2 11, 3 12, 3 13
      6th CLOSED: 1 10, 2 11, 2 12, 3 13, 3 14
      6th raised CLOSED: 1 11, 2 12, 2 13, 3 14, 3 15
      7th CLOSED: 1 12, 2 13, 2 14, 3 15, 3 16
      """;

  // F. Simandl, New Method for the Double Bass, from memory
  private static final String BASS =
      """
      half CLOSED: 1 1, 2 2, 4 3
      1st CLOSED: 1 2, 2 3, 4 4
      2nd CLOSED: 1 3, 2 4, 4 5
      2½ CLOSED: 1 4, 2 5, 4 6
      3rd CLOSED: 1 5, 2 6, 4 7
      3½ CLOSED: 1 6, 2 7, 4 8
      4th CLOSED: 1 7, 2 8, 4 9
      5th CLOSED: 1 8, 2 9, 3 10, 4 10
      5½ CLOSED: 1 9, 2 10, 3 11, 4 11
      6th CLOSED: 1 10, 2 11, 3 12, 4 12
      6½ CLOSED: 1 11, 2 12, 3 13, 4 13
      7th CLOSED: 1 12, 2 13, 3 14
      """;

  private static Set<String> written(String table) {
    Set<String> rows = new TreeSet<>();
    for (String line : Splitter.on('\n').omitEmptyStrings().split(table)) {
      List<String> halves = Splitter.on(": ").splitToList(line);
      for (String finger : Splitter.on(", ").split(halves.get(1))) {
        rows.add(halves.get(0) + ": " + String.join(" ", BLANK.split(finger)));
      }
    }
    return rows;
  }

  private static Set<String> placed(String id, OpenString string) {
    Instrument instrument = Instruments.standard().named(id);
    Fingerboard fingerboard = Fingerboard.of(instrument);
    Set<String> rows = new TreeSet<>();
    for (int semitones = 0; semitones <= instrument.lastSemitone(); semitones++) {
      for (Placement p : fingerboard.placements(string.above(semitones))) {
        if (p.string() == string.number() && !p.open() && p.frame().thumb().isEmpty()) {
          rows.add(
              p.frame().display()
                  + " "
                  + p.frame().shape()
                  + ": "
                  + p.finger().symbol()
                  + " "
                  + p.semitones());
        }
      }
    }
    return rows;
  }

  @Test
  void theCelloHasExactlyThesePlacesOnEveryString() {
    for (OpenString string : Instruments.standard().named("cello").strings()) {
      assertThat(placed("cello", string)).isEqualTo(written(CELLO));
    }
  }

  @Test
  void theBassHasExactlyThesePlacesOnEveryString() {
    for (OpenString string : Instruments.standard().named("bass").strings()) {
      assertThat(placed("bass", string)).isEqualTo(written(BASS));
    }
  }
}
