package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.music.Harmonic;
import fingering.musicxml.element.WrittenNote;
import fingering.musicxml.reading.TieChains.Chain;
import fingering.musicxml.reading.TieChains.Struck;
import fingering.tables.Instrument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Tells what is heard where a part prints harmonics. */
final class HarmonicReading {
  private final NaturalNodes nodes;
  private final Function<WrittenNote, HeardNote> asPrinted;

  /**
   * Reads for an instrument.
   *
   * @param asPrinted transposes a note
   */
  HarmonicReading(Instrument instrument, Function<WrittenNote, HeardNote> asPrinted) {
    nodes = new NaturalNodes(instrument);
    this.asPrinted = asPrinted;
  }

  /** The notes that are heard where these, in document order, begin together. */
  ImmutableList<HeardNote> read(List<WrittenNote> notes) {
    ImmutableList.Builder<HeardNote> heard = ImmutableList.builder();
    int i = 0;
    while (i < notes.size()) {
      int next = i + 1;
      while (next < notes.size() && notes.get(next).chord()) {
        next++;
      }
      List<HeardNote> chord = new ArrayList<>(next - i);
      boolean plain = true;
      for (WrittenNote note : notes.subList(i, next)) {
        chord.add(asPrinted.apply(note));
        plain &= !note.sign().present();
      }
      heard.addAll(plain ? chord : ChordHarmonics.read(chord, nodes));
      i = next;
    }
    return heard.build();
  }

  private static boolean liesNowhere(HeardNote note) {
    return note.sign().touched() && note.marks().harmonic().flatMap(Harmonic::touched).isEmpty();
  }

  /** What was assumed of these notes. */
  static Optional<String> remark(List<Struck> starting) {
    int nowhere = 0;
    for (Struck each : starting) {
      for (Chain chain : each.chains()) {
        nowhere += liesNowhere(chain.first()) ? 1 : 0;
      }
    }
    return nowhere == 0
        ? Optional.empty()
        : Optional.of(
            nowhere == 1
                ? "1 diamond lies at no node of a string; it is taken to sound as written"
                : nowhere
                    + " diamonds lie at no node of a string; they are taken to sound as written");
  }
}
