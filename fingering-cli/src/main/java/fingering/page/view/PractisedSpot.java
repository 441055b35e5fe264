package fingering.page.view;

import fingering.practice.SpotExercise;
import java.util.Optional;

/**
 * A spot to practise.
 *
 * @param measures its measures as printed
 * @param text what is hard there, and how to practise it
 * @param exercise its exercise; empty if there is none
 */
public record PractisedSpot(String measures, String text, Optional<SpotExercise> exercise) {}
