package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Maps;
import fingering.music.print.Accidental;
import fingering.music.print.PrintedNote.OrnamentAccidental;
import fingering.music.print.PrintedNote.Sign;
import fingering.music.print.Side;
import fingering.musicxml.element.HarmonicSign;
import fingering.musicxml.element.HarmonicSign.Role;
import jakarta.xml.bind.JAXBElement;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.AccidentalMark;
import org.audiveris.proxymusic.Arpeggiate;
import org.audiveris.proxymusic.Articulations;
import org.audiveris.proxymusic.BreathMark;
import org.audiveris.proxymusic.Caesura;
import org.audiveris.proxymusic.EmptyLine;
import org.audiveris.proxymusic.EmptyPlacement;
import org.audiveris.proxymusic.EmptyTrillSound;
import org.audiveris.proxymusic.Fermata;
import org.audiveris.proxymusic.Harmonic;
import org.audiveris.proxymusic.HorizontalTurn;
import org.audiveris.proxymusic.Mordent;
import org.audiveris.proxymusic.NonArpeggiate;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.UpDown;
import org.audiveris.proxymusic.UprightInverted;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** Reads the signs at a note: articulations, ornaments, bowings and others. */
final class PrintedSigns {
  private static final ImmutableMap<String, Sign> NAMES =
      ImmutableMap.<String, Sign>builder()
          .put("staccato", Sign.STACCATO)
          .put("staccatissimo", Sign.STACCATISSIMO)
          .put("spiccato", Sign.STACCATISSIMO)
          .put("accent", Sign.ACCENT)
          .put("soft-accent", Sign.SOFT_ACCENT)
          .put("strong-accent", Sign.MARCATO)
          .put("tenuto", Sign.TENUTO)
          .put("breath-mark", Sign.BREATH)
          .put("caesura", Sign.CAESURA)
          .put("trill-mark", Sign.TRILL)
          .put("turn", Sign.TURN)
          .put("delayed-turn", Sign.TURN)
          .put("inverted-turn", Sign.INVERTED_TURN)
          .put("delayed-inverted-turn", Sign.INVERTED_TURN)
          .put("mordent", Sign.MORDENT)
          .put("inverted-mordent", Sign.SHORT_TRILL)
          .put("stopped", Sign.LEFT_PLUCKED)
          .put("snap-pizzicato", Sign.SNAP_PIZZICATO)
          .put("up-bow", Sign.UP_BOW)
          .put("down-bow", Sign.DOWN_BOW)
          .buildOrThrow();

  private final Note note;
  private final Map<Sign, Side> signs = new EnumMap<>(Sign.class);
  private final ImmutableList.Builder<OrnamentAccidental> accidentals = ImmutableList.builder();

  PrintedSigns(Note note) {
    this.note = note;
    for (Notations notations : note.getNotations()) {
      if (notations.getPrintObject() != YesNo.NO) {
        notations.getTiedOrSlurOrTuplet().forEach(this::add);
      }
    }
  }

  ImmutableMap<Sign, Side> signs() {
    return Maps.immutableEnumMap(signs);
  }

  ImmutableList<OrnamentAccidental> ornamentAccidentals() {
    return accidentals.build();
  }

  private void add(Object notation) {
    if (notation instanceof Articulations articulations) {
      addAll(articulations.getAccentOrStrongAccentOrStaccato());
    } else if (notation instanceof Ornaments ornaments) {
      addAll(ornaments.getTrillMarkOrTurnOrDelayedTurn());
    } else if (notation instanceof Technical technical) {
      addAll(technical.getUpBowOrDownBowOrHarmonic());
    } else if (notation instanceof Fermata fermata) {
      boolean inverted = fermata.getType() == UprightInverted.INVERTED;
      put(inverted ? Sign.INVERTED_FERMATA : Sign.FERMATA, inverted ? Side.BELOW : Side.ABOVE);
    } else if (notation instanceof Arpeggiate arpeggio) {
      put(
          arpeggio.getDirection() == UpDown.UP
              ? Sign.ARPEGGIO_UP
              : arpeggio.getDirection() == UpDown.DOWN ? Sign.ARPEGGIO_DOWN : Sign.ARPEGGIO,
          Side.AUTO);
    } else if (notation instanceof NonArpeggiate) {
      put(Sign.NO_ARPEGGIO, Side.AUTO);
    } else if (notation instanceof AccidentalMark mark) {
      accidental(mark);
    }
  }

  private void addAll(List<JAXBElement<?>> elements) {
    for (JAXBElement<?> element : elements) {
      String name = element.getName().getLocalPart();
      Side side = Sides.of(placement(element.getValue()));
      Optional.ofNullable(NAMES.get(name)).ifPresent(sign -> put(sign, side));
      if (name.equals("detached-legato")) {
        put(Sign.TENUTO, side);
        put(Sign.STACCATO, side);
      } else if (element.getValue() instanceof Harmonic harmonic) {
        harmonic(harmonic, side);
      } else if (element.getValue() instanceof AccidentalMark mark) {
        accidental(mark);
      }
    }
  }

  private void put(Sign sign, Side side) {
    signs.putIfAbsent(sign, side);
  }

  // The circle stands over a note that sounds as printed. A diamond, and the stopped note of an
  // artificial harmonic, have none (common practice, no source).
  private void harmonic(Harmonic harmonic, Side side) {
    HarmonicSign sign = HarmonicSign.of(note, Optional.of(harmonic));
    boolean stopped = sign.artificial() && sign.role() != Role.SOUNDING;
    if (harmonic.getPrintObject() != YesNo.NO && !sign.diamond() && !stopped) {
      put(Sign.HARMONIC, side);
    }
  }

  private void accidental(AccidentalMark mark) {
    PrintedNotes.kind(mark.getValue())
        .ifPresent(
            kind ->
                accidentals.add(
                    new OrnamentAccidental(
                        new Accidental(
                            kind,
                            false,
                            mark.getParentheses() == YesNo.YES || mark.getBracket() == YesNo.YES),
                        Sides.of(mark.getPlacement()))));
  }

  private static @Nullable AboveBelow placement(@Nullable Object element) {
    if (element instanceof EmptyPlacement sign) {
      return sign.getPlacement();
    } else if (element instanceof EmptyTrillSound sign) {
      return sign.getPlacement();
    } else if (element instanceof HorizontalTurn turn) {
      return turn.getPlacement();
    } else if (element instanceof Mordent mordent) {
      return mordent.getPlacement();
    } else if (element instanceof Harmonic harmonic) {
      return harmonic.getPlacement();
    } else if (element instanceof EmptyLine line) {
      return line.getPlacement();
    } else if (element instanceof BreathMark breath) {
      return breath.getPlacement();
    }
    return element instanceof Caesura caesura ? caesura.getPlacement() : null;
  }
}
