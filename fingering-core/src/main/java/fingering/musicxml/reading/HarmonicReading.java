package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Harmonic;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.reading.TieChains.Chain;
import fingering.musicxml.reading.TieChains.Onset;
import fingering.tables.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Determines the sounding notes of a part with harmonics. */
final class HarmonicReading {
  private final HarmonicNodes nodes;
  private final Function<WrittenNote, SoundingNote> asPrinted;

  /**
   * Reads for an instrument.
   *
   * @param asPrinted transposes a note
   */
  HarmonicReading(Instrument instrument, Function<WrittenNote, SoundingNote> asPrinted) {
    nodes = new HarmonicNodes(instrument);
    this.asPrinted = asPrinted;
  }

  /**
   * Returns the sounding notes.
   *
   * @param notes notes that begin together, in document order
   */
  ImmutableList<SoundingNote> read(List<WrittenNote> notes) {
    ImmutableList.Builder<SoundingNote> sounding = ImmutableList.builder();
    int i = 0;
    while (i < notes.size()) {
      int next = i + 1;
      while (next < notes.size() && notes.get(next).chord()) {
        next++;
      }
      List<SoundingNote> chord = new ArrayList<>(next - i);
      boolean plain = true;
      for (WrittenNote note : notes.subList(i, next)) {
        chord.add(asPrinted.apply(note));
        plain &= !note.sign().present();
      }
      sounding.addAll(plain ? chord : ChordHarmonics.read(chord, nodes));
      i = next;
    }
    return sounding.build();
  }

  private static boolean hasNoNode(SoundingNote note) {
    return note.sign().touched() && note.marks().harmonic().flatMap(Harmonic::touched).isEmpty();
  }

  /** Returns a remark on assumptions about these notes; empty if there are none. */
  static Optional<String> remark(List<Onset> starting) {
    int withoutNode = 0;
    for (Onset each : starting) {
      for (Chain chain : each.chains()) {
        withoutNode += hasNoNode(chain.first()) ? 1 : 0;
      }
    }
    return withoutNode == 0
        ? Optional.empty()
        : Optional.of(
            withoutNode == 1
                ? "1 diamond notehead is not at a node of any string; it is read at its written pitch"
                : withoutNode
                    + " diamond noteheads are not at a node of any string; they are read at their written pitches");
  }
}
