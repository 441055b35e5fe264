package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedNote;
import fingering.music.PrintedNote.Beam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Sorts the notes of a measure into stems, columns and beams. */
final class Columns {
  private static final int MIDDLE = 4;

  private final PrintedMeasure measure;

  /** The columns in order of time. */
  final List<Column> columns = new ArrayList<>();

  /** Stems that share a beam, two or more each. */
  final List<List<Stem>> beams = new ArrayList<>();

  /** Stems of each voice, rests among them, in document order. */
  final Map<String, List<Stem>> voices = new LinkedHashMap<>();

  Columns(PrintedMeasure measure) {
    this.measure = measure;
    TreeMap<BigFraction, List<Column>> graces = new TreeMap<>();
    TreeMap<BigFraction, Column> mains = new TreeMap<>();
    List<List<PrintedNote>> groups = groups();
    for (List<PrintedNote> group : groups) {
      PrintedNote lead = group.get(0);
      Stem stem = stem(group);
      voices.computeIfAbsent(lead.voice(), voice -> new ArrayList<>()).add(stem);
      if (lead.grace()) {
        Column column = new Column(lead.onset(), true);
        column.stems.add(stem);
        graces.computeIfAbsent(lead.onset(), onset -> new ArrayList<>()).add(column);
      } else {
        mains.computeIfAbsent(lead.onset(), onset -> new Column(onset, false)).stems.add(stem);
      }
    }
    graces.keySet().forEach(onset -> mains.computeIfAbsent(onset, o -> new Column(o, false)));
    mains.forEach(
        (onset, column) -> {
          columns.addAll(graces.getOrDefault(onset, List.of()));
          if (!column.stems.isEmpty()) {
            columns.add(column);
          }
        });
    voices.values().forEach(this::beam);
    direct();
  }

  /** Notes with those that share their stem; chords of one voice whose notes say so. */
  private List<List<PrintedNote>> groups() {
    List<List<PrintedNote>> groups = new ArrayList<>();
    for (PrintedNote note : measure.notes()) {
      boolean joins =
          note.chord()
              && !groups.isEmpty()
              && !groups.get(groups.size() - 1).get(0).rest()
              && !note.rest();
      if (joins) {
        groups.get(groups.size() - 1).add(note);
      } else {
        groups.add(new ArrayList<>(List.of(note)));
      }
    }
    return groups;
  }

  private Stem stem(List<PrintedNote> group) {
    if (group.get(0).rest()) {
      return new Stem(ImmutableList.copyOf(group), ImmutableList.of(MIDDLE));
    }
    ImmutableList<PrintedNote> sorted =
        ImmutableList.sortedCopyOf(Comparator.comparingInt(this::step), group);
    return new Stem(
        sorted, sorted.stream().map(this::step).collect(ImmutableList.toImmutableList()));
  }

  private int step(PrintedNote note) {
    return measure.clefAt(note.onset()).step(note.pitch().orElseThrow());
  }

  private void beam(List<Stem> voice) {
    List<Stem> open = new ArrayList<>();
    for (Stem stem : voice) {
      if (stem.grace() || stem.rest()) {
        continue;
      }
      // The beam is told at one note of a chord, often not the lowest.
      Beam beam =
          stem.notes.stream()
              .map(PrintedNote::beam)
              .filter(one -> one != Beam.NONE)
              .findFirst()
              .orElse(Beam.NONE);
      if (beam == Beam.BEGIN) {
        open = new ArrayList<>();
      }
      if (beam != Beam.NONE) {
        open.add(stem);
      }
      if (beam == Beam.END && open.size() > 1) {
        beams.add(open);
        open = new ArrayList<>();
      }
    }
  }

  private void direct() {
    List<String> sounding =
        voices.entrySet().stream()
            .filter(entry -> entry.getValue().stream().anyMatch(stem -> !stem.rest()))
            .map(Map.Entry::getKey)
            .toList();
    voices.forEach(
        (voice, stems) -> {
          for (Stem stem : stems) {
            stem.up =
                sounding.size() > 1
                    ? sounding.indexOf(voice) <= 0
                    : stem.grace() || stem.rest() || upAlone(stem.lowest(), stem.highest());
          }
        });
    if (sounding.size() <= 1) {
      for (List<Stem> beam : beams) {
        int lowest = beam.stream().mapToInt(Stem::lowest).min().orElseThrow();
        int highest = beam.stream().mapToInt(Stem::highest).max().orElseThrow();
        beam.forEach(stem -> stem.up = upAlone(lowest, highest));
      }
    }
  }

  /** The stem goes where the farther note points away from: down from the middle line. */
  private static boolean upAlone(int lowest, int highest) {
    return MIDDLE - lowest > highest - MIDDLE;
  }

  /** Whether several voices have notes. */
  boolean several() {
    return voices.values().stream()
            .filter(stems -> stems.stream().anyMatch(stem -> !stem.rest()))
            .count()
        > 1;
  }
}
