package fingering.abc;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.MusicReader;
import fingering.abc.reading.Tune;
import fingering.abc.reading.TuneSize;
import fingering.abc.reading.TuneSource;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.TuneFault;
import fingering.abc.xml.TuneXml;
import java.util.Comparator;

/**
 * A tune converted to MusicXML.
 *
 * @param musicXml the text of a partwise score with one part for each voice
 * @param remarks assumptions, omissions and repairs, one sentence each, without full stop
 * @param text places in the text of the tune
 */
public record TuneScore(String musicXml, ImmutableList<String> remarks, TuneText text) {

  /** Creates a tune from its score alone. */
  public TuneScore(String musicXml, ImmutableList<String> remarks) {
    this(
        musicXml,
        remarks,
        new TuneText(ImmutableList.of(), ImmutableList.of(), ImmutableList.of()));
  }

  /**
   * Converts a tune to MusicXML.
   *
   * @throws AbcException if it has no note, or too many measures or notes
   */
  static TuneScore of(TuneSource source, TuneSize size) {
    Tune tune = MusicReader.read(source, size);
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    remarks.addAll(source.remarks());
    remarks.addAll(tune.remarks());
    return new TuneScore(TuneXml.of(tune), remarks.build(), text(source, tune));
  }

  private static TuneText text(TuneSource source, Tune tune) {
    Tune.Voice first = tune.voices().get(0);
    return new TuneText(
        tune.faults().stream()
            .sorted(Comparator.comparingInt(TuneFault::line).thenComparingInt(TuneFault::column))
            .collect(ImmutableList.toImmutableList()),
        first.measures().stream()
            .map(
                one ->
                    new TuneText.TypedMeasure(
                        one.number(),
                        Integer.parseInt(one.number()) < first.header().firstMeasure(),
                        one.place().line(),
                        one.place().column(),
                        one.fits()))
            .collect(ImmutableList.toImmutableList()),
        ImmutableList.<String>builder().addAll(source.remarks()).addAll(tune.general()).build());
  }
}
