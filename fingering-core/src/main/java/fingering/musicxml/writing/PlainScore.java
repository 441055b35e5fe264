package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.musicxml.xml.XmlText;
import java.util.Optional;

/**
 * Simple music to be written as a new score: one part with one voice, key, meter and tempo.
 * Immutable.
 *
 * @param title the title, may be empty
 * @param part the name of the part; readers recognise its instrument by it
 * @param octaves octaves from the written to the sounding note: -1 for the double bass, 0 for
 *     others
 * @param tempo the metronome mark at the beginning; empty for none
 * @param fifths sharps of the key signature, negative for flats; -7 to 7
 * @param beats upper number of the meter, 1 or more
 * @param beatType lower number of the meter, a power of two up to 64
 * @param measures the measures, numbered from 1; at least one
 */
public record PlainScore(
    String title,
    String part,
    int octaves,
    Optional<Tempo> tempo,
    int fifths,
    int beats,
    int beatType,
    ImmutableList<Measure> measures) {

  /**
   * A measure.
   *
   * @param clef the clef from here on; empty for no change
   * @param notes its notes and rests, in order
   */
  public record Measure(Optional<PlainClef> clef, ImmutableList<PlainNote> notes) {}

  private static final int MOST_SIGNS = 7;
  private static final int SMALLEST_BEAT = 64;
  private static final int MOST_OCTAVES = 3;

  /**
   * Checks the components.
   *
   * @throws IllegalArgumentException if there is no measure, the meter or key signature is out of
   *     range, the octaves are not -3 to 3, or XML does not allow the title or the name
   */
  public PlainScore {
    if (measures.isEmpty()) {
      throw new IllegalArgumentException("a score needs a measure");
    }
    if (Math.abs(fifths) > MOST_SIGNS) {
      throw new IllegalArgumentException(
          "a key signature has seven sharps or flats at most, not " + Math.abs(fifths));
    }
    if (beats < 1 || beatType < 1 || beatType > SMALLEST_BEAT || Integer.bitCount(beatType) != 1) {
      throw new IllegalArgumentException("%d/%d is not a meter".formatted(beats, beatType));
    }
    if (Math.abs(octaves) > MOST_OCTAVES) {
      throw new IllegalArgumentException("a part cannot transpose by " + octaves + " octaves");
    }
    if (!XmlText.isLegal(title) || !XmlText.isLegal(part)) {
      throw new IllegalArgumentException("title and part must be printable text");
    }
  }
}
