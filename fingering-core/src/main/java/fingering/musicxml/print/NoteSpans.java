package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.NoteAddress;
import fingering.music.print.PrintedPart.NoteLine;
import fingering.music.print.PrintedPart.Slur;
import fingering.music.print.PrintedPart.Tuplet;
import fingering.music.print.PrintedPart.Tuplet.Numbers;
import fingering.music.print.Side;
import fingering.musicxml.element.NoteTime;
import fingering.musicxml.print.OpenSpans.Anchor;
import fingering.musicxml.print.OpenSpans.Span;
import jakarta.xml.bind.JAXBElement;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.audiveris.proxymusic.Glissando;
import org.audiveris.proxymusic.LineType;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.ShowTuplet;
import org.audiveris.proxymusic.Slide;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.TimeModification;
import org.audiveris.proxymusic.TupletPortion;
import org.audiveris.proxymusic.WavyLine;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** Collects slurs, tuplets and lines from note to note. */
final class NoteSpans {
  /** More notes in a tuplet are a mistake (common practice, no source). */
  private static final int MOST_IN_TUPLET = 64;

  private record Ratio(
      int actual, int normal, Optional<Boolean> bracket, Numbers shown, Side side) {}

  /** The last printed note of each voice. */
  private final Map<String, Anchor> last = new HashMap<>();

  private final OpenSpans<Side> openSlurs = new OpenSpans<>();
  private final OpenSpans<Ratio> openTuplets = new OpenSpans<>();
  private final OpenSpans<NoteLine.Kind> openTrills = new OpenSpans<>();
  private final OpenSpans<NoteLine.Kind> openSlides = new OpenSpans<>();
  private final List<Slur> slurs = new ArrayList<>();
  private final List<Tuplet> tuplets = new ArrayList<>();
  private final List<NoteLine> lines = new ArrayList<>();

  /**
   * Adds the lines that start and end at a note.
   *
   * @param seen whether the note is printed
   */
  void note(Note note, NoteTime time, boolean seen) {
    Anchor here = new Anchor(time, seen);
    Anchor pitched = new Anchor(time, seen && note.getRest() == null);
    List<Object> notations = new ArrayList<>();
    for (Notations each : note.getNotations()) {
      notations.addAll(each.getTiedOrSlurOrTuplet());
    }
    // A note that ends a slur may start the next one with the same number, in any order.
    notations.forEach(each -> stop(each, pitched));
    notations.forEach(each -> start(each, pitched));
    notations.forEach(each -> tuplet(each, note, here));
    for (Object each : notations) {
      if (each instanceof Ornaments ornaments) {
        ornaments.getTrillMarkOrTurnOrDelayedTurn().forEach(e -> trill(e, pitched));
      }
    }
    if (pitched.seen()) {
      last.put(time.voice(), pitched);
    }
  }

  private void stop(Object notation, Anchor here) {
    if (notation instanceof org.audiveris.proxymusic.Slur slur
        && slur.getType() == StartStopContinue.STOP) {
      openSlurs.stop(here, slur.getNumber()).ifPresent(this::slur);
    } else if (notation instanceof Slide slide && slide.getType() == StartStop.STOP) {
      openSlides.stop(here, slide.getNumber()).ifPresent(this::line);
    } else if (notation instanceof Glissando slide && slide.getType() == StartStop.STOP) {
      openSlides.stop(here, -slide.getNumber()).ifPresent(this::line);
    }
  }

  private void start(Object notation, Anchor here) {
    if (notation instanceof org.audiveris.proxymusic.Slur slur
        && slur.getType() == StartStopContinue.START) {
      openSlurs.start(Sides.of(slur.getOrientation(), slur.getPlacement()), here, slur.getNumber());
    } else if (notation instanceof Slide slide && slide.getType() == StartStop.START) {
      // MusicXML 4.0: a slide is solid and a glissando wavy unless the line type says otherwise.
      boolean wavy = slide.getLineType() == LineType.WAVY;
      openSlides.start(kind(wavy), here, slide.getNumber());
    } else if (notation instanceof Glissando slide && slide.getType() == StartStop.START) {
      boolean wavy = slide.getLineType() == null || slide.getLineType() == LineType.WAVY;
      // Glissandi and slides are numbered separately.
      openSlides.start(kind(wavy), here, -slide.getNumber());
    }
  }

  private static NoteLine.Kind kind(boolean wavy) {
    return wavy ? NoteLine.Kind.GLISSANDO : NoteLine.Kind.SLIDE;
  }

  // The line of a trill on one note starts and ends there, in this order.
  private void trill(JAXBElement<?> element, Anchor here) {
    if (element.getValue() instanceof WavyLine wavy) {
      int number = wavy.getNumber() == null ? 1 : wavy.getNumber();
      if (wavy.getType() == StartStopContinue.START) {
        openTrills.start(NoteLine.Kind.TRILL, here, number);
      } else if (wavy.getType() == StartStopContinue.STOP) {
        openTrills.stop(here, number).map(this::shortened).ifPresent(this::line);
      }
    }
  }

  private void tuplet(Object notation, Note note, Anchor here) {
    if (notation instanceof org.audiveris.proxymusic.Tuplet tuplet) {
      int number = tuplet.getNumber() == null ? 1 : tuplet.getNumber();
      if (tuplet.getType() == StartStop.START) {
        openTuplets.start(ratio(tuplet, note.getTimeModification()), here, number);
      } else if (tuplet.getType() == StartStop.STOP) {
        openTuplets.stop(here, number).ifPresent(this::tuplet);
      }
    }
  }

  // The numbers of the tuplet itself count; for a note in two tuplets, the time modification is
  // their product.
  private static Ratio ratio(
      org.audiveris.proxymusic.Tuplet tuplet, @Nullable TimeModification change) {
    Optional<Integer> actual =
        number(tuplet.getTupletActual())
            .or(() -> change == null ? Optional.empty() : plausible(change.getActualNotes()));
    Optional<Integer> normal =
        number(tuplet.getTupletNormal())
            .or(() -> change == null ? Optional.empty() : plausible(change.getNormalNotes()));
    ShowTuplet shown = tuplet.getShowNumber();
    return new Ratio(
        actual.orElse(0),
        normal.orElse(0),
        Optional.ofNullable(tuplet.getBracket()).map(stated -> stated == YesNo.YES),
        shown == ShowTuplet.NONE
            ? Numbers.NONE
            : shown == ShowTuplet.BOTH ? Numbers.BOTH : Numbers.ACTUAL,
        Sides.of(tuplet.getPlacement()));
  }

  private static Optional<Integer> number(@Nullable TupletPortion portion) {
    return portion == null || portion.getTupletNumber() == null
        ? Optional.empty()
        : plausible(portion.getTupletNumber().getValue());
  }

  private static Optional<Integer> plausible(@Nullable BigInteger notes) {
    return Optional.ofNullable(notes)
        .filter(n -> n.signum() > 0 && n.compareTo(BigInteger.valueOf(MOST_IN_TUPLET)) <= 0)
        .map(BigInteger::intValue);
  }

  private void slur(Span<Side> span) {
    Span<Side> shown = shortened(span);
    if (shown.seen() && !shown.from().equals(shown.to())) {
      slurs.add(new Slur(address(shown.from()), address(shown.to()), shown.value()));
    }
  }

  private void line(Span<NoteLine.Kind> span) {
    if (span.seen()) {
      lines.add(new NoteLine(span.value(), address(span.from()), address(span.to())));
    }
  }

  /** A line that ends at a rest or a hidden note ends at the last printed note before it. */
  private <T> Span<T> shortened(Span<T> span) {
    Anchor before = last.getOrDefault(span.from().time().voice(), span.to());
    boolean after = before.time().address().compareTo(span.from().time().address()) >= 0;
    return span.to().seen() || !after ? span : new Span<>(span.value(), span.from(), before);
  }

  private void tuplet(Span<Ratio> span) {
    Ratio ratio = span.value();
    // Without numbers there is nothing to print.
    if (span.seen() && ratio.actual() > 0 && ratio.normal() > 0) {
      tuplets.add(
          new Tuplet(
              address(span.from()),
              address(span.to()),
              ratio.actual(),
              ratio.normal(),
              ratio.bracket(),
              ratio.shown(),
              ratio.side()));
    }
  }

  private static NoteAddress address(Anchor anchor) {
    return anchor.time().address();
  }

  /** Ends the part: pairs what is still open. */
  void end() {
    openSlurs.rest().forEach(this::slur);
    openTuplets.rest().forEach(this::tuplet);
    openTrills.rest().forEach(this::line);
    openSlides.rest().forEach(this::line);
  }

  ImmutableList<Slur> slurs() {
    return ImmutableList.copyOf(slurs);
  }

  /** In document order of their starts, the outer one first. */
  ImmutableList<Tuplet> tuplets() {
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(Tuplet::from).thenComparing(Tuplet::to, Comparator.reverseOrder()),
        tuplets);
  }

  ImmutableList<NoteLine> lines() {
    return ImmutableList.copyOf(lines);
  }
}
