package fingering.music;

import com.google.common.collect.ImmutableList;
import fingering.tables.Letter;
import java.math.BigInteger;

/** What a key signature does to a letter. */
public final class KeySignature {

  /** The letters in the order in which key signatures take them as sharps. */
  private static final ImmutableList<Letter> SHARPS =
      ImmutableList.of(Letter.F, Letter.C, Letter.G, Letter.D, Letter.A, Letter.E, Letter.B);

  /** Every letter raised or lowered twice: no key goes further. */
  private static final int MOST = 14;

  private KeySignature() {}

  /** The sharps, or flats below 0, that a score tells; no more than there are keys. */
  public static int fifths(BigInteger told) {
    return told.max(BigInteger.valueOf(-MOST)).min(BigInteger.valueOf(MOST)).intValue();
  }

  /**
   * Semitones by which a letter is raised.
   *
   * @param fifths sharps, or flats below 0, of the key signature
   */
  public static int alter(Letter letter, int fifths) {
    int turn = SHARPS.indexOf(letter);
    return Math.floorDiv(fifths - turn + SHARPS.size() - 1, SHARPS.size());
  }
}
