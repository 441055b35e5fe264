package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.TieChains.Chain;
import fingering.musicxml.TieChains.Struck;
import fingering.tables.Instrument;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Tells what is heard where a part prints harmonics. */
final class HarmonicReading {
  private final NaturalNodes nodes;
  private final Function<WrittenNote, Played> asPrinted;

  /**
   * Reads for an instrument.
   *
   * @param asPrinted transposes a note
   */
  HarmonicReading(Instrument instrument, Function<WrittenNote, Played> asPrinted) {
    nodes = new NaturalNodes(instrument);
    this.asPrinted = asPrinted;
  }

  /** The notes that are heard where these, in document order, begin together. */
  ImmutableList<Played> read(List<WrittenNote> notes) {
    ImmutableList.Builder<Played> heard = ImmutableList.builder();
    int i = 0;
    while (i < notes.size()) {
      int next = i + 1;
      while (next < notes.size() && notes.get(next).chord()) {
        next++;
      }
      List<Played> chord = notes.subList(i, next).stream().map(asPrinted).toList();
      boolean plain = chord.stream().noneMatch(note -> note.sign().present());
      heard.addAll(plain ? chord : ChordHarmonics.read(chord, nodes));
      i = next;
    }
    return heard.build();
  }

  /** What was assumed of these notes. */
  static Optional<String> remark(List<Struck> struck) {
    long nowhere =
        struck.stream()
            .flatMap(each -> each.chains().stream())
            .map(Chain::first)
            .filter(note -> note.sign().touched())
            .filter(note -> note.marks().harmonic().flatMap(how -> how.touched()).isEmpty())
            .count();
    return nowhere == 0
        ? Optional.empty()
        : Optional.of(
            nowhere == 1
                ? "1 diamond lies at no node of a string; it is taken to sound as written"
                : nowhere
                    + " diamonds lie at no node of a string; they are taken to sound as written");
  }
}
