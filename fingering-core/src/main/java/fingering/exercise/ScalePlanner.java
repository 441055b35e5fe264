package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Fingerboard;
import fingering.fingerboard.LeftHand;
import fingering.music.Passage;
import fingering.music.Place;
import fingering.musicxml.reading.Score;
import fingering.plan.InfeasibleBriefException;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Pitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Plans a scale from the lowest possible tonic. It prefers a tonic whose first note needs no
 * stretch.
 */
public final class ScalePlanner {
  /** The highest octave of any string instrument. */
  private static final int HIGHEST_OCTAVE = 9;

  private final ScaleRequest request;
  private final Fingerboard fingerboard;
  private final Optional<Pitch> from;
  private final Function<Passage, Plan> planner;

  private ScalePlanner(
      ScaleRequest request,
      Fingerboard fingerboard,
      Optional<Pitch> from,
      Function<Passage, Plan> planner) {
    this.request = request;
    this.fingerboard = fingerboard;
    this.from = from;
    this.planner = planner;
  }

  /**
   * Plans a scale.
   *
   * @param request the scale and how to play it
   * @param instrument the instrument, with its tuning and size
   * @param hand the player's left hand
   * @param from the first note, a tonic, as written; empty for the lowest possible one
   * @param planner makes a plan of a passage; throws {@link InfeasibleBriefException} if there is
   *     none
   * @throws FingeringException if the instrument does not have this many octaves, or no plan is
   *     possible; the message is one sentence and names the most octaves that are possible
   */
  public static PlannedScale plan(
      ScaleRequest request,
      Instrument instrument,
      LeftHand hand,
      Optional<Pitch> from,
      Function<Passage, Plan> planner) {
    return new ScalePlanner(request, Fingerboard.of(instrument, hand), from, planner).plan();
  }

  /**
   * Plans a scale; empty if that is not possible.
   *
   * @param request the scale and how to play it
   * @param instrument the instrument, with its tuning and size
   * @param hand the player's left hand
   * @param from the first note, a tonic, as written; empty for the lowest possible one
   * @param planner makes a plan of a passage; throws {@link InfeasibleBriefException} if there is
   *     none
   */
  public static Optional<PlannedScale> tryPlan(
      ScaleRequest request,
      Instrument instrument,
      LeftHand hand,
      Optional<Pitch> from,
      Function<Passage, Plan> planner) {
    ScalePlanner scale = new ScalePlanner(request, Fingerboard.of(instrument, hand), from, planner);
    return scale.lowest(scale.onFingerboard(request.octaves()), new ArrayList<>());
  }

  private PlannedScale plan() {
    ImmutableList<ScaleExercise> all = onFingerboard(request.octaves());
    if (all.isEmpty()) {
      throw outOfRange();
    }
    List<String> obstacles = new ArrayList<>();
    return lowest(all, obstacles).orElseThrow(() -> infeasible(all.get(0), obstacles.get(0)));
  }

  /** The exercise from each tonic, lowest first, if all of its notes are on the fingerboard. */
  private ImmutableList<ScaleExercise> onFingerboard(int octaves) {
    return from.map(Stream::of)
        .orElseGet(() -> IntStream.rangeClosed(0, HIGHEST_OCTAVE).mapToObj(request.scale()::tonic))
        .filter(tonic -> tonic.octave() + octaves <= HIGHEST_OCTAVE)
        .map(tonic -> exercise(octaves, tonic))
        .filter(exercise -> exercise.pitches().stream().allMatch(this::onFingerboard))
        .collect(ImmutableList.toImmutableList());
  }

  private ScaleExercise exercise(int octaves, Pitch tonic) {
    return new ScaleExercise(request.withOctaves(octaves), fingerboard.instrument(), tonic);
  }

  private boolean onFingerboard(Pitch written) {
    return !fingerboard.placements(sounding(written)).isEmpty();
  }

  private Pitch sounding(Pitch written) {
    return written.plusOctaves(fingerboard.instrument().writtenOctaves());
  }

  /**
   * The first exercise that has a plan. One whose first note needs no stretch is preferred.
   *
   * @param obstacles receives the reason for each exercise without a plan
   */
  private Optional<PlannedScale> lowest(List<ScaleExercise> all, List<String> obstacles) {
    Optional<PlannedScale> withStretch = Optional.empty();
    for (ScaleExercise exercise : all) {
      try {
        Score score = exercise.read();
        PlannedScale planned =
            new PlannedScale(exercise, score, planner.apply(exercise.passage(score)));
        Optional<Place> divided = dividedChord(planned.plan());
        if (divided.isPresent()) {
          obstacles.add("no hand can play the notes of %s together.".formatted(divided.get()));
        } else if (startsWithStretch(planned.plan())) {
          withStretch = withStretch.or(() -> Optional.of(planned));
        } else {
          return Optional.of(planned);
        }
      } catch (InfeasibleBriefException e) {
        obstacles.add(e.getMessage());
      }
    }
    return withStretch;
  }

  /** Whether the first note of a plan needs a stretch. */
  private static boolean startsWithStretch(Plan plan) {
    return plan.grips().get(0).placements().stream().anyMatch(one -> one.stretch() > 0);
  }

  /** The first place where no hand can play the notes that sound together. */
  private static Optional<Place> dividedChord(Plan plan) {
    return IntStream.range(0, plan.grips().size())
        .filter(m -> plan.grips().get(m).divided())
        .mapToObj(m -> plan.passage().moments().get(m).place())
        .findFirst();
  }

  private FingeringException outOfRange() {
    Instrument instrument = fingerboard.instrument();
    if (from.filter(start -> sounding(start).midi() < instrument.lowest().midi()).isPresent()) {
      return new FingeringException(
          "%s is below %s, the lowest note of the %s: start higher, or leave the start out."
              .formatted(
                  from.get().display(),
                  instrument.lowest().plusOctaves(-instrument.writtenOctaves()).display(),
                  instrument.nameInSentence()));
    }
    Optional<ScaleExercise> most = most(octaves -> onFingerboard(octaves).stream().findFirst());
    String start = from.isPresent() ? "start lower" : "ask for another scale";
    return new FingeringException(
        "The %s has %s%s: %s."
            .formatted(
                instrument.nameInSentence(),
                mostOctaves(most),
                most.isPresent() || from.isEmpty() ? "" : " from " + from.get().display(),
                most.isEmpty()
                    ? start
                    : "ask for fewer octaves" + (from.isPresent() ? ", or " + start : "")));
  }

  private FingeringException infeasible(ScaleExercise first, String obstacle) {
    Optional<ScaleExercise> most =
        most(
            octaves ->
                lowest(onFingerboard(octaves), new ArrayList<>()).map(PlannedScale::exercise));
    return new FingeringException(
        "With these demands, the %s has %s; from %s: %s"
            .formatted(
                fingerboard.instrument().nameInSentence(),
                mostOctaves(most),
                first.from().display(),
                obstacle));
  }

  /**
   * The exercise with the most octaves, fewer than requested.
   *
   * @param exercise gives an exercise with a number of octaves, if there is one
   */
  private Optional<ScaleExercise> most(IntFunction<Optional<ScaleExercise>> exercise) {
    return IntStream.iterate(request.octaves() - 1, octaves -> octaves > 0, octaves -> octaves - 1)
        .mapToObj(exercise)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private String mostOctaves(Optional<ScaleExercise> most) {
    String scale =
        request.scale().nameInSentence()
            + (request.pattern().label().isEmpty() ? "" : " " + request.pattern().label());
    return most.map(
            one ->
                "at most %s of %s, from %s, not %d"
                    .formatted(
                        ScaleRequest.octaves(one.request().octaves()),
                        scale,
                        one.from().display(),
                        request.octaves()))
        .orElse("no octave of " + scale);
  }
}
