package fingering.musicxml.print;

import com.google.common.base.CharMatcher;
import com.google.common.collect.ArrayListMultimap;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ListMultimap;
import fingering.music.Measure;
import fingering.music.PrintedPart.Ending;
import fingering.music.PrintedPart.Wedge;
import fingering.music.PrintedText;
import fingering.music.PrintedText.Kind;
import fingering.musicxml.element.Quarters;
import fingering.musicxml.element.TempoMark;
import fingering.musicxml.timeline.TuningMarks;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Accord;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Dynamics;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.OnOff;
import org.audiveris.proxymusic.OtherText;
import org.audiveris.proxymusic.Scordatura;
import org.audiveris.proxymusic.StartStopDiscontinue;

/** Collects words, dynamics, hairpins and the endings of repeats of a part. */
final class PrintedDirections {
  /** White space in XML, and the no-break space. */
  private static final CharMatcher SPACE = CharMatcher.anyOf(" \t\n\r\f\u000b\u00a0");

  private record Position(int measure, BigFraction onset) {}

  private record Text(Kind kind, String text, Position position) {}

  private record Hairpin(Position from, Optional<Position> to, boolean louder) {}

  /** By index of the measure, in the order of the file. */
  private final ListMultimap<Integer, Text> texts = ArrayListMultimap.create();

  private final List<Hairpin> hairpins = new ArrayList<>();
  private final Map<Integer, Hairpin> open = new HashMap<>();
  private final ImmutableList.Builder<Ending> endings = ImmutableList.builder();
  private Optional<Ending> ending = Optional.empty();

  private void add(Kind kind, String text, Position position) {
    String one = SPACE.collapseFrom(text, ' ').strip();
    if (!one.isEmpty()) {
      texts.put(position.measure(), new Text(kind, one, position));
    }
  }

  /**
   * Adds a direction.
   *
   * @param measure index of the measure, from 0
   * @param onset quarter notes from its start
   */
  void direction(Direction direction, int measure, BigFraction onset) {
    Position position = new Position(measure, onset);
    // Words of one direction are printed on one line, often split only to change the typeface.
    add(Kind.WORDS, words(direction), position);
    for (DirectionType type : direction.getDirectionType()) {
      type.getDynamics().forEach(dynamics -> dynamics(dynamics, position));
      if (type.getWedge() != null && type.getWedge().getType() != null) {
        hairpin(type.getWedge(), position);
      }
      if (type.getStringMute() != null) {
        boolean on = type.getStringMute().getType() == OnOff.ON;
        add(Kind.MUTE, on ? "mute on" : "mute off", position);
      }
      if (type.getMetronome() != null) {
        TempoMark.of(type.getMetronome())
            .ifPresent(tempo -> add(Kind.TEMPO, tempo.toString(), position));
      }
      if (type.getScordatura() != null) {
        add(Kind.WORDS, scordatura(type.getScordatura()), position);
      }
      type.getSegno().forEach(segno -> add(Kind.JUMP, "segno", position));
      type.getCoda().forEach(coda -> add(Kind.JUMP, "coda", position));
    }
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

  private static String words(Direction direction) {
    return direction.getDirectionType().stream()
        .flatMap(type -> type.getWordsOrSymbol().stream())
        .filter(FormattedTextId.class::isInstance)
        .map(word -> ((FormattedTextId) word).getValue())
        .filter(word -> word != null)
        .collect(Collectors.joining(" "));
  }

  private void dynamics(Dynamics dynamics, Position position) {
    String text =
        dynamics.getPOrPpOrPpp().stream()
            .map(
                element ->
                    element.getValue() instanceof OtherText other
                        ? Optional.ofNullable(other.getValue()).orElse("")
                        : element.getName().getLocalPart())
            .collect(Collectors.joining());
    add(Kind.DYNAMIC, text, position);
  }

  private void hairpin(org.audiveris.proxymusic.Wedge wedge, Position position) {
    int number = wedge.getNumber() == null ? 1 : wedge.getNumber();
    switch (wedge.getType()) {
      case CRESCENDO, DIMINUENDO -> {
        boolean louder = wedge.getType() == org.audiveris.proxymusic.WedgeType.CRESCENDO;
        // The next hairpin with the same number ends one that has no end.
        end(number, position);
        open.put(number, new Hairpin(position, Optional.empty(), louder));
      }
      case STOP -> end(number, position);
      default -> {}
    }
  }

  private void end(int number, Position position) {
    Optional.ofNullable(open.remove(number))
        .ifPresent(
            from -> hairpins.add(new Hairpin(from.from(), Optional.of(position), from.louder())));
  }

  /** Adds the dynamics that some programs attach to a note. */
  void note(Note note, int measure, BigFraction onset) {
    for (Notations notations : note.getNotations()) {
      for (Object each : notations.getTiedOrSlurOrTuplet()) {
        if (each instanceof Dynamics dynamics) {
          dynamics(dynamics, new Position(measure, onset));
        }
      }
    }
  }

  /** Adds a bar line. */
  void barline(Barline barline, int measure) {
    if (barline.getEnding() == null || barline.getEnding().getType() == null) {
      return;
    }
    StartStopDiscontinue type = barline.getEnding().getType();
    if (type == StartStopDiscontinue.START) {
      endEnding(measure - 1, false);
      String number = barline.getEnding().getNumber();
      ending = Optional.of(new Ending(measure, measure, number == null ? "" : number, false));
    } else {
      endEnding(measure, type == StartStopDiscontinue.STOP);
    }
  }

  private void endEnding(int last, boolean closed) {
    ending.ifPresent(
        one ->
            endings.add(
                new Ending(one.first(), Math.max(one.first(), last), one.number(), closed)));
    ending = Optional.empty();
  }

  /** The texts of a measure in order of time; at the same time, in the order of the file. */
  ImmutableList<PrintedText> texts(Measure measure) {
    return texts.get(measure.index()).stream()
        .sorted(Comparator.comparing(one -> one.position().onset(), Quarters.ORDER))
        .map(
            one ->
                new PrintedText(
                    one.kind(),
                    one.text(),
                    measure.place(one.position().onset()),
                    measure.start().add(one.position().onset())))
        .collect(ImmutableList.toImmutableList());
  }

  /** The hairpins in order of time; one without an end ends with its measure. */
  ImmutableList<Wedge> wedges(List<Measure> measures) {
    List<Hairpin> all = new ArrayList<>(hairpins);
    all.addAll(open.values());
    return all.stream()
        .map(hairpin -> wedge(hairpin, measures))
        .filter(wedge -> Quarters.compare(wedge.start(), wedge.end()) < 0)
        .sorted(Comparator.comparing(Wedge::start, Quarters.ORDER))
        .collect(ImmutableList.toImmutableList());
  }

  private static Wedge wedge(Hairpin hairpin, List<Measure> measures) {
    Measure first = measures.get(hairpin.from().measure());
    Position to = hairpin.to().orElse(new Position(first.index(), first.length()));
    Measure last = measures.get(to.measure());
    return new Wedge(
        first.place(hairpin.from().onset()),
        last.place(to.onset()),
        first.start().add(hairpin.from().onset()),
        last.start().add(to.onset()),
        hairpin.louder());
  }

  /** The endings of repeats; one without an end is as long as its measure. */
  ImmutableList<Ending> endings() {
    ImmutableList.Builder<Ending> all = ImmutableList.builder();
    all.addAll(endings.build());
    ending.ifPresent(all::add);
    return all.build();
  }
}
