package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.Clef;
import fingering.music.Measure;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedMeasure.Bar;
import fingering.music.PrintedMeasure.ClefChange;
import fingering.music.PrintedMeasure.KeyChange;
import fingering.music.PrintedNote;
import fingering.music.PrintedPart;
import fingering.music.PrintedPart.Slur;
import fingering.musicxml.element.WrittenNote;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.BarStyle;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.RightLeftMiddle;

/** Collects what is printed on the staff of a part while the part is read. */
public final class PrintCollector {
  private record OpenSlur(PrintedNote note, String voice, int number) {}

  private final List<PrintedMeasure> measures = new ArrayList<>();
  private final ImmutableList.Builder<Slur> slurs = ImmutableList.builder();
  private final List<OpenSlur> openSlurs = new ArrayList<>();
  private final PrintedDirections directions = new PrintedDirections();

  private Clef clef = Clef.TREBLE;
  private Clef atStart = Clef.TREBLE;
  private List<ClefChange> changes = new ArrayList<>();
  private List<PrintedNote> notes = new ArrayList<>();
  private List<KeyChange> keys = new ArrayList<>();
  private boolean repeatStart;
  private Bar end = Bar.SINGLE;

  /** Adds a clef; those of other staves than the first are ignored. */
  public void clef(org.audiveris.proxymusic.Clef printed, BigFraction onset) {
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

  /** Adds the dynamics of a note element, even if the note is not shown. */
  public void dynamics(Note note, int measure, BigFraction onset) {
    directions.note(note, measure, onset);
  }

  /** Adds a note or a rest, with its slurs. */
  public void note(PrintedNote printed, WrittenNote.Lines lines) {
    notes.add(printed);
    if (printed.rest()) {
      return;
    }
    for (int number : lines.slurStops()) {
      close(printed, number);
    }
    for (int number : lines.slurStarts()) {
      openSlurs.add(new OpenSlur(printed, printed.voice(), number));
    }
  }

  // A slur ends in the voice in which it began, if that voice has one with its number.
  private void close(PrintedNote last, int number) {
    Comparator<OpenSlur> best = Comparator.comparing(open -> !open.voice().equals(last.voice()));
    openSlurs.stream()
        .filter(open -> open.number() == number)
        .min(best)
        .ifPresent(
            open -> {
              openSlurs.remove(open);
              slurs.add(new Slur(open.note().address(), last.address()));
            });
  }

  /** Adds the words, dynamics and hairpins of a direction. */
  public void direction(Direction direction, int measure, BigFraction onset) {
    directions.direction(direction, measure, onset);
  }

  /** Adds a change of key. */
  public void key(int before, int fifths, BigFraction onset) {
    if (onset.signum() > 0 && before != fifths) {
      keys.add(new KeyChange(onset, before, fifths));
    }
  }

  /** Adds a bar line. */
  public void bar(Barline bar, int measure) {
    directions.barline(bar, measure);
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

  /** Ends the measure with this index. */
  public void endMeasure(int index) {
    measures.add(
        new PrintedMeasure(
            index,
            atStart,
            ImmutableList.copyOf(changes),
            ImmutableList.copyOf(notes),
            ImmutableList.copyOf(keys),
            ImmutableList.of(),
            repeatStart,
            end));
    atStart = clef;
    changes = new ArrayList<>();
    notes = new ArrayList<>();
    keys = new ArrayList<>();
    repeatStart = false;
    end = Bar.SINGLE;
  }

  /**
   * Returns the printed part.
   *
   * @param read the measures of the part
   */
  public PrintedPart part(List<Measure> read) {
    ImmutableList.Builder<PrintedMeasure> complete = ImmutableList.builder();
    for (PrintedMeasure measure : measures) {
      complete.add(
          new PrintedMeasure(
              measure.index(),
              measure.clef(),
              measure.clefs(),
              measure.notes(),
              measure.keys(),
              directions.texts(read.get(measure.index())),
              measure.repeatStart(),
              measure.end()));
    }
    return new PrintedPart(
        complete.build(), slurs.build(), directions.wedges(read), directions.endings());
  }
}
