package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Place;
import java.util.Optional;

/**
 * A place where a plan can fail at tempo.
 *
 * @param place where it is
 * @param measures the measures in which it lies, as printed
 * @param why what is hard there
 * @param todo what to do, a sentence each
 * @param check the ringing note by which to hear whether the hand has arrived; empty where there is
 *     none
 * @param exercise the exercise written out; empty where there is nothing to be written
 */
public record PracticeSpot(
    Place place,
    String measures,
    String why,
    ImmutableList<String> todo,
    Optional<String> check,
    Optional<SpotExercise> exercise) {}
