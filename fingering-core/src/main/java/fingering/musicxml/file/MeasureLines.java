package fingering.musicxml.file;

import com.google.common.collect.ImmutableList;
import com.google.common.primitives.ImmutableIntArray;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.xml.XmlCursor;
import fingering.musicxml.xml.XmlElement;
import java.util.Optional;

/**
 * The lines of a score's text on which its measures begin.
 *
 * @param parts for each part, in order, the lines of its measures, from 1
 */
public record MeasureLines(ImmutableList<ImmutableIntArray> parts) {

  /**
   * Reads the lines from the text of a score-partwise file.
   *
   * @throws UnreadableScoreException if the text is not well-formed XML
   */
  public static MeasureLines of(String xml) {
    ImmutableList.Builder<ImmutableIntArray> parts = ImmutableList.builder();
    XmlCursor cursor = new XmlCursor(xml);
    cursor.element(
        name -> {
          if (!name.equals("part")) {
            return cursor.skip();
          }
          ImmutableIntArray.Builder lines = ImmutableIntArray.builder();
          XmlElement part =
              cursor.element(
                  child -> {
                    if (child.equals("measure")) {
                      lines.add(cursor.line());
                    }
                    return cursor.skip();
                  });
          parts.add(lines.build());
          return part;
        });
    return new MeasureLines(parts.build());
  }

  /**
   * Returns the line on which a measure begins; empty if there is no such measure.
   *
   * @param part the number of the part, from 1
   * @param measure the index of the measure in the part, from 0
   */
  public Optional<Integer> line(int part, int measure) {
    return part <= parts.size() && measure < parts.get(part - 1).length()
        ? Optional.of(parts.get(part - 1).get(measure))
        : Optional.empty();
  }
}
