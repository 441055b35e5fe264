package fingering.abc;

import com.google.common.collect.ImmutableList;
import fingering.abc.reading.MusicReader;
import fingering.abc.reading.Tune;
import fingering.abc.reading.TuneHeader;
import fingering.abc.reading.TuneSource;
import fingering.abc.syntax.AbcException;
import fingering.abc.syntax.LineCursor;
import fingering.abc.syntax.SourceLine;
import fingering.abc.xml.TuneXml;

/**
 * A tune converted to MusicXML.
 *
 * @param musicXml the text of a partwise score with one part
 * @param remarks assumptions and omissions, one sentence each, without full stop
 */
public record TuneScore(String musicXml, ImmutableList<String> remarks) {

  /**
   * Converts a tune to MusicXML.
   *
   * @throws AbcException if it cannot be read
   */
  static TuneScore of(TuneSource source) {
    TuneHeader header = TuneHeader.read(source);
    SourceLine last = source.lines().get(source.lines().size() - 1);
    Tune tune = MusicReader.read(header, new LineCursor(last, last.text().length()));
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    remarks.addAll(tune.remarks());
    source
        .leftOver()
        .ifPresent(
            line ->
                remarks.add(
                    "the tune ends at an empty line; the text from line %d on is left out"
                        .formatted(line.number())));
    return new TuneScore(TuneXml.of(tune), remarks.build());
  }
}
