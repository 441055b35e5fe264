package fingering.music;

import com.google.common.collect.ImmutableList;
import fingering.tables.Letter;
import java.math.BigInteger;

/** Key signatures, as a number of sharps, negative for flats. */
public final class KeySignature {

  /** The letters in the order of sharps. */
  private static final ImmutableList<Letter> ORDER_OF_SHARPS =
      ImmutableList.of(Letter.F, Letter.C, Letter.G, Letter.D, Letter.A, Letter.E, Letter.B);

  /** The most sharps or flats: each letter altered twice. */
  private static final int MAX_SIGNS = 14;

  private KeySignature() {}

  /** The number of sharps written in a score, negative for flats, limited to -14 to 14. */
  public static int fifths(BigInteger written) {
    return written
        .max(BigInteger.valueOf(-MAX_SIGNS))
        .min(BigInteger.valueOf(MAX_SIGNS))
        .intValue();
  }

  /**
   * Semitones by which a key signature raises a letter, negative if it lowers it.
   *
   * @param fifths number of sharps, negative for flats
   */
  public static int alter(Letter letter, int fifths) {
    int index = ORDER_OF_SHARPS.indexOf(letter);
    return Math.floorDiv(fifths - index + ORDER_OF_SHARPS.size() - 1, ORDER_OF_SHARPS.size());
  }
}
