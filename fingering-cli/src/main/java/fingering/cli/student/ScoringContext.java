package fingering.cli.student;

import fingering.scoring.Scoring;
import fingering.tempo.PlayerSpeed;
import java.util.Optional;

/**
 * The scoring of plans and where it comes from. Every output of plans names it.
 *
 * @param scoring the rules with their weights
 * @param weights the name of the file of weights; empty if there is none
 * @param preset the name of the preset; empty if the file of weights names every rule
 * @param students the students that the plans are made for
 * @param level how fast the player is
 */
public record ScoringContext(
    Scoring scoring,
    Optional<String> weights,
    Optional<String> preset,
    Students students,
    PlayerSpeed level) {

  /** The names of the weights, the preset and the player files, as a line of text. */
  public String line() {
    return points()
        + (students.known().isEmpty()
            ? ""
            : (students.several() ? "; players: " : "; player: ") + students.files());
  }

  private String points() {
    return weights
        .map(
            file ->
                "Weights: "
                    + file
                    + preset.map(name -> ", and " + name + " for the rest").orElse(""))
        .orElseGet(() -> "Preset: " + preset.orElseThrow());
  }
}
