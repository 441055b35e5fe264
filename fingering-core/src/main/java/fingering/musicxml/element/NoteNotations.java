package fingering.musicxml.element;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Range;
import fingering.music.Marks;
import fingering.musicxml.element.WrittenNote.Lines;
import fingering.musicxml.words.PizzicatoWords;
import jakarta.xml.bind.JAXBElement;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.audiveris.proxymusic.AccidentalMark;
import org.audiveris.proxymusic.Articulations;
import org.audiveris.proxymusic.Fingering;
import org.audiveris.proxymusic.Harmonic;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.OtherPlacementText;
import org.audiveris.proxymusic.Slur;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.Tie;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.YesNo;

/** Reads the ties, slurs, fingers and other notations of a note element. */
public final class NoteNotations {
  private static final ImmutableSet<String> ACCENTS = ImmutableSet.of("accent", "strong-accent");

  /**
   * Marks for a short note. Marcato is the upright wedge (MusicXML: strong-accent); the plain
   * accent says nothing about the length.
   */
  private static final ImmutableSet<String> SHORT =
      ImmutableSet.of("staccato", "staccatissimo", "spiccato", "strong-accent");

  /** Marks for a long note. With a dot they ask for portato. */
  private static final ImmutableSet<String> LONG = ImmutableSet.of("tenuto", "detached-legato");

  private static final ImmutableSet<String> FINGERS = ImmutableSet.of("0", "1", "2", "3", "4", "T");

  /** The SMuFL name of the sign. */
  private static final String LEFT_PIZZICATO = "pluckedLeftHandPizzicato";

  private static final Range<BigInteger> STRINGS =
      Range.closed(BigInteger.ONE, BigInteger.valueOf(8));

  private Optional<Ornament> ornament = Optional.empty();
  private final List<AccidentalMark> accidentals = new ArrayList<>();
  private boolean accent;
  private boolean shortened;
  private boolean sustained;
  private Optional<Harmonic> harmonic = Optional.empty();
  private boolean leftPlucked;
  private Optional<Boolean> pizzicato;
  private Optional<String> finger = Optional.empty();
  private OptionalInt string = OptionalInt.empty();
  private boolean tieStop;
  private boolean tieStart;
  private final ImmutableList.Builder<Integer> slurStops = ImmutableList.builder();
  private final ImmutableList.Builder<Integer> slurStarts = ImmutableList.builder();

  /** Reads the notations of a note. */
  public NoteNotations(Note note) {
    pizzicato = Optional.ofNullable(note.getPizzicato()).map(said -> said == YesNo.YES);
    for (Tie tie : note.getTie()) {
      tieStart |= tie.getType() == StartStop.START;
      tieStop |= tie.getType() == StartStop.STOP;
    }
    for (Notations notations : note.getNotations()) {
      notations.getTiedOrSlurOrTuplet().forEach(this::add);
    }
  }

  /**
   * Returns the marks without the pitches of trills and harmonics, which depend on the music around
   * the note.
   */
  public Marks marks() {
    return accent || leftPlucked || finger.isPresent() || string.isPresent()
        ? new Marks(Optional.empty(), accent, Optional.empty(), leftPlucked, finger, string)
        : Marks.NONE;
  }

  /** Returns the trill, or another ornament with an upper note. */
  public Optional<Ornament> ornament() {
    return ornament.map(
        printed -> {
          Ornament altered = printed;
          for (AccidentalMark mark : accidentals) {
            altered = altered.with(mark);
          }
          return altered;
        });
  }

  /** Returns the sign of a harmonic. */
  public Optional<Harmonic> harmonic() {
    return harmonic;
  }

  /** Returns whether the right hand plucks the string, if the note itself says so. */
  public Optional<Boolean> pizzicato() {
    return pizzicato;
  }

  /** Returns whether an articulation mark makes the note short. */
  public boolean detached() {
    return shortened && !sustained;
  }

  /** Returns the ties and slurs. */
  public Lines lines() {
    return new Lines(tieStop, tieStart, slurStops.build(), slurStarts.build());
  }

  private void add(Object notation) {
    if (notation instanceof Tied tied) {
      boolean both = tied.getType() == TiedType.CONTINUE;
      tieStart |= both || tied.getType() == TiedType.START;
      tieStop |= both || tied.getType() == TiedType.STOP;
    } else if (notation instanceof Slur slur) {
      if (slur.getType() == StartStopContinue.START) {
        slurStarts.add(slur.getNumber());
      } else if (slur.getType() == StartStopContinue.STOP) {
        slurStops.add(slur.getNumber());
      }
    } else if (notation instanceof Ornaments ornaments) {
      ornament = ornament.or(() -> Ornament.of(ornaments.getTrillMarkOrTurnOrDelayedTurn()));
    } else if (notation instanceof AccidentalMark mark) {
      accidentals.add(mark);
    } else if (notation instanceof Articulations articulations) {
      List<JAXBElement<?>> signs = articulations.getAccentOrStrongAccentOrStaccato();
      accent |= anyNamed(signs, ACCENTS);
      shortened |= anyNamed(signs, SHORT);
      sustained |= anyNamed(signs, LONG);
    } else if (notation instanceof Technical technical) {
      technical.getUpBowOrDownBowOrHarmonic().forEach(this::addTechnical);
    }
  }

  private static boolean anyNamed(List<JAXBElement<?>> elements, ImmutableSet<String> names) {
    return elements.stream().anyMatch(e -> names.contains(e.getName().getLocalPart()));
  }

  private void addTechnical(JAXBElement<?> element) {
    switch (element.getName().getLocalPart()) {
      case "harmonic" -> {
        if (harmonic.isEmpty() && element.getValue() instanceof Harmonic sign) {
          harmonic = Optional.of(sign);
        }
      }
      // The plus sign, which means something else to wind players.
      case "stopped" -> leftPlucked = true;
      case "snap-pizzicato" -> pizzicato = Optional.of(true);
      case "other-technical" -> {
        if (element.getValue() instanceof OtherPlacementText other) {
          leftPlucked |= asksLeftHand(other);
        }
      }
      case "open-string" -> finger("0");
      case "thumb-position" -> finger("T");
      case "fingering" -> {
        if (element.getValue() instanceof Fingering printed
            && printed.getValue() != null
            && printed.getSubstitution() != YesNo.YES
            && printed.getAlternate() != YesNo.YES) {
          finger(printed.getValue().strip().toUpperCase(Locale.ROOT));
        }
      }
      case "string" -> {
        if (element.getValue() instanceof org.audiveris.proxymusic.String printed
            && printed.getValue() != null
            && string.isEmpty()
            && STRINGS.contains(printed.getValue())) {
          string = OptionalInt.of(printed.getValue().intValue());
        }
      }
      default -> {}
    }
  }

  private static boolean asksLeftHand(OtherPlacementText technique) {
    return LEFT_PIZZICATO.equals(technique.getSmufl())
        || (technique.getValue() != null && PizzicatoWords.askForLeftHand(technique.getValue()));
  }

  private void finger(String printed) {
    if (finger.isEmpty() && FINGERS.contains(printed)) {
      finger = Optional.of(printed);
    }
  }
}
