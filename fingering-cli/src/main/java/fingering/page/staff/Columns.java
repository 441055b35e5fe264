package fingering.page.staff;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Iterables;
import fingering.music.print.Clef;
import fingering.music.print.NoteShape.Beam;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.ClefChange;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Tremolo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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

  /** Stems of two notes each that share a tremolo. */
  final List<List<Stem>> tremolos = new ArrayList<>();

  /** The clef at the end of the measure, unless it changes after the last note. */
  Clef lastClef;

  /** The key that the last change before a note sets; empty if there is none. */
  OptionalInt lastKey = OptionalInt.empty();

  /** Stems and rests of each voice, in document order. */
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
    voices.values().forEach(this::findBeams);
    voices.values().forEach(this::findTremolos);
    setStemDirections();
    lastClef = measure.clef();
    assignChanges();
  }

  /** Assigns changes of clef and key to the first column that they affect. */
  private void assignChanges() {
    for (ClefChange change : measure.clefs()) {
      from(change.onset())
          .ifPresent(
              column -> {
                column.clef = Optional.of(change.clef());
                lastClef = change.clef();
              });
    }
    for (KeyChange change : measure.keys()) {
      from(change.onset())
          .ifPresent(
              column -> {
                column.key = Optional.of(change);
                lastKey = OptionalInt.of(change.fifths());
              });
    }
  }

  private Optional<Column> from(BigFraction onset) {
    return columns.stream().filter(column -> column.onset.compareTo(onset) >= 0).findFirst();
  }

  /** Groups the notes of chords, which share a stem. */
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

  private void findBeams(List<Stem> voice) {
    List<Stem> open = new ArrayList<>();
    for (Stem stem : voice) {
      if (stem.grace() || stem.rest()) {
        continue;
      }
      // One note of a chord has the beam, often not the lowest.
      Beam beam =
          stem.notes.stream()
              .map(note -> note.shape().beam())
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

  /** Finds notes that share a tremolo: its strokes replace the beams. */
  private void findTremolos(List<Stem> voice) {
    for (int i = 0; i + 1 < voice.size(); i++) {
      Stem one = voice.get(i);
      Stem other = voice.get(i + 1);
      if (one.tremolo().role() == Tremolo.Role.FIRST
          && other.tremolo().role() == Tremolo.Role.SECOND) {
        beams.removeIf(beam -> beam.contains(one) || beam.contains(other));
        tremolos.add(List.of(one, other));
      }
    }
  }

  private void setStemDirections() {
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
      for (List<Stem> beam : Iterables.concat(beams, tremolos)) {
        int lowest = beam.stream().mapToInt(Stem::lowest).min().orElseThrow();
        int highest = beam.stream().mapToInt(Stem::highest).max().orElseThrow();
        beam.forEach(stem -> stem.up = upAlone(lowest, highest));
      }
      moveRests();
    }
  }

  /** Moves the rests of the player away from the notes of a cue. */
  private void moveRests() {
    double middle =
        voices.values().stream()
            .flatMap(List::stream)
            .filter(stem -> !stem.rest())
            .mapToInt(Stem::lowest)
            .average()
            .orElse(MIDDLE);
    voices.values().stream()
        .flatMap(List::stream)
        .filter(Stem::rest)
        .forEach(rest -> rest.up = middle < MIDDLE);
  }

  /** Whether a stem in a single voice goes up: away from the note farthest from the middle line. */
  private static boolean upAlone(int lowest, int highest) {
    return MIDDLE - lowest > highest - MIDDLE;
  }

  /** Whether rests must be moved: several voices have notes, or there is a cue. */
  boolean crowded() {
    long sounding =
        voices.values().stream()
            .filter(stems -> stems.stream().anyMatch(stem -> !stem.rest()))
            .count();
    boolean cued = voices.values().stream().flatMap(List::stream).anyMatch(Stem::cue);
    return sounding > 1 || (cued && voices.size() > 1);
  }
}
