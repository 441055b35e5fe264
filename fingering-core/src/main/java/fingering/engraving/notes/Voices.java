package fingering.engraving.notes;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import com.google.common.collect.MultimapBuilder;
import fingering.engraving.notes.Chord.Layer;
import fingering.music.NoteAddress;
import fingering.music.print.NoteShape.Beam;
import fingering.music.print.NoteShape.Stem;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedNote.Tremolo.Role;
import fingering.music.print.PrintedPart;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Sorts the notes of a measure into voices, chords, beams and tuplets, with stem directions. */
final class Voices {
  private static final int MIDDLE = 4;
  private static final int OCTAVE = 7;

  private final PrintedMeasure measure;
  private final NotationStyle style;

  /** Chords by voice, in the order of the file; directions are not final before {@link #fix}. */
  private final ListMultimap<String, Chord> voices =
      MultimapBuilder.linkedHashKeys().arrayListValues().build();

  private final List<BeamGroup> beams = new ArrayList<>();
  private final List<Tuplet> tuplets = new ArrayList<>();
  private final int sounding;

  Voices(PrintedMeasure measure, NotationStyle style) {
    this.measure = measure;
    this.style = style;
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
      return new Chord(ImmutableList.copyOf(group), ImmutableList.of(MIDDLE), true, Layer.ALONE);
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
    int sounding = measure.clefAt(note.onset()).step(note.pitch().orElseThrow());
    return sounding - OCTAVE * style.octaves().apply(note.onset());
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
    if (layer != Layer.ALONE) {
      // Where voices meet, the score knows best.
      Stem printed = chord.lead().shape().stem();
      up = printed == Stem.UP || (printed != Stem.DOWN && up);
    }
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
  private List<List<Integer>> beamed(List<Chord> voice) {
    return style.printedBeams() ? printedBeams(voice) : usualBeams(voice);
  }

  private static List<List<Integer>> printedBeams(List<Chord> voice) {
    List<List<Integer>> found = new ArrayList<>();
    for (boolean grace : new boolean[] {false, true}) {
      List<Integer> open = new ArrayList<>();
      for (int i = 0; i < voice.size(); i++) {
        Chord chord = voice.get(i);
        if (chord.rest() || chord.grace() != grace) {
          continue;
        }
        Beam beam = chord.beams().isEmpty() ? Beam.NONE : chord.beams().get(0);
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

  /**
   * Beams of a score that has none: the notes of each beat, in 6/8 and the like of three eighths.
   */
  private List<List<Integer>> usualBeams(List<Chord> voice) {
    List<List<Integer>> found = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    long last = -1;
    for (int i = 0; i < voice.size(); i++) {
      Chord chord = voice.get(i);
      if (chord.grace()) {
        continue;
      }
      long beat = (long) Math.floor(chord.lead().onset().doubleValue() / style.beat() + 1e-9);
      boolean beamable = !chord.rest() && chord.flags() > 0;
      if (!beamable || beat != last) {
        if (open.size() > 1) {
          found.add(open);
        }
        open = new ArrayList<>();
      }
      if (beamable) {
        open.add(i);
      }
      last = beat;
    }
    if (open.size() > 1) {
      found.add(open);
    }
    return found;
  }

  private void findTuplets(List<Chord> chords) {
    for (PrintedPart.Tuplet tuplet : style.tuplets()) {
      int from = index(chords, tuplet.from());
      int to = index(chords, tuplet.to());
      if (from >= 0 && tuplet.to().measure() > measure.index()) {
        to = chords.size() - 1;
      }
      if (from < 0 || to < from) {
        continue;
      }
      ImmutableList<Chord> inside = ImmutableList.copyOf(chords.subList(from, to + 1));
      boolean beamed = beams.stream().anyMatch(beam -> beam.chords().equals(inside));
      tuplets.add(new Tuplet(tuplet, inside, beamed));
    }
  }

  private static int index(List<Chord> chords, NoteAddress address) {
    for (int i = 0; i < chords.size(); i++) {
      for (PrintedNote note : chords.get(i).notes()) {
        if (note.address().equals(address)) {
          return i;
        }
      }
    }
    return -1;
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
}
