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
 * Plans a scale from the lowest tonic from which it can be planned, where there is one from which
 * no finger has to reach out of the hand for the first note.
 */
public final class ScalePlanner {
  /** No string instrument goes higher. */
  private static final int HIGHEST_OCTAVE = 9;

  private final ScaleRequest request;
  private final Fingerboard fingerboard;
  private final Optional<Pitch> from;
  private final Function<Passage, Plan> planning;

  private ScalePlanner(
      ScaleRequest request,
      Fingerboard fingerboard,
      Optional<Pitch> from,
      Function<Passage, Plan> planning) {
    this.request = request;
    this.fingerboard = fingerboard;
    this.from = from;
    this.planning = planning;
  }

  /**
   * Plans a scale.
   *
   * @param request what is practised
   * @param instrument the instrument, as it is tuned and built
   * @param hand the player's left hand
   * @param from the tonic to begin with, as written; empty for the lowest, as above
   * @param planning makes a plan of a passage, and throws {@link InfeasibleBriefException} where
   *     there is none
   * @throws FingeringException if the instrument does not have so many octaves, or they cannot be
   *     planned so; the message is one sentence and names the most that can be
   */
  public static PlannedScale plan(
      ScaleRequest request,
      Instrument instrument,
      LeftHand hand,
      Optional<Pitch> from,
      Function<Passage, Plan> planning) {
    return new ScalePlanner(request, Fingerboard.of(instrument, hand), from, planning).plan();
  }

  private PlannedScale plan() {
    ImmutableList<ScaleExercise> all = onFingerboard(request.octaves());
    if (all.isEmpty()) {
      throw tooMany();
    }
    List<String> obstacles = new ArrayList<>();
    return lowest(all, obstacles).orElseThrow(() -> unmet(all.get(0), obstacles.get(0)));
  }

  /** The scale from each tonic from which its notes lie on the fingerboard, the lowest first. */
  private ImmutableList<ScaleExercise> onFingerboard(int octaves) {
    return from.map(Stream::of)
        .orElseGet(() -> IntStream.rangeClosed(0, HIGHEST_OCTAVE).mapToObj(request.scale()::tonic))
        .filter(tonic -> tonic.octave() + octaves <= HIGHEST_OCTAVE)
        .map(tonic -> exercise(octaves, tonic))
        .filter(exercise -> exercise.pitches().stream().allMatch(this::has))
        .collect(ImmutableList.toImmutableList());
  }

  private ScaleExercise exercise(int octaves, Pitch tonic) {
    return new ScaleExercise(request.withOctaves(octaves), fingerboard.instrument(), tonic);
  }

  private boolean has(Pitch written) {
    return !fingerboard.placements(sounding(written)).isEmpty();
  }

  private Pitch sounding(Pitch written) {
    return written.plusOctaves(fingerboard.instrument().writtenOctaves());
  }

  /**
   * The first of some that can be planned, and begins under the hand if there is one; why not is
   * added for each that cannot.
   */
  private Optional<PlannedScale> lowest(List<ScaleExercise> all, List<String> obstacles) {
    Optional<PlannedScale> reaching = Optional.empty();
    for (ScaleExercise exercise : all) {
      try {
        Score score = exercise.read();
        PlannedScale planned =
            new PlannedScale(exercise, score, planning.apply(exercise.passage(score)));
        Optional<Place> divided = divided(planned.plan());
        if (divided.isPresent()) {
          obstacles.add("no hand can hold the notes of %s together.".formatted(divided.get()));
        } else if (reaches(planned.plan())) {
          reaching = reaching.or(() -> Optional.of(planned));
        } else {
          return Optional.of(planned);
        }
      } catch (InfeasibleBriefException e) {
        obstacles.add(e.getMessage());
      }
    }
    return reaching;
  }

  /** Whether a finger has to leave the hand for the very first note. */
  private static boolean reaches(Plan plan) {
    return plan.grips().get(0).placements().stream().anyMatch(one -> one.stretch() > 0);
  }

  /** Where notes are to sound together that no hand can hold. */
  private static Optional<Place> divided(Plan plan) {
    return IntStream.range(0, plan.grips().size())
        .filter(m -> plan.grips().get(m).divided())
        .mapToObj(m -> plan.passage().moments().get(m).place())
        .findFirst();
  }

  private FingeringException tooMany() {
    Instrument instrument = fingerboard.instrument();
    if (from.filter(start -> sounding(start).midi() < instrument.lowest().midi()).isPresent()) {
      return new FingeringException(
          "%s lies below %s, the lowest note of the %s: start higher, or leave the start out."
              .formatted(
                  from.get().display(),
                  instrument.lowest().plusOctaves(-instrument.writtenOctaves()).display(),
                  instrument.spoken()));
    }
    Optional<ScaleExercise> most = most(octaves -> onFingerboard(octaves).stream().findFirst());
    String start = from.isPresent() ? "start lower" : "ask for another scale";
    return new FingeringException(
        "The %s has %s%s: %s."
            .formatted(
                instrument.spoken(),
                counted(most),
                most.isPresent() || from.isEmpty() ? "" : " from " + from.get().display(),
                most.isEmpty()
                    ? start
                    : "ask for fewer octaves" + (from.isPresent() ? ", or " + start : "")));
  }

  private FingeringException unmet(ScaleExercise first, String obstacle) {
    Optional<ScaleExercise> most =
        most(
            octaves ->
                lowest(onFingerboard(octaves), new ArrayList<>()).map(PlannedScale::exercise));
    return new FingeringException(
        "With what is asked for, the %s has %s; from %s: %s"
            .formatted(
                fingerboard.instrument().spoken(),
                counted(most),
                first.from().display(),
                obstacle));
  }

  /** The exercise of the most octaves, of fewer than are asked for, that there is. */
  private Optional<ScaleExercise> most(IntFunction<Optional<ScaleExercise>> some) {
    return IntStream.iterate(request.octaves() - 1, octaves -> octaves > 0, octaves -> octaves - 1)
        .mapToObj(some)
        .flatMap(Optional::stream)
        .findFirst();
  }

  private String counted(Optional<ScaleExercise> most) {
    String scale =
        request.scale().spoken()
            + (request.pattern().words().isEmpty() ? "" : " " + request.pattern().words());
    return most.map(
            one ->
                "%s of %s at most, from %s, and not %d"
                    .formatted(
                        ScaleRequest.counted(one.request().octaves()),
                        scale,
                        one.from().display(),
                        request.octaves()))
        .orElse("no octave of " + scale);
  }
}
