package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.PartTimeline.Slot;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Joins tied notes to one. */
final class TieChains {

  /** A note with all that is tied to it. */
  static final class Chain {
    private final WrittenNote first;
    private final Pitch sounding;
    private String voice;
    private BigFraction end;

    private Chain(WrittenNote first, Pitch sounding) {
      this.first = first;
      this.sounding = sounding;
      voice = first.voice();
      end = first.end();
    }

    /** The note that is struck. */
    WrittenNote first() {
      return first;
    }

    /** Its sounding pitch. */
    Pitch sounding() {
      return sounding;
    }

    /** Where the last note tied to it ends, in quarter notes from the start of the part. */
    BigFraction end() {
      return end;
    }

    private void extend(WrittenNote note) {
      voice = note.voice();
      end = note.end();
    }
  }

  /**
   * The notes struck at a slot.
   *
   * @param slot index of the slot in the part
   * @param start quarter notes from the start of the part
   * @param grace whether they are grace notes
   * @param chains the notes, at least one, in document order
   */
  record Struck(int slot, BigFraction start, boolean grace, ImmutableList<Chain> chains) {}

  private record Key(int midi, BigFraction time) {}

  private final Map<Key, List<Chain>> open = new HashMap<>();

  private TieChains() {}

  /**
   * Joins the notes of a part.
   *
   * @param wanted which notes to read; the others are left out, tied or not
   * @param pitches gives the sounding pitch of a note
   * @return the slots at which a note is struck, in order of time
   */
  static ImmutableList<Struck> join(
      ImmutableList<Slot> slots,
      Predicate<WrittenNote> wanted,
      Function<WrittenNote, Pitch> pitches) {
    TieChains ties = new TieChains();
    ImmutableList.Builder<Struck> all = ImmutableList.builder();
    for (int i = 0; i < slots.size(); i++) {
      Slot slot = slots.get(i);
      ImmutableList.Builder<Chain> struck = ImmutableList.builder();
      for (WrittenNote note : slot.notes()) {
        if (wanted.test(note)) {
          ties.add(note, pitches.apply(note)).ifPresent(struck::add);
        }
      }
      ImmutableList<Chain> chains = struck.build();
      if (!chains.isEmpty()) {
        all.add(new Struck(i, slot.start(), slot.grace(), chains));
      }
    }
    return all.build();
  }

  /** Takes a note; the answer is empty if it only prolongs an earlier one. */
  private Optional<Chain> add(WrittenNote note, Pitch sounding) {
    if (note.grace()) {
      return Optional.of(new Chain(note, sounding));
    }
    Optional<Chain> before =
        note.lines().tieStop()
            ? takeOpen(new Key(sounding.midi(), note.start()), note.voice())
            : Optional.empty();
    Chain chain = before.orElseGet(() -> new Chain(note, sounding));
    chain.extend(note);
    if (note.lines().tieStart()) {
      open.computeIfAbsent(new Key(sounding.midi(), chain.end), key -> new ArrayList<>(2))
          .add(chain);
    }
    return before.isPresent() ? Optional.empty() : Optional.of(chain);
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
