package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Harmonic;
import fingering.music.Harmonic.Kind;
import fingering.music.Marks;
import fingering.musicxml.element.HarmonicSign.Role;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Reads a chord, or a single note, that prints harmonics (MusicXML 4.0, elements harmonic and
 * notehead). A circle stands over the sound. A diamond stands where a finger touches: above a note
 * of its chord that is stopped, or else on an open string. Of an artificial harmonic that is
 * printed in part the touched note is a fourth above the stopped one (common practice).
 */
final class ChordHarmonics {
  private static final int FOURTH = 5;
  private static final int TWO_OCTAVES = 24;

  /** Where the upper finger touches, in semitones above the lower; the usual place first. */
  private static final ImmutableList<Integer> TOUCHES = ImmutableList.of(FOURTH, 7, 4, 3);

  private final NaturalNodes nodes;
  private final List<HeardNote> left;
  private final List<HeardNote> heard = new ArrayList<>();

  private ChordHarmonics(List<HeardNote> chord, NaturalNodes nodes) {
    left = new ArrayList<>(chord);
    this.nodes = nodes;
  }

  /** The notes of the chord that are heard, in document order. */
  static ImmutableList<HeardNote> read(List<HeardNote> chord, NaturalNodes nodes) {
    ChordHarmonics harmonics = new ChordHarmonics(chord, nodes);
    for (int touch : TOUCHES) {
      harmonics.pairs((base, upper) -> distance(base, upper) == touch);
    }
    harmonics.pairs(ChordHarmonics::areNamed);
    harmonics.stoppedWithTheirSounds();
    harmonics.alone();
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(note -> note.note().address()), harmonics.heard);
  }

  private static int distance(HeardNote lower, HeardNote upper) {
    return upper.printed().midi() - lower.printed().midi();
  }

  private boolean isOpen(HeardNote note) {
    return nodes.isOpen(note.printed(), note.marks().string());
  }

  private void pairs(BiPredicate<HeardNote, HeardNote> fit) {
    for (HeardNote upper : List.copyOf(left)) {
      if (upper.sign().touched()) {
        left.stream()
            .filter(base -> base.sign().mayBeStoppedUnder(upper.sign()))
            .filter(base -> fit.test(base, upper) && mayPair(base, upper))
            .findFirst()
            .ifPresent(base -> pair(base, upper));
      }
    }
  }

  // A natural harmonic beside a note that is stopped is a double stop.
  private boolean mayPair(HeardNote base, HeardNote upper) {
    boolean natural = base.sign().natural() || upper.sign().natural();
    return !natural || isOpen(base.with(upper));
  }

  /** Whether the signs themselves tell which is touched and which is not. */
  private static boolean areNamed(HeardNote base, HeardNote upper) {
    return base.sign().named().isPresent() && upper.sign().named().isPresent();
  }

  private void pair(HeardNote base, HeardNote upper) {
    over(base.with(upper), base.printed(), upper.printed())
        .ifPresent(
            both -> {
              left.remove(base);
              left.remove(upper);
              take(both.withFinger(finger(both.marks(), base.marks(), upper.marks())));
            });
  }

  // The finger that a plan shows is the one that stops, or the one on the open string.
  private static Optional<String> finger(Marks both, Marks base, Marks upper) {
    boolean natural = both.harmonic().map(Harmonic::kind).equals(Optional.of(Kind.NATURAL));
    return natural
        ? upper.finger().or(() -> base.finger().filter(finger -> !finger.equals("0")))
        : base.finger();
  }

  /** Takes the notes whose touched place shows from the distance of the sound. */
  private void stoppedWithTheirSounds() {
    for (HeardNote base : List.copyOf(left)) {
      if (base.sign().present() && base.sign().role() == Role.STOPPED) {
        left.stream()
            .filter(sound -> sound.sign().maySound())
            .flatMap(sound -> NaturalNodes.sounding(distance(base, sound)).stream())
            .map(NaturalNodes::place)
            .flatMap(touch -> NaturalNodes.above(base.printed(), touch).stream())
            .flatMap(touched -> over(base, base.printed(), touched).stream())
            .findFirst()
            .ifPresent(
                harmonic -> {
                  left.remove(base);
                  take(harmonic);
                });
      }
    }
  }

  private void alone() {
    for (HeardNote note : List.copyOf(left)) {
      if (note.sign().present() && note.sign().role() != Role.SOUNDING) {
        left.remove(note);
        take(note.sign().role() == Role.TOUCHED ? touched(note) : stopped(note));
      }
    }
    for (HeardNote note : left) {
      heard.add(note.sign().present() ? sounding(note) : note);
    }
    left.clear();
  }

  private HeardNote touched(HeardNote note) {
    Optional<HeardNote> artificial =
        note.sign().artificial()
            ? below(note, FOURTH).flatMap(stopped -> over(note, stopped, note.printed()))
            : Optional.empty();
    return artificial
        .or(() -> onOpenString(note))
        .or(() -> namedSound().map(sound -> note.harmonic(sound.printed(), touchedAt(note))))
        .orElseGet(() -> asWritten(note));
  }

  private Optional<HeardNote> onOpenString(HeardNote note) {
    return nodes
        .touched(note.printed(), note.marks().string(), this::isShown)
        .map(
            touch ->
                note.harmonic(
                    touch.sound(),
                    new Harmonic(
                        Kind.NATURAL,
                        Optional.of(note.printed()),
                        Optional.of(touch.string().pitch()))));
  }

  private static Harmonic touchedAt(HeardNote note) {
    return new Harmonic(Kind.NATURAL, Optional.of(note.printed()), Optional.empty());
  }

  private boolean isShown(int midi) {
    return left.stream().anyMatch(note -> note.sign().maySound() && note.printed().midi() == midi);
  }

  private HeardNote stopped(HeardNote note) {
    boolean open = isOpen(note);
    if (note.sign().natural() && !open) {
      return asWritten(note);
    }
    int touch = open && !note.sign().artificial() ? Pitch.OCTAVE : FOURTH;
    return NaturalNodes.above(note.printed(), touch)
        .flatMap(touched -> over(note, note.printed(), touched))
        .orElseGet(() -> asWritten(note));
  }

  private HeardNote sounding(HeardNote note) {
    // A mere circle over a note that is no harmonic of any string, but an open string: that is
    // meant.
    boolean mere = note.sign().kind().isEmpty();
    if (mere && isOpen(note) && !nodes.sound(note.printed())) {
      return note.withFinger(note.marks().finger().or(() -> Optional.of("0")));
    }
    Optional<Pitch> base = note.sign().artificial() ? below(note, TWO_OCTAVES) : Optional.empty();
    return base.flatMap(
            stopped ->
                NaturalNodes.above(stopped, FOURTH)
                    .flatMap(touched -> over(note, stopped, touched)))
        .orElseGet(() -> asWritten(note));
  }

  private Optional<Pitch> below(HeardNote note, int semitones) {
    return NaturalNodes.above(note.printed(), -semitones)
        .filter(pitch -> pitch.midi() >= nodes.lowest().midi());
  }

  private static HeardNote asWritten(HeardNote note) {
    return note.harmonic(note.printed(), Harmonic.NATURAL);
  }

  /** The note as the harmonic that is touched so, if a node lies there. */
  private Optional<HeardNote> over(HeardNote note, Pitch stopped, Pitch touched) {
    Kind kind = nodes.isOpen(stopped, note.marks().string()) ? Kind.NATURAL : Kind.ARTIFICIAL;
    return NaturalNodes.at(touched.midi() - stopped.midi())
        .flatMap(node -> NaturalNodes.above(stopped, NaturalNodes.sounds(node)))
        .map(
            sound ->
                note.harmonic(
                    sound, new Harmonic(kind, Optional.of(touched), Optional.of(stopped))));
  }

  /** Takes a harmonic, and the note that prints its sound. */
  private void take(HeardNote harmonic) {
    Optional<HeardNote> sound =
        left.stream()
            .filter(note -> note.sign().maySound())
            .filter(note -> note.printed().midi() == harmonic.sounding().midi())
            .findFirst()
            .or(this::namedSound);
    sound.ifPresent(left::remove);
    heard.add(sound.map(harmonic::with).orElse(harmonic));
  }

  private Optional<HeardNote> namedSound() {
    return left.stream()
        .filter(note -> note.sign().named().equals(Optional.of(Role.SOUNDING)))
        .findFirst();
  }
}
