package fingering.musicxml.element;

import fingering.music.Harmonic.Kind;
import java.util.Optional;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Notehead;
import org.audiveris.proxymusic.NoteheadValue;
import org.audiveris.proxymusic.SymbolSize;
import org.audiveris.proxymusic.YesNo;

/**
 * The notation of a harmonic at one note (MusicXML 4.0, elements harmonic and notehead).
 *
 * @param marked whether the note has the sign of a harmonic
 * @param kind natural or artificial, if the sign says so
 * @param named the pitch of the harmonic that the note shows, if the sign says so
 * @param diamond whether the notehead is a diamond
 * @param small whether the notehead is in parentheses or of cue size
 */
public record HarmonicSign(
    boolean marked, Optional<Kind> kind, Optional<Role> named, boolean diamond, boolean small) {

  /** The pitch of a harmonic that a note shows. */
  public enum Role {
    /** The stopped note or the open string. */
    STOPPED,
    /** The note at the place that is touched. */
    TOUCHED,
    /** The sounding pitch. */
    SOUNDING
  }

  private static final HarmonicSign NONE =
      new HarmonicSign(false, Optional.empty(), Optional.empty(), false, false);

  /**
   * Reads the notehead and the sign of a note.
   *
   * @param sign the harmonic element of the note
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

  /** Returns whether the note by itself notates a harmonic. */
  public boolean present() {
    return marked || diamond;
  }

  /** Returns whether the sign says that the harmonic is artificial. */
  public boolean artificial() {
    return kind.equals(Optional.of(Kind.ARTIFICIAL));
  }

  /** Returns whether the sign says that the harmonic is natural. */
  public boolean natural() {
    return kind.equals(Optional.of(Kind.NATURAL));
  }

  /** Returns the pitch of the harmonic that the note shows if it is alone. */
  public Role role() {
    return named.orElse(diamond ? Role.TOUCHED : artificial() ? Role.STOPPED : Role.SOUNDING);
  }

  /** Returns whether the note shows where a finger touches. */
  public boolean touched() {
    return present() && role() == Role.TOUCHED;
  }

  /**
   * Returns whether this note may show what is stopped below the touching finger of the upper note.
   */
  public boolean mayBeStoppedUnder(HarmonicSign upper) {
    return named.map(role -> role == Role.STOPPED).orElse(!diamond && (!small || upper.small));
  }

  /** Returns whether the note may show the sounding pitch next to the notes that are played. */
  public boolean maySound() {
    return named.map(role -> role == Role.SOUNDING).orElse(small && !diamond);
  }
}
