package fingering.abc;

import com.google.common.collect.ImmutableList;

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
    Header header = Header.read(source);
    Line last = source.lines().get(source.lines().size() - 1);
    Tune tune = MusicReader.read(header, new Cursor(last, last.text().length()));
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
