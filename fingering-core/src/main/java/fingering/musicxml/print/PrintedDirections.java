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

/** Collects words, dynamics, hairpins and the endings of repeats. */
final class PrintedDirections {
  /** As in the text of XML, and the space that keeps words together. */
  private static final CharMatcher SPACE = CharMatcher.anyOf(" \t\n\r\f\u000b\u00a0");

  private record Time(int measure, BigFraction onset) {}

  private record Told(Kind kind, String text, Time time) {}

  private record Hairpin(Time from, Optional<Time> to, boolean louder) {}

  /** By index of measure, in the order of the file. */
  private final ListMultimap<Integer, Told> told = ArrayListMultimap.create();

  private final List<Hairpin> hairpins = new ArrayList<>();
  private final Map<Integer, Hairpin> open = new HashMap<>();
  private final ImmutableList.Builder<Ending> endings = ImmutableList.builder();
  private Optional<Ending> ending = Optional.empty();

  private void add(Kind kind, String text, Time time) {
    String one = SPACE.collapseFrom(text, ' ').strip();
    if (!one.isEmpty()) {
      told.put(time.measure(), new Told(kind, one, time));
    }
  }

  /**
   * Takes a direction.
   *
   * @param measure index of the measure, from 0
   * @param onset quarter notes from its start
   */
  void direction(Direction direction, int measure, BigFraction onset) {
    Time time = new Time(measure, onset);
    // Several words of one direction stand in one line, often cut only to change the letters.
    add(Kind.WORDS, words(direction), time);
    for (DirectionType type : direction.getDirectionType()) {
      type.getDynamics().forEach(dynamics -> dynamics(dynamics, time));
      if (type.getWedge() != null && type.getWedge().getType() != null) {
        hairpin(type.getWedge(), time);
      }
      if (type.getStringMute() != null) {
        boolean on = type.getStringMute().getType() == OnOff.ON;
        add(Kind.MUTE, on ? "mute on" : "mute off", time);
      }
      if (type.getMetronome() != null) {
        TempoMark.of(type.getMetronome())
            .ifPresent(tempo -> add(Kind.TEMPO, tempo.toString(), time));
      }
      if (type.getScordatura() != null) {
        add(Kind.WORDS, scordatura(type.getScordatura()), time);
      }
      type.getSegno().forEach(segno -> add(Kind.JUMP, "segno", time));
      type.getCoda().forEach(coda -> add(Kind.JUMP, "coda", time));
    }
  }

  /** The sign in words, the strings as it numbers them: {@code scordatura 4 = F♯3}. */
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

  private void dynamics(Dynamics dynamics, Time time) {
    String text =
        dynamics.getPOrPpOrPpp().stream()
            .map(
                element ->
                    element.getValue() instanceof OtherText other
                        ? Optional.ofNullable(other.getValue()).orElse("")
                        : element.getName().getLocalPart())
            .collect(Collectors.joining());
    add(Kind.DYNAMIC, text, time);
  }

  private void hairpin(org.audiveris.proxymusic.Wedge wedge, Time time) {
    int number = wedge.getNumber() == null ? 1 : wedge.getNumber();
    switch (wedge.getType()) {
      case CRESCENDO, DIMINUENDO -> {
        boolean louder = wedge.getType() == org.audiveris.proxymusic.WedgeType.CRESCENDO;
        // Where a hairpin was never ended, the next of its number ends it.
        end(number, time);
        open.put(number, new Hairpin(time, Optional.empty(), louder));
      }
      case STOP -> end(number, time);
      default -> {}
    }
  }

  private void end(int number, Time time) {
    Optional.ofNullable(open.remove(number))
        .ifPresent(
            from -> hairpins.add(new Hairpin(from.from(), Optional.of(time), from.louder())));
  }

  /** Takes the dynamics that some programs hang on a note. */
  void note(Note note, int measure, BigFraction onset) {
    for (Notations notations : note.getNotations()) {
      for (Object each : notations.getTiedOrSlurOrTuplet()) {
        if (each instanceof Dynamics dynamics) {
          dynamics(dynamics, new Time(measure, onset));
        }
      }
    }
  }

  /** Takes a bar line. */
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

  /** The texts of a measure in order of time, those of one time in the order of the file. */
  ImmutableList<PrintedText> texts(Measure measure) {
    return told.get(measure.index()).stream()
        .sorted(Comparator.comparing(one -> one.time().onset(), Quarters.ORDER))
        .map(
            one ->
                new PrintedText(
                    one.kind(),
                    one.text(),
                    measure.place(one.time().onset()),
                    measure.start().add(one.time().onset())))
        .collect(ImmutableList.toImmutableList());
  }

  /** The hairpins in order of time; one that is never ended ends with its measure. */
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
    Time to = hairpin.to().orElse(new Time(first.index(), first.length()));
    Measure last = measures.get(to.measure());
    return new Wedge(
        first.place(hairpin.from().onset()),
        last.place(to.onset()),
        first.start().add(hairpin.from().onset()),
        last.start().add(to.onset()),
        hairpin.louder());
  }

  /** The endings of repeats; one that is never ended is as long as its measure. */
  ImmutableList<Ending> endings() {
    ImmutableList.Builder<Ending> all = ImmutableList.builder();
    all.addAll(endings.build());
    ending.ifPresent(all::add);
    return all.build();
  }
}
