package fingering.musicxml.element;

import fingering.music.Harmonic.Kind;
import java.util.Optional;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Notehead;
import org.audiveris.proxymusic.NoteheadValue;
import org.audiveris.proxymusic.SymbolSize;
import org.audiveris.proxymusic.YesNo;

/**
 * How the print of a note speaks of a harmonic (MusicXML 4.0, elements harmonic and notehead).
 *
 * @param marked whether it bears the sign of a harmonic
 * @param kind natural or artificial, where the sign says so
 * @param named which pitch of the harmonic it is, where the sign says so
 * @param diamond whether its head is a diamond
 * @param small whether its head stands in parentheses or is as small as a cue
 */
public record HarmonicSign(
    boolean marked, Optional<Kind> kind, Optional<Role> named, boolean diamond, boolean small) {

  /** Which pitch of a harmonic a note shows. */
  public enum Role {
    /** What is stopped, or the open string. */
    STOPPED,
    /** The place that is touched. */
    TOUCHED,
    /** What is heard. */
    SOUNDING
  }

  private static final HarmonicSign NONE =
      new HarmonicSign(false, Optional.empty(), Optional.empty(), false, false);

  /**
   * Reads the head of a note.
   *
   * @param sign the sign of a harmonic at it
   */
  public static HarmonicSign of(Note note, Optional<org.audiveris.proxymusic.Harmonic> sign) {
    boolean diamond = note.getNotehead() != null && isDiamond(note.getNotehead());
    boolean small = isSmall(note);
    return sign.isEmpty() && !diamond && !small
        ? NONE
        : new HarmonicSign(
            sign.isPresent(),
            sign.flatMap(HarmonicSign::kind),
            sign.flatMap(HarmonicSign::role),
            diamond,
            small);
  }

  private static boolean isDiamond(Notehead head) {
    // SMuFL's glyphs noteheadDiamondWhole, noteheadDiamondHalf ... under the value "other".
    return head.getValue() == NoteheadValue.DIAMOND
        || (head.getSmufl() != null && head.getSmufl().startsWith("noteheadDiamond"));
  }

  private static boolean isSmall(Note note) {
    boolean parenthesised =
        note.getNotehead() != null && note.getNotehead().getParentheses() == YesNo.YES;
    return parenthesised
        || (note.getType() != null
            && note.getGrace() == null
            && note.getType().getSize() == SymbolSize.CUE);
  }

  private static Optional<Kind> kind(org.audiveris.proxymusic.Harmonic sign) {
    return sign.getArtificial() != null
        ? Optional.of(Kind.ARTIFICIAL)
        : Optional.ofNullable(sign.getNatural()).map(natural -> Kind.NATURAL);
  }

  private static Optional<Role> role(org.audiveris.proxymusic.Harmonic sign) {
    if (sign.getBasePitch() != null) {
      return Optional.of(Role.STOPPED);
    }
    if (sign.getTouchingPitch() != null) {
      return Optional.of(Role.TOUCHED);
    }
    return Optional.ofNullable(sign.getSoundingPitch()).map(sounding -> Role.SOUNDING);
  }

  /** Whether the note by itself is print of a harmonic. */
  public boolean present() {
    return marked || diamond;
  }

  /** Whether the sign calls the harmonic artificial. */
  public boolean artificial() {
    return kind.equals(Optional.of(Kind.ARTIFICIAL));
  }

  /** Whether the sign calls the harmonic natural. */
  public boolean natural() {
    return kind.equals(Optional.of(Kind.NATURAL));
  }

  /** Which pitch of its harmonic the note shows if it stands alone. */
  public Role role() {
    return named.orElse(diamond ? Role.TOUCHED : artificial() ? Role.STOPPED : Role.SOUNDING);
  }

  /** Whether it shows where a finger touches. */
  public boolean touched() {
    return present() && role() == Role.TOUCHED;
  }

  /** Whether it may show what is stopped below a finger that touches as this one does. */
  public boolean mayBeStoppedUnder(HarmonicSign upper) {
    return named.map(role -> role == Role.STOPPED).orElse(!diamond && (!small || upper.small));
  }

  /** Whether it may show, beside the notes that are played, what is heard. */
  public boolean maySound() {
    return named.map(role -> role == Role.SOUNDING).orElse(small && !diamond);
  }
}
