package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import fingering.music.Measure;
import fingering.music.print.Clef;
import fingering.music.print.NoteShape.Beam;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.ClefChange;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.PrintedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The notes of a measure, sorted for drawing.
 *
 * @param measure the measure
 * @param printed the same as printed
 * @param columns the columns in order of time
 * @param beams groups of chords under one beam or tremolo
 * @param tuplets the tuplets
 */
public record MeasureNotes(
    Measure measure,
    PrintedMeasure printed,
    ImmutableList<Column> columns,
    ImmutableList<BeamGroup> beams,
    ImmutableList<Tuplet> tuplets) {

  /** Sorts the notes of all measures of a part. */
  public static ImmutableList<MeasureNotes> of(List<Measure> measures, PrintedPart part) {
    boolean beams =
        part.measures().stream()
            .flatMap(measure -> measure.notes().stream())
            .anyMatch(note -> note.shape().beam() != Beam.NONE);
    ImmutableListMultimap<Integer, PrintedPart.Tuplet> tuplets =
        Multimaps.index(part.tuplets(), tuplet -> tuplet.from().measure());
    ImmutableList.Builder<MeasureNotes> all = ImmutableList.builder();
    for (int i = 0; i < part.measures().size(); i++) {
      Measure measure = measures.get(i);
      PrintedMeasure printed = part.measures().get(i);
      NotationStyle style =
          new NotationStyle(
              beams,
              beat(measure),
              tuplets.get(printed.index()),
              onset -> part.octavesAt(measure.start().add(onset)));
      Voices voices = new Voices(printed, style);
      all.add(
          new MeasureNotes(
              measure,
              printed,
              columns(printed, voices.chords()),
              voices.beams(),
              voices.tuplets()));
    }
    return all.build();
  }

  /** The notes under one beam: a beat, in compound time three of its notes. */
  private static double beat(Measure measure) {
    double unit = 4.0 / measure.beatType();
    return measure.beatType() >= 8 && measure.beats() % 3 == 0 ? 3 * unit : Math.max(1, unit);
  }

  /** The columns; every grace note has a column of its own before the notes that it leads to. */
  private static ImmutableList<Column> columns(PrintedMeasure printed, List<Chord> chords) {
    Map<BigFraction, List<List<Chord>>> byTime = new TreeMap<>();
    for (Chord chord : chords) {
      List<List<Chord>> at =
          byTime.computeIfAbsent(
              chord.lead().onset(), onset -> new ArrayList<>(List.of(List.of())));
      if (chord.grace()) {
        at.add(at.size() - 1, List.of(chord));
      } else {
        List<Chord> main = new ArrayList<>(at.get(at.size() - 1));
        main.add(chord);
        at.set(at.size() - 1, main);
      }
    }
    List<ClefChange> clefs = new ArrayList<>(printed.clefs());
    List<KeyChange> keys = new ArrayList<>(printed.keys());
    ImmutableList.Builder<Column> columns = ImmutableList.builder();
    byTime.forEach(
        (onset, groups) -> {
          for (int i = 0; i < groups.size(); i++) {
            if (!groups.get(i).isEmpty()) {
              columns.add(
                  new Column(
                      onset,
                      i + 1 < groups.size(),
                      ImmutableList.copyOf(groups.get(i)),
                      clef(clefs, onset),
                      key(keys, onset)));
            }
          }
        });
    return columns.build();
  }

  private static Optional<Clef> clef(List<ClefChange> changes, BigFraction onset) {
    Optional<Clef> last = Optional.empty();
    while (!changes.isEmpty() && changes.get(0).onset().compareTo(onset) <= 0) {
      last = Optional.of(changes.remove(0).clef());
    }
    return last;
  }

  private static Optional<KeyChange> key(List<KeyChange> changes, BigFraction onset) {
    Optional<KeyChange> last = Optional.empty();
    while (!changes.isEmpty() && changes.get(0).onset().compareTo(onset) <= 0) {
      last = Optional.of(changes.remove(0));
    }
    return last;
  }

  /** Whether it has nothing but rests, no words and no signs: several may become one rest. */
  public boolean silent() {
    return !columns.isEmpty()
        && printed.notes().stream().allMatch(note -> note.rest() && note.signs().isEmpty())
        && printed.texts().isEmpty()
        && printed.clefs().isEmpty()
        && printed.keys().isEmpty()
        && !printed.fermataAtEnd()
        && columns.size() == 1;
  }

  /** The clef after the last note. */
  public Clef lastClef() {
    return printed.clefs().isEmpty()
        ? printed.clef()
        : printed.clefs().get(printed.clefs().size() - 1).clef();
  }

  /** The key signature at the end: number of sharps, negative for flats. */
  public int lastKey() {
    return printed.keys().isEmpty()
        ? measure.fifths()
        : printed.keys().get(printed.keys().size() - 1).fifths();
  }
}
