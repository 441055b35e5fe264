package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import com.google.common.collect.MultimapBuilder;
import fingering.engraving.notes.Chord.Layer;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Beam;
import fingering.music.print.PrintedNote.Tremolo.Role;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Sorts the notes of a measure into voices, chords, beams and tuplets, with stem directions. */
final class Voices {
  private static final int MIDDLE = 4;

  private final PrintedMeasure measure;

  /** Chords by voice, in the order of the file; directions are not final before {@link #fix}. */
  private final ListMultimap<String, Chord> voices =
      MultimapBuilder.linkedHashKeys().arrayListValues().build();

  private final List<BeamGroup> beams = new ArrayList<>();
  private final List<Tuplet> tuplets = new ArrayList<>();
  private final int sounding;

  Voices(PrintedMeasure measure) {
    this.measure = measure;
    group().forEach(notes -> voices.put(notes.get(0).voice(), chord(notes)));
    List<String> names =
        voices.keySet().stream()
            .filter(voice -> voices.get(voice).stream().anyMatch(chord -> !chord.rest()))
            .toList();
    sounding = names.size();
    boolean cued =
        voices.keySet().size() > 1 && voices.values().stream().anyMatch(c -> c.lead().cue());
    if (sounding > 0 && !cued) {
      // The rests of a voice that is silent here belong to nobody who reads this part.
      voices.keySet().retainAll(names);
    }
    for (String voice : List.copyOf(voices.keySet())) {
      Layer layer = layer(voice, names, cued);
      List<Chord> fixed = fix(voices.get(voice), layer);
      voices.replaceValues(voice, fixed);
      findTuplets(fixed);
    }
  }

  private Layer layer(String voice, List<String> names, boolean cued) {
    if (names.size() > 1) {
      return names.indexOf(voice) <= 0 ? Layer.UPPER : Layer.LOWER;
    }
    if (!cued) {
      return Layer.ALONE;
    }
    // The player's rests make room for the notes of a cue.
    boolean notes = names.contains(voice);
    double middle =
        voices.values().stream()
            .filter(chord -> !chord.rest())
            .mapToInt(Chord::lowest)
            .average()
            .orElse(MIDDLE);
    return notes ? Layer.ALONE : middle < MIDDLE ? Layer.UPPER : Layer.LOWER;
  }

  /** Groups the notes of chords, which share a stem. */
  private List<List<PrintedNote>> group() {
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

  private Chord chord(List<PrintedNote> group) {
    if (group.get(0).rest()) {
      return new Chord(
          ImmutableList.copyOf(group), ImmutableList.of(MIDDLE), true, Layer.ALONE);
    }
    ImmutableList<PrintedNote> sorted =
        ImmutableList.sortedCopyOf(Comparator.comparingInt(this::step), group);
    return new Chord(
        sorted,
        sorted.stream().map(this::step).collect(ImmutableList.toImmutableList()),
        true,
        Layer.ALONE);
  }

  private int step(PrintedNote note) {
    return measure.clefAt(note.onset()).step(note.pitch().orElseThrow());
  }

  /** The chords of a voice with their final directions. */
  private List<Chord> fix(List<Chord> chords, Layer layer) {
    List<Chord> fixed = new ArrayList<>(chords);
    fixed.replaceAll(chord -> directed(chord, layer, own(chord)));
    for (List<Integer> group : beamed(chords)) {
      add(fixed, group, layer, false);
    }
    for (int i = 0; i + 1 < fixed.size(); i++) {
      if (fixed.get(i).tremolo().role() == Role.FIRST
          && fixed.get(i + 1).tremolo().role() == Role.SECOND) {
        Chord first = fixed.get(i);
        Chord second = fixed.get(i + 1);
        beams.removeIf(beam -> beam.chords().contains(first) || beam.chords().contains(second));
        add(fixed, List.of(i, i + 1), layer, true);
      }
    }
    return fixed;
  }

  /** Gives the chords of a group one direction, and keeps the group. */
  private void add(List<Chord> chords, List<Integer> group, Layer layer, boolean tremolo) {
    boolean up = chords.get(group.get(0)).grace() || together(chords, group);
    group.forEach(i -> chords.set(i, directed(chords.get(i), layer, up)));
    beams.add(
        new BeamGroup(
            group.stream().map(chords::get).collect(ImmutableList.toImmutableList()), tremolo));
  }

  private static Chord directed(Chord chord, Layer layer, boolean alone) {
    boolean up = layer == Layer.ALONE ? alone : layer == Layer.UPPER;
    return new Chord(chord.notes(), chord.steps(), up, layer);
  }

  private static boolean own(Chord chord) {
    return chord.grace() || chord.rest() || away(chord.lowest(), chord.highest());
  }

  /** The direction of a beam: away from the outermost notes; if they are equally far, by most. */
  private static boolean together(List<Chord> chords, List<Integer> group) {
    int lowest = group.stream().mapToInt(i -> chords.get(i).lowest()).min().orElseThrow();
    int highest = group.stream().mapToInt(i -> chords.get(i).highest()).max().orElseThrow();
    if (MIDDLE - lowest != highest - MIDDLE) {
      return away(lowest, highest);
    }
    double middle =
        group.stream()
            .mapToDouble(i -> (chords.get(i).lowest() + chords.get(i).highest()) / 2.0)
            .average()
            .orElse(MIDDLE);
    return middle < MIDDLE;
  }

  /** Whether a stem goes up: away from the note farthest from the middle line. */
  private static boolean away(int lowest, int highest) {
    return MIDDLE - lowest > highest - MIDDLE;
  }

  /** The indices of chords that share a beam. */
  private static List<List<Integer>> beamed(List<Chord> voice) {
    List<List<Integer>> found = new ArrayList<>();
    for (boolean grace : new boolean[] {false, true}) {
      List<Integer> open = new ArrayList<>();
      for (int i = 0; i < voice.size(); i++) {
        Chord chord = voice.get(i);
        if (chord.rest() || chord.grace() != grace) {
          continue;
        }
        Beam beam = chord.beam();
        if (beam == Beam.BEGIN) {
          open = new ArrayList<>();
        }
        if (beam != Beam.NONE && chord.flags() > 0) {
          open.add(i);
        }
        if (beam == Beam.END) {
          if (open.size() > 1) {
            found.add(open);
          }
          open = new ArrayList<>();
        }
      }
    }
    return found;
  }

  /** Runs of notes in the same kind of tuplet, ended where the tuplet has its full length. */
  private void findTuplets(List<Chord> chords) {
    List<Chord> run = new ArrayList<>();
    double length = 0;
    for (Chord chord : chords) {
      if (chord.grace()) {
        continue;
      }
      int number = chord.lead().tuplet();
      if (!run.isEmpty() && number != run.get(0).lead().tuplet()) {
        addTuplet(run);
        run = new ArrayList<>();
        length = 0;
      }
      if (number < 2) {
        continue;
      }
      run.add(chord);
      length += chord.lead().length().doubleValue();
      // A full tuplet is as long as a plain note value: half a quarter, a quarter, two quarters.
      double log = Math.log(length) / Math.log(2);
      boolean beamGoesOn = chord.beam() == Beam.BEGIN || chord.beam() == Beam.CONTINUE;
      if (run.size() > 1 && Math.abs(log - Math.rint(log)) < 1e-6 && !beamGoesOn) {
        addTuplet(run);
        run = new ArrayList<>();
        length = 0;
      }
    }
    if (!run.isEmpty()) {
      addTuplet(run);
    }
  }

  private void addTuplet(List<Chord> run) {
    ImmutableList<Chord> chords = ImmutableList.copyOf(run);
    boolean beamed = beams.stream().anyMatch(beam -> beam.chords().equals(chords));
    tuplets.add(new Tuplet(run.get(0).lead().tuplet(), chords, beamed));
  }

  /** All chords, those of the upper voice first. */
  List<Chord> chords() {
    Collection<Chord> all = voices.values();
    return List.copyOf(all);
  }

  ImmutableList<BeamGroup> beams() {
    return ImmutableList.copyOf(beams);
  }

  ImmutableList<Tuplet> tuplets() {
    return ImmutableList.copyOf(tuplets);
  }

  /** The number of voices that have notes. */
  int sounding() {
    return sounding;
  }
}
