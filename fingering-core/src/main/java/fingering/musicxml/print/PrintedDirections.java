package fingering.musicxml.print;

import com.google.common.base.CharMatcher;
import com.google.common.collect.ArrayListMultimap;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import fingering.music.Measure;
import fingering.music.Tempo;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import fingering.music.print.PrintedText.Metronome;
import fingering.music.print.PrintedText.Style;
import fingering.music.print.Side;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import fingering.musicxml.timeline.TuningMarks;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.Accord;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Dynamics;
import org.audiveris.proxymusic.EnclosureShape;
import org.audiveris.proxymusic.FontStyle;
import org.audiveris.proxymusic.FontWeight;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.OnOff;
import org.audiveris.proxymusic.OtherText;
import org.audiveris.proxymusic.Scordatura;
import org.audiveris.proxymusic.YesNo;

/** Collects words, dynamics and other texts of a part. */
final class PrintedDirections {
  /** White space in XML, and the no-break space. */
  private static final CharMatcher SPACE = CharMatcher.anyOf(" \t\n\r\f\u000b\u00a0");

  private record Text(
      Kind kind,
      String text,
      Position position,
      int direction,
      Side side,
      Style style,
      Optional<Metronome> metronome) {}

  /** By index of the measure, in the order of the file. */
  private final ListMultimap<Integer, Text> texts = ArrayListMultimap.create();

  private final PrintedLines lines = new PrintedLines();
  private int number = -1;

  /** Words of a direction that stand together. */
  private final List<FormattedTextId> words = new ArrayList<>();

  private void add(Kind kind, String text, Position position, Side side) {
    add(kind, text, position, side, Style.PLAIN, Optional.empty());
  }

  private void add(
      Kind kind,
      String text,
      Position position,
      Side side,
      Style style,
      Optional<Metronome> metronome) {
    String one = SPACE.collapseFrom(text, ' ').strip();
    if (!one.isEmpty()) {
      texts.put(position.measure(), new Text(kind, one, position, number, side, style, metronome));
    }
  }

  /**
   * Adds a direction.
   *
   * @param position where it is printed
   */
  void direction(Direction direction, Position position) {
    number++;
    lines.direction(direction, number, position);
    Side side = Sides.of(direction.getPlacement());
    for (DirectionType type : direction.getDirectionType()) {
      for (Object word : type.getWordsOrSymbol()) {
        if (word instanceof FormattedTextId text && text.getValue() != null) {
          words.add(text);
        }
      }
      if (type.getMetronome() != null && type.getMetronome().getPrintObject() != YesNo.NO) {
        endWords(position, side);
        metronome(type.getMetronome(), position, side);
      }
    }
    endWords(position, side);
    for (DirectionType type : direction.getDirectionType()) {
      type.getDynamics()
          .forEach(
              dynamics -> dynamics(dynamics, position, side == Side.AUTO ? side(dynamics) : side));
      for (FormattedTextId mark : type.getRehearsal()) {
        if (mark.getValue() != null) {
          add(Kind.REHEARSAL, mark.getValue(), position, side, style(mark), Optional.empty());
        }
      }
      if (type.getStringMute() != null) {
        boolean on = type.getStringMute().getType() == OnOff.ON;
        add(Kind.MUTE, on ? "mute on" : "mute off", position, side);
      }
      if (type.getScordatura() != null) {
        add(Kind.WORDS, scordatura(type.getScordatura()), position, side);
      }
      type.getSegno().forEach(segno -> add(Kind.JUMP, "segno", position, side));
      type.getCoda().forEach(coda -> add(Kind.JUMP, "coda", position, side));
    }
  }

  // Words of one direction are printed on one line, often split only to change the typeface.
  private void endWords(Position position, Side side) {
    Style style =
        words.stream()
            .filter(word -> !SPACE.trimFrom(word.getValue()).isEmpty())
            .findFirst()
            .map(PrintedDirections::style)
            .orElse(Style.PLAIN);
    String text = words.stream().map(FormattedTextId::getValue).collect(Collectors.joining(" "));
    words.clear();
    add(Kind.WORDS, text, position, side, style, Optional.empty());
  }

  private static Style style(FormattedTextId text) {
    return new Style(
        text.getFontWeight() == FontWeight.BOLD,
        text.getFontStyle() == FontStyle.ITALIC,
        text.getEnclosure() != null && text.getEnclosure() != EnclosureShape.NONE);
  }

  private void metronome(org.audiveris.proxymusic.Metronome mark, Position position, Side side) {
    Optional<Metronome> read = Optional.empty();
    if (mark.getPerMinute() != null
        && mark.getPerMinute().getValue() != null
        && mark.getBeatUnitTied().isEmpty()) {
      String perMinute = SPACE.collapseFrom(mark.getPerMinute().getValue(), ' ').strip();
      read =
          PrintedNotes.value(mark.getBeatUnit(), mark.getBeatUnitDot().size())
              .map(unit -> new Metronome(unit, perMinute, mark.getParentheses() == YesNo.YES));
    }
    Optional<Metronome> parts = read.filter(one -> !one.number().isEmpty());
    Optional<String> text =
        TempoMark.of(mark)
            .map(Tempo::toString)
            .or(() -> parts.map(one -> unitName(mark) + "=" + one.number()));
    text.ifPresent(one -> add(Kind.TEMPO, one, position, side, Style.PLAIN, parts));
  }

  private static String unitName(org.audiveris.proxymusic.Metronome mark) {
    return "dotted-".repeat(mark.getBeatUnitDot().size()) + mark.getBeatUnit().strip();
  }

  /** The scordatura in words: {@code scordatura 4 = F♯3}. */
  private static String scordatura(Scordatura sign) {
    return "scordatura "
        + sign.getAccord().stream()
            .flatMap(accord -> tuned(accord).stream())
            .collect(Collectors.joining(", "));
  }

  private static Optional<String> tuned(Accord accord) {
    return TuningMarks.pitch(
            accord.getTuningStep(), accord.getTuningAlter(), accord.getTuningOctave())
        .map(Pitch::display)
        .map(pitch -> accord.getString() == null ? pitch : accord.getString() + " = " + pitch);
  }

  private void dynamics(Dynamics dynamics, Position position, Side side) {
    String text =
        dynamics.getPOrPpOrPpp().stream()
            .map(
                element ->
                    element.getValue() instanceof OtherText other
                        ? Optional.ofNullable(other.getValue()).orElse("")
                        : element.getName().getLocalPart())
            .collect(Collectors.joining());
    add(Kind.DYNAMIC, text, position, side);
  }

  private static Side side(Dynamics dynamics) {
    return Sides.of(dynamics.getPlacement());
  }

  /** Adds the dynamics that some programs attach to a note. */
  void note(Note note, Position position) {
    for (Notations notations : note.getNotations()) {
      for (Object each : notations.getTiedOrSlurOrTuplet()) {
        if (each instanceof Dynamics dynamics) {
          number++;
          dynamics(dynamics, position, side(dynamics));
        }
      }
    }
  }

  /** The texts of a measure in order of time; at the same time, in the order of the file. */
  ImmutableList<PrintedText> texts(int measure, List<Measure> measures) {
    return texts.get(measure).stream()
        .sorted(Comparator.comparing(one -> one.position().onset(), Quarters.ORDER))
        .map(
            one ->
                new PrintedText(
                    one.kind(),
                    one.text(),
                    one.position().place(measures),
                    one.position().start(measures),
                    one.direction(),
                    one.side(),
                    one.style(),
                    one.metronome()))
        .collect(ImmutableList.toImmutableList());
  }

  /** Hairpins and other lines. */
  PrintedLines lines() {
    return lines;
  }
}
