package fingering.musicxml.writing;

import com.google.common.collect.ImmutableList;
import fingering.music.Tempo;
import fingering.musicxml.xml.XmlText;
import java.util.Optional;

/**
 * Simple music to be written as a new score: one part in one voice, in one key, meter and tempo.
 *
 * @param title the title, may be empty
 * @param part the name of the part; that of its instrument lets a reader know it
 * @param octaves octaves from the written to the sounding note: -1 for the double bass, 0 for
 *     others
 * @param tempo the metronome mark at the beginning; empty for none
 * @param fifths sharps of the key signature, or flats below 0; -7 to 7
 * @param beats upper figure of the meter
 * @param beatType lower figure of the meter
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
   * @param clef the clef that holds from here on; empty where it stays
   * @param notes its notes and rests, in order
   */
  public record Measure(Optional<PlainClef> clef, ImmutableList<PlainNote> notes) {}

  private static final int MOST_SIGNS = 7;

  /**
   * Checks the score.
   *
   * @throws IllegalArgumentException if it has no measure, more than seven sharps or flats, or a
   *     title or name that XML cannot carry
   */
  public PlainScore {
    if (measures.isEmpty()) {
      throw new IllegalArgumentException("a score without a measure");
    }
    if (Math.abs(fifths) > MOST_SIGNS) {
      throw new IllegalArgumentException(
          "a key signature has seven sharps or flats at most, not " + Math.abs(fifths));
    }
    if (!XmlText.isLegal(title) || !XmlText.isLegal(part)) {
      throw new IllegalArgumentException("title and part must be printable text");
    }
  }
}
