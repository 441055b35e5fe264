package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Place;
import fingering.music.Sign;
import fingering.music.Sign.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Dynamics;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.OnOff;
import org.audiveris.proxymusic.RightLeftMiddle;
import org.audiveris.proxymusic.StartStopDiscontinue;

/** Collects what is printed in a part besides its notes. */
final class PrintedSigns {
  private record At(Kind kind, String text, int measure, BigFraction onset) {}

  private final List<At> found = new ArrayList<>();

  private void add(Kind kind, String text, int measure, BigFraction onset) {
    found.add(new At(kind, text.replaceAll("[\\s\\u00a0]+", " ").strip(), measure, onset));
  }

  /**
   * Takes a direction.
   *
   * @param measure index of the measure, from 0
   * @param onset quarter notes from its start
   */
  void direction(Direction direction, int measure, BigFraction onset) {
    StringBuilder words = new StringBuilder();
    for (DirectionType type : direction.getDirectionType()) {
      type.getDynamics().forEach(dynamics -> dynamics(dynamics, measure, onset));
      for (Object word : type.getWordsOrSymbol()) {
        if (word instanceof FormattedTextId text && text.getValue() != null) {
          words.append(' ').append(text.getValue());
        }
      }
      if (type.getWedge() != null && type.getWedge().getType() != null) {
        switch (type.getWedge().getType()) {
          case CRESCENDO -> add(Kind.CRESCENDO, "", measure, onset);
          case DIMINUENDO -> add(Kind.DIMINUENDO, "", measure, onset);
          case STOP -> add(Kind.HAIRPIN_END, "", measure, onset);
          default -> {}
        }
      }
      if (type.getStringMute() != null) {
        boolean on = type.getStringMute().getType() == OnOff.ON;
        add(Kind.MUTE, on ? "mute on" : "mute off", measure, onset);
      }
      if (type.getMetronome() != null) {
        TempoMark.of(type.getMetronome())
            .ifPresent(tempo -> add(Kind.TEMPO, tempo.toString(), measure, onset));
      }
      type.getSegno().forEach(segno -> add(Kind.JUMP, "segno", measure, onset));
      type.getCoda().forEach(coda -> add(Kind.JUMP, "coda", measure, onset));
    }
    if (!words.toString().isBlank()) {
      add(Kind.WORDS, words.toString(), measure, onset);
    }
  }

  private void dynamics(Dynamics dynamics, int measure, BigFraction onset) {
    StringBuilder text = new StringBuilder();
    dynamics.getPOrPpOrPpp().stream()
        .map(
            element ->
                element.getName().getLocalPart().equals("other-dynamics")
                    ? String.valueOf(element.getValue())
                    : element.getName().getLocalPart())
        .forEach(text::append);
    if (!text.isEmpty()) {
      add(Kind.DYNAMIC, text.toString(), measure, onset);
    }
  }

  /** Takes the dynamics that some programs hang on a note. */
  void note(Note note, int measure, BigFraction onset) {
    for (Notations notations : note.getNotations()) {
      for (Object each : notations.getTiedOrSlurOrTuplet()) {
        if (each instanceof Dynamics dynamics) {
          dynamics(dynamics, measure, onset);
        }
      }
    }
  }

  /** Takes a bar line. */
  void barline(Barline barline, int measure, BigFraction onset) {
    if (barline.getRepeat() != null) {
      boolean from = barline.getRepeat().getDirection() == BackwardForward.FORWARD;
      add(from ? Kind.REPEAT_FROM : Kind.REPEAT, "", measure, onset);
    }
    boolean right = barline.getLocation() == RightLeftMiddle.RIGHT;
    if (barline.getEnding() != null
        && barline.getEnding().getType() == StartStopDiscontinue.START
        && !right) {
      String number = barline.getEnding().getNumber();
      add(Kind.ENDING, number == null ? "" : number, measure, onset);
    }
  }

  /** The signs in order of time, those of one time in the order of the file. */
  ImmutableList<Sign> in(List<Measure> measures) {
    return found.stream()
        .map(at -> sign(at, measures.get(at.measure())))
        .sorted(Comparator.comparing(Sign::start, Quarters.ORDER))
        .collect(ImmutableList.toImmutableList());
  }

  private static Sign sign(At at, Measure measure) {
    BigFraction beat = at.onset().divide(BigFraction.of(4, measure.beatType()));
    return new Sign(
        at.kind(),
        at.text(),
        new Place(measure.index(), measure.number(), at.onset(), beat.add(BigFraction.ONE)),
        measure.start().add(at.onset()));
  }
}
