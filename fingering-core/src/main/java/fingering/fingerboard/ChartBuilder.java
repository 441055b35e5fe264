package fingering.fingerboard;

import static com.google.common.collect.ImmutableList.toImmutableList;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import fingering.fingerboard.Chart.Cell;
import fingering.fingerboard.Chart.Fingering;
import fingering.fingerboard.Chart.HandPlace;
import fingering.fingerboard.Chart.Row;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Pitch;
import fingering.tables.Position;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Builds one chart. */
final class ChartBuilder {
  private final Instrument instrument;
  private final ChartRequest request;
  private final ChartNotes notes;
  private final ChartFingerings fingerings;
  private final int last;

  ChartBuilder(Fingerboard fingerboard, ChartRequest request) {
    instrument = fingerboard.instrument();
    this.request = request;
    notes = new ChartNotes(request.key());
    fingerings = new ChartFingerings(fingerboard);
    last = instrument.lastSemitone();
  }

  Chart chart() {
    ImmutableList<OpenString> strings =
        request.string().isPresent()
            ? ImmutableList.of(instrument.string(request.string().getAsInt()))
            : instrument.strings().reverse();
    if (request.position().isEmpty()) {
      ImmutableList<Frame> all = fingerings.frames();
      return new Chart(
          instrument, request.key(), Optional.empty(), strings, rows(strings, all, 0, last));
    }
    ImmutableSortedMap<Integer, ImmutableList<Frame>> places = places(request.position().get());
    int place = place(places);
    ImmutableList<Frame> here = Objects.requireNonNull(places.get(place));
    HandPlace hand =
        new HandPlace(
            request.position().get(),
            here.get(0).remark(),
            place,
            places.keySet().stream().filter(other -> other != place).collect(toImmutableList()));
    return new Chart(
        instrument, request.key(), Optional.of(hand), strings, rowsUnderHand(strings, here));
  }

  /** The open strings, and the rows from the lowest to the highest place that the hand covers. */
  private ImmutableList<Row> rowsUnderHand(
      ImmutableList<OpenString> strings, ImmutableList<Frame> frames) {
    int[] covered =
        IntStream.rangeClosed(1, last)
            .filter(semitones -> strings.stream().anyMatch(s -> covers(s, semitones, frames)))
            .toArray();
    ImmutableList.Builder<Row> rows = ImmutableList.builder();
    rows.addAll(rows(strings, frames, 0, 0));
    if (covered.length > 0) {
      rows.addAll(rows(strings, frames, covered[0], covered[covered.length - 1]));
    }
    return rows.build();
  }

  /** Whether a finger can stop the place in any spelling, in the key or not. */
  private boolean covers(OpenString string, int semitones, ImmutableList<Frame> frames) {
    return ChartNotes.ALL.name(string, semitones).names().stream()
        .anyMatch(name -> !fingerings.on(string, semitones, name, frames).isEmpty());
  }

  private ImmutableList<Row> rows(
      ImmutableList<OpenString> strings, ImmutableList<Frame> frames, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(
            semitones ->
                new Row(
                    semitones,
                    Geometry.fromNut(instrument.stringLength(), semitones),
                    positionsAt(semitones),
                    strings.stream()
                        .map(string -> cell(string, semitones, frames))
                        .collect(toImmutableList())))
        .collect(toImmutableList());
  }

  /** The positions whose first finger is in a row; thumb position can be anywhere. */
  private ImmutableList<Position> positionsAt(int semitones) {
    return fingerings.frames().stream()
        .filter(frame -> !frame.position().equals(Position.THUMB))
        .filter(frame -> Math.round(frame.first()) == semitones)
        .map(Frame::position)
        .distinct()
        .collect(toImmutableList());
  }

  private Cell cell(OpenString string, int semitones, ImmutableList<Frame> frames) {
    ChartNotes.Naming naming = notes.name(string, semitones);
    ImmutableList<Fingering> found =
        naming.names().stream()
            .flatMap(name -> fingerings.on(string, semitones, name, frames).stream())
            .collect(toImmutableList());
    return new Cell(
        string, semitones, naming.names(), naming.relation(), found, rings(string, semitones));
  }

  /** The open strings that ring with a note. */
  private ImmutableList<OpenString> rings(OpenString string, int semitones) {
    if (semitones == 0) {
      return ImmutableList.of();
    }
    return RingingStrings.with(instrument, string.number(), string.pitch().midi() + semitones);
  }

  /** The frames of a position, by the place of the hand; extensions do not change the place. */
  private ImmutableSortedMap<Integer, ImmutableList<Frame>> places(Position position) {
    var places =
        fingerings.frames().stream()
            .filter(frame -> frame.position().equals(position))
            .collect(
                ImmutableSortedMap.toImmutableSortedMap(
                    Comparator.<Integer>naturalOrder(),
                    this::placeOf,
                    ImmutableList::of,
                    (a, b) -> ImmutableList.<Frame>builder().addAll(a).addAll(b).build()));
    if (places.isEmpty()) {
      throw new FingeringException(
          "The "
              + instrument.nameInSentence()
              + " has no "
              + position.display()
              + " position here; choose "
              + knownPositions()
              + ".");
    }
    return places;
  }

  private String knownPositions() {
    return fingerings.frames().stream()
        .map(Frame::position)
        .distinct()
        .map(Position::toString)
        .collect(Collectors.joining(", "));
  }

  private int placeOf(Frame frame) {
    return frame.thumb().orElse((int) Math.round(frame.first()));
  }

  private int place(ImmutableSortedMap<Integer, ImmutableList<Frame>> places) {
    if (request.place().isEmpty()) {
      return defaultPlace(places);
    }
    int requested = request.place().getAsInt();
    if (!places.containsKey(requested)) {
      throw new FingeringException(
          "In "
              + request.position().orElseThrow().display()
              + " position of the "
              + instrument.nameInSentence()
              + ", the hand is not "
              + requested
              + " semitones above the open string; choose "
              + places.keySet().stream().map(Object::toString).collect(Collectors.joining(", "))
              + ".");
    }
    return requested;
  }

  /**
   * The default place of a position. In thumb position, the octave. Otherwise the place where most
   * notes of the key, or natural notes without a key, can be stopped without an extension; the
   * lower one of several.
   */
  private int defaultPlace(ImmutableSortedMap<Integer, ImmutableList<Frame>> places) {
    Comparator<Integer> better =
        request.position().orElseThrow().equals(Position.THUMB)
            ? Comparator.comparingInt(place -> Math.abs(place - Pitch.OCTAVE))
            : Comparator.comparingLong(
                place -> -notesWithoutExtension(Objects.requireNonNull(places.get(place))));
    return places.keySet().stream().min(better).orElseThrow();
  }

  private long notesWithoutExtension(ImmutableList<Frame> frames) {
    return rows(instrument.strings(), frames, 1, last).stream()
        .flatMap(row -> row.cells().stream())
        .filter(cell -> cell.relation() == Chart.KeyRelation.NAMED)
        .filter(cell -> cell.fingerings().stream().anyMatch(fingering -> !fingering.extended()))
        .count();
  }
}
