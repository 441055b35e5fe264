package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.music.Clef;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedMeasure.Bar;
import fingering.music.PrintedMeasure.ClefChange;
import fingering.music.PrintedMeasure.Kind;
import fingering.music.PrintedMeasure.Text;
import fingering.music.PrintedNote;
import fingering.music.PrintedPart;
import fingering.music.PrintedPart.Slur;
import fingering.music.PrintedPart.Wedge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.BarStyle;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.RightLeftMiddle;
import org.audiveris.proxymusic.WedgeType;

/** Collects what is printed on the staff of a part while it is walked through. */
final class PrintCollector {
  private record Open(PrintedNote note, String voice, int number) {}

  private final ImmutableList.Builder<PrintedMeasure> measures = ImmutableList.builder();
  private final ImmutableList.Builder<Slur> slurs = ImmutableList.builder();
  private final ImmutableList.Builder<Wedge> wedges = ImmutableList.builder();
  private final List<Open> openSlurs = new ArrayList<>();
  private final Map<Integer, Wedge> openWedges = new HashMap<>();

  private Clef clef = Clef.TREBLE;
  private Clef atStart = Clef.TREBLE;
  private List<ClefChange> changes = new ArrayList<>();
  private List<PrintedNote> notes = new ArrayList<>();
  private List<Text> texts = new ArrayList<>();
  private boolean repeatStart;
  private Bar end = Bar.SINGLE;

  /** Takes a clef of the part's first staff. */
  void clef(org.audiveris.proxymusic.Clef printed, BigFraction onset) {
    boolean first = printed.getNumber() == null || printed.getNumber().intValue() == 1;
    Optional<Clef> read = first ? read(printed) : Optional.empty();
    if (read.isEmpty()) {
      return;
    }
    clef = read.get();
    if (onset.signum() == 0) {
      atStart = clef;
    } else {
      changes.add(new ClefChange(onset, clef));
    }
  }

  private static Optional<Clef> read(org.audiveris.proxymusic.Clef printed) {
    if (printed.getSign() == null) {
      return Optional.empty();
    }
    int octaves =
        printed.getClefOctaveChange() == null
            ? 0
            : Math.max(-2, Math.min(2, printed.getClefOctaveChange().intValue()));
    Optional<Clef.Sign> sign =
        switch (printed.getSign()) {
          case G -> Optional.of(Clef.Sign.G);
          case F -> Optional.of(Clef.Sign.F);
          case C -> Optional.of(Clef.Sign.C);
          default -> Optional.empty();
        };
    int usual =
        sign.equals(Optional.of(Clef.Sign.G)) ? 2 : sign.equals(Optional.of(Clef.Sign.F)) ? 4 : 3;
    int line = printed.getLine() == null ? usual : printed.getLine().intValue();
    return sign.map(shape -> new Clef(shape, line < 1 || line > 5 ? usual : line, octaves));
  }

  /** Takes a note or a rest, with its slurs. */
  void note(Note note, PrintedNote printed) {
    notes.add(printed);
    if (printed.rest()) {
      return;
    }
    WrittenNote.Lines lines = new PrintedMarks(note).lines();
    for (int number : lines.slurStops()) {
      close(printed, number);
    }
    for (int number : lines.slurStarts()) {
      openSlurs.add(new Open(printed, printed.voice(), number));
    }
  }

  // A slur ends in the voice in which it began, where there is one of its number.
  private void close(PrintedNote last, int number) {
    Comparator<Open> best = Comparator.comparing(open -> !open.voice().equals(last.voice()));
    openSlurs.stream()
        .filter(open -> open.number() == number)
        .min(best)
        .ifPresent(
            open -> {
              openSlurs.remove(open);
              slurs.add(new Slur(open.note().address(), last.address()));
            });
  }

  /**
   * Takes what a direction prints.
   *
   * @param onset quarter notes from the start of the measure
   * @param start the same from the start of the part
   */
  void direction(DirectionType type, BigFraction onset, BigFraction start) {
    String words =
        type.getWordsOrSymbol().stream()
            .filter(FormattedTextId.class::isInstance)
            .map(word -> ((FormattedTextId) word).getValue())
            .filter(word -> word != null)
            .collect(Collectors.joining(" "))
            .strip()
            .replaceAll("\\s+", " ");
    if (!words.isEmpty()) {
      texts.add(new Text(onset, Kind.WORDS, words));
    }
    type.getDynamics().stream()
        .flatMap(dynamics -> dynamics.getPOrPpOrPpp().stream())
        .map(dynamic -> dynamic.getName().getLocalPart())
        .filter(dynamic -> !dynamic.equals("other-dynamics"))
        .forEach(dynamic -> texts.add(new Text(onset, Kind.DYNAMIC, dynamic)));
    if (type.getMetronome() != null) {
      TempoMark.of(type.getMetronome())
          .ifPresent(
              tempo ->
                  texts.add(new Text(onset, Kind.TEMPO, tempo.toString().replace("=", " = "))));
    }
    if (type.getWedge() != null && type.getWedge().getType() != null) {
      wedge(type.getWedge(), start);
    }
  }

  private void wedge(org.audiveris.proxymusic.Wedge wedge, BigFraction start) {
    int number = wedge.getNumber() == null ? 1 : wedge.getNumber();
    WedgeType type = wedge.getType();
    if (type == WedgeType.CRESCENDO || type == WedgeType.DIMINUENDO) {
      openWedges.put(number, new Wedge(start, start, type == WedgeType.CRESCENDO));
    } else if (type == WedgeType.STOP) {
      Optional.ofNullable(openWedges.remove(number))
          .filter(open -> Quarters.compare(open.start(), start) < 0)
          .ifPresent(open -> wedges.add(new Wedge(open.start(), start, open.louder())));
    }
  }

  /** Takes a bar line. */
  void bar(Barline bar) {
    boolean repeat = bar.getRepeat() != null;
    boolean forward = repeat && bar.getRepeat().getDirection() == BackwardForward.FORWARD;
    repeatStart |= forward;
    if (bar.getLocation() == RightLeftMiddle.LEFT || forward) {
      return;
    }
    if (repeat) {
      end = Bar.REPEAT;
    } else if (bar.getBarStyle() != null) {
      BarStyle style = bar.getBarStyle().getValue();
      end =
          style == BarStyle.LIGHT_HEAVY || style == BarStyle.HEAVY
              ? Bar.FINAL
              : style == BarStyle.LIGHT_LIGHT ? Bar.DOUBLE : Bar.SINGLE;
    }
  }

  /** Ends the measure of that index. */
  void endMeasure(int index) {
    measures.add(
        new PrintedMeasure(
            index,
            atStart,
            ImmutableList.copyOf(changes),
            ImmutableList.copyOf(notes),
            ImmutableList.sortedCopyOf(Comparator.comparing(Text::onset, Quarters.ORDER), texts),
            repeatStart,
            end));
    atStart = clef;
    changes = new ArrayList<>();
    notes = new ArrayList<>();
    texts = new ArrayList<>();
    repeatStart = false;
    end = Bar.SINGLE;
  }

  /** All that was printed. */
  PrintedPart part() {
    return new PrintedPart(measures.build(), slurs.build(), wedges.build());
  }
}
