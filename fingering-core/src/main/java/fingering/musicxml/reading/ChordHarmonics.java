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
 * Reads the harmonics of a chord, or of a single note (MusicXML 4.0, elements harmonic and
 * notehead). A circle marks the sounding pitch. A diamond shows where a finger touches: above a
 * stopped note of its chord, or otherwise on an open string. If only one note of an artificial
 * harmonic is printed, the touched note is a fourth above the stopped note (common practice).
 */
final class ChordHarmonics {
  private static final int FOURTH = 5;
  private static final int TWO_OCTAVES = 24;

  /**
   * The distance of the touching finger above the stopped note, in semitones; the usual one first.
   */
  private static final ImmutableList<Integer> TOUCHES = ImmutableList.of(FOURTH, 7, 4, 3);

  private final HarmonicNodes nodes;
  private final List<SoundingNote> unread;
  private final List<SoundingNote> result = new ArrayList<>();

  private ChordHarmonics(List<SoundingNote> chord, HarmonicNodes nodes) {
    unread = new ArrayList<>(chord);
    this.nodes = nodes;
  }

  /** Returns the sounding notes of the chord, in document order. */
  static ImmutableList<SoundingNote> read(List<SoundingNote> chord, HarmonicNodes nodes) {
    ChordHarmonics harmonics = new ChordHarmonics(chord, nodes);
    for (int touch : TOUCHES) {
      harmonics.pairs((base, upper) -> distance(base, upper) == touch);
    }
    harmonics.pairs(ChordHarmonics::bothHaveRoles);
    harmonics.stoppedWithSound();
    harmonics.single();
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(note -> note.note().address()), harmonics.result);
  }

  private static int distance(SoundingNote lower, SoundingNote upper) {
    return upper.printed().midi() - lower.printed().midi();
  }

  private boolean isOpen(SoundingNote note) {
    return nodes.isOpen(note.printed(), note.marks().string());
  }

  private void pairs(BiPredicate<SoundingNote, SoundingNote> fit) {
    for (SoundingNote upper : List.copyOf(unread)) {
      if (upper.sign().touched()) {
        unread.stream()
            .filter(base -> base.sign().mayBeStoppedUnder(upper.sign()))
            .filter(base -> fit.test(base, upper) && mayPair(base, upper))
            .findFirst()
            .ifPresent(base -> pair(base, upper));
      }
    }
  }

  // A natural harmonic next to a stopped note is a double stop.
  private boolean mayPair(SoundingNote base, SoundingNote upper) {
    boolean natural = base.sign().natural() || upper.sign().natural();
    return !natural || isOpen(base.with(upper));
  }

  /** Whether both signs say which pitch of the harmonic they show. */
  private static boolean bothHaveRoles(SoundingNote base, SoundingNote upper) {
    return base.sign().named().isPresent() && upper.sign().named().isPresent();
  }

  private void pair(SoundingNote base, SoundingNote upper) {
    over(base.with(upper), base.printed(), upper.printed())
        .ifPresent(
            both -> {
              unread.remove(base);
              unread.remove(upper);
              take(both.withFinger(finger(both.marks(), base.marks(), upper.marks())));
            });
  }

  // A plan shows the finger that stops, or the one that touches the open string.
  private static Optional<String> finger(Marks both, Marks base, Marks upper) {
    boolean natural = both.harmonic().map(Harmonic::kind).equals(Optional.of(Kind.NATURAL));
    return natural
        ? upper.finger().or(() -> base.finger().filter(finger -> !finger.equals("0")))
        : base.finger();
  }

  /** Reads stopped notes whose touched place follows from the printed sounding pitch. */
  private void stoppedWithSound() {
    for (SoundingNote base : List.copyOf(unread)) {
      if (base.sign().present() && base.sign().role() == Role.STOPPED) {
        unread.stream()
            .filter(sound -> sound.sign().maySound())
            .flatMap(sound -> HarmonicNodes.sounding(distance(base, sound)).stream())
            .map(HarmonicNodes::place)
            .flatMap(touch -> HarmonicNodes.above(base.printed(), touch).stream())
            .flatMap(touched -> over(base, base.printed(), touched).stream())
            .findFirst()
            .ifPresent(
                harmonic -> {
                  unread.remove(base);
                  take(harmonic);
                });
      }
    }
  }

  private void single() {
    for (SoundingNote note : List.copyOf(unread)) {
      if (note.sign().present() && note.sign().role() != Role.SOUNDING) {
        unread.remove(note);
        take(note.sign().role() == Role.TOUCHED ? touched(note) : stopped(note));
      }
    }
    for (SoundingNote note : unread) {
      result.add(note.sign().present() ? sounding(note) : note);
    }
    unread.clear();
  }

  private SoundingNote touched(SoundingNote note) {
    Optional<SoundingNote> artificial =
        note.sign().artificial()
            ? below(note, FOURTH).flatMap(stopped -> over(note, stopped, note.printed()))
            : Optional.empty();
    return artificial
        .or(() -> onOpenString(note))
        .or(() -> printedSound().map(sound -> note.harmonic(sound.printed(), touchedAt(note))))
        .orElseGet(() -> asWritten(note));
  }

  private Optional<SoundingNote> onOpenString(SoundingNote note) {
    return nodes
        .touched(note.printed(), note.marks().string(), this::isPrintedAsSound)
        .map(
            touch ->
                note.harmonic(
                    touch.sound(),
                    new Harmonic(
                        Kind.NATURAL,
                        Optional.of(note.printed()),
                        Optional.of(touch.string().pitch()))));
  }

  private static Harmonic touchedAt(SoundingNote note) {
    return new Harmonic(Kind.NATURAL, Optional.of(note.printed()), Optional.empty());
  }

  private boolean isPrintedAsSound(int midi) {
    return unread.stream()
        .anyMatch(note -> note.sign().maySound() && note.printed().midi() == midi);
  }

  private SoundingNote stopped(SoundingNote note) {
    boolean open = isOpen(note);
    if (note.sign().natural() && !open) {
      return asWritten(note);
    }
    int touch = open && !note.sign().artificial() ? Pitch.OCTAVE : FOURTH;
    return HarmonicNodes.above(note.printed(), touch)
        .flatMap(touched -> over(note, note.printed(), touched))
        .orElseGet(() -> asWritten(note));
  }

  private SoundingNote sounding(SoundingNote note) {
    // A plain circle over an open string that is not a harmonic of any string means the open
    // string.
    boolean plain = note.sign().kind().isEmpty();
    if (plain && isOpen(note) && !nodes.isHarmonic(note.printed())) {
      return note.withFinger(note.marks().finger().or(() -> Optional.of("0")));
    }
    Optional<Pitch> base = note.sign().artificial() ? below(note, TWO_OCTAVES) : Optional.empty();
    return base.flatMap(
            stopped ->
                HarmonicNodes.above(stopped, FOURTH)
                    .flatMap(touched -> over(note, stopped, touched)))
        .orElseGet(() -> asWritten(note));
  }

  private Optional<Pitch> below(SoundingNote note, int semitones) {
    return HarmonicNodes.above(note.printed(), -semitones)
        .filter(pitch -> pitch.midi() >= nodes.lowest().midi());
  }

  private static SoundingNote asWritten(SoundingNote note) {
    return note.harmonic(note.printed(), Harmonic.NATURAL);
  }

  /** The note as the harmonic with this stopped and touched pitch; empty if there is no node. */
  private Optional<SoundingNote> over(SoundingNote note, Pitch stopped, Pitch touched) {
    Kind kind = nodes.isOpen(stopped, note.marks().string()) ? Kind.NATURAL : Kind.ARTIFICIAL;
    return HarmonicNodes.at(touched.midi() - stopped.midi())
        .flatMap(node -> HarmonicNodes.above(stopped, HarmonicNodes.sounds(node)))
        .map(
            sound ->
                note.harmonic(
                    sound, new Harmonic(kind, Optional.of(touched), Optional.of(stopped))));
  }

  /** Adds a harmonic, and removes the note that prints its sounding pitch. */
  private void take(SoundingNote harmonic) {
    Optional<SoundingNote> sound =
        unread.stream()
            .filter(note -> note.sign().maySound())
            .filter(note -> note.printed().midi() == harmonic.sounding().midi())
            .findFirst()
            .or(this::printedSound);
    sound.ifPresent(unread::remove);
    result.add(sound.map(harmonic::with).orElse(harmonic));
  }

  private Optional<SoundingNote> printedSound() {
    return unread.stream()
        .filter(note -> note.sign().named().equals(Optional.of(Role.SOUNDING)))
        .findFirst();
  }
}
