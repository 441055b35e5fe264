package fingering.abc;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.MusicReader;
import fingering.abc.reading.Tune;
import fingering.abc.reading.TuneSize;
import fingering.abc.reading.TuneSource;
import fingering.abc.syntax.AbcException;
import fingering.abc.xml.TuneXml;

/**
 * A tune converted to MusicXML.
 *
 * @param musicXml the text of a partwise score with one part for each voice
 * @param remarks assumptions, omissions and repairs, one sentence each, without full stop
 */
public record TuneScore(String musicXml, ImmutableList<String> remarks) {

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
    return new TuneScore(TuneXml.of(tune), remarks.build());
  }
}
