package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Place;
import java.util.Optional;

/**
 * A place where a plan is likely to fail at tempo.
 *
 * @param place its first moment, or the note on which a shift arrives
 * @param measures its measures as printed: {@code 17} or {@code 15–17}
 * @param reason what is hard there, without a full stop
 * @param instructions how to practise it, one or more full sentences each
 * @param listenFor a note in octaves with an open string that shows whether the hand has arrived,
 *     without a full stop; empty if there is none
 * @param exercise the exercise; empty if none can be written
 */
public record PracticeSpot(
    Place place,
    String measures,
    String reason,
    ImmutableList<String> instructions,
    Optional<String> listenFor,
    Optional<SpotExercise> exercise) {}
