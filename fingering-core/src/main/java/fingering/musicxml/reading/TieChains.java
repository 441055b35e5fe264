package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.timeline.PartTimeline.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Joins tied notes. */
final class TieChains {

  /** A note and the notes tied to it. */
  static final class Chain {
    private final SoundingNote first;
    private String voice;
    private BigFraction end;
    private BigFraction length;

    private Chain(SoundingNote first) {
      this.first = first;
      voice = first.note().voice();
      end = first.note().end();
      length = first.note().length();
    }

    /** Returns the first note. */
    SoundingNote first() {
      return first;
    }

    /** Returns the end of the last note, in quarter notes from the start of the part. */
    BigFraction end() {
      return end;
    }

    /** Returns the length of all notes together, in quarter notes. */
    BigFraction length() {
      return length;
    }

    private void extend(WrittenNote note) {
      voice = note.voice();
      end = note.end();
      length = end.subtract(first.note().start());
    }
  }

  /**
   * The notes that begin at a slot.
   *
   * @param slot index of the slot in the part
   * @param start quarter notes from the start of the part
   * @param grace whether they are grace notes
   * @param chains the notes, at least one, in document order
   */
  record Onset(int slot, BigFraction start, boolean grace, ImmutableList<Chain> chains) {}

  private record Key(int midi, BigFraction time) {}

  private final Map<Key, List<Chain>> open = new HashMap<>();

  private TieChains() {}

  /**
   * Joins the notes of a part.
   *
   * @param reading returns the sounding notes of a slot, in document order
   * @return the slots at which a note begins, in order of time
   */
  static ImmutableList<Onset> join(
      ImmutableList<Slot> slots, Function<Slot, ImmutableList<SoundingNote>> reading) {
    TieChains ties = new TieChains();
    ImmutableList.Builder<Onset> all = ImmutableList.builder();
    for (int i = 0; i < slots.size(); i++) {
      Slot slot = slots.get(i);
      ImmutableList.Builder<Chain> starting = ImmutableList.builder();
      for (SoundingNote note : reading.apply(slot)) {
        ties.add(note).ifPresent(starting::add);
      }
      ImmutableList<Chain> chains = starting.build();
      if (!chains.isEmpty()) {
        all.add(new Onset(i, slot.start(), slot.grace(), chains));
      }
    }
    return all.build();
  }

  /** Adds a note. Returns its chain; empty if it only continues an earlier one. */
  private Optional<Chain> add(SoundingNote played) {
    WrittenNote note = played.note();
    if (note.grace()) {
      return Optional.of(new Chain(played));
    }
    // A tied harmonic need not be printed as a harmonic again, so the printed pitches are compared.
    int midi = played.printed().midi();
    Optional<Chain> before =
        played.tieStop() ? takeOpen(new Key(midi, note.start()), note.voice()) : Optional.empty();
    before.ifPresent(held -> held.extend(note));
    Chain chain = before.orElseGet(() -> new Chain(played));
    if (played.tieStart()) {
      open(midi, chain);
      // The other notes of a harmonic need not be printed as such again either.
      played.tiedOthers().forEach(other -> open(other, chain));
    }
    return before.isPresent() ? Optional.empty() : Optional.of(chain);
  }

  private void open(int midi, Chain chain) {
    open.computeIfAbsent(new Key(midi, chain.end), key -> new ArrayList<>(2)).add(chain);
  }

  private Optional<Chain> takeOpen(Key key, String voice) {
    List<Chain> chains = open.getOrDefault(key, List.of());
    if (chains.isEmpty()) {
      return Optional.empty();
    }
    Chain chain =
        chains.stream().filter(c -> c.voice.equals(voice)).findFirst().orElse(chains.get(0));
    chains.remove(chain);
    return Optional.of(chain);
  }
}
