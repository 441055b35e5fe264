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
 * A tune put into MusicXML.
 *
 * @param musicXml the text of a partwise score of one part
 * @param remarks what was assumed or left out, a sentence each
 */
public record TuneScore(String musicXml, ImmutableList<String> remarks) {

  /**
   * Puts a tune into MusicXML.
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
        .behind()
        .ifPresent(
            line ->
                remarks.add(
                    "the tune ends at an empty line; line %d and what follows is left out"
                        .formatted(line.number())));
    return new TuneScore(TuneXml.of(tune), remarks.build());
  }
}
