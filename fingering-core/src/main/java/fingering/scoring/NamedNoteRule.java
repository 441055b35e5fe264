package fingering.scoring;

import fingering.fingerboard.Grip;
import fingering.music.Moment;
import java.util.function.ToLongBiFunction;

/** A note rule made of its description and a measure. */
record NamedNoteRule(
    String id, String name, String explanation, String unit, ToLongBiFunction<Moment, Grip> measure)
    implements NoteRule {
  @Override
  public long amount(Moment moment, Grip grip) {
    return measure.applyAsLong(moment, grip);
  }
}
