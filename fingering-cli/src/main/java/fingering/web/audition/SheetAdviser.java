package fingering.web.audition;

import com.google.common.collect.ImmutableList;
import fingering.exercise.ScaleRequest;
import fingering.page.audition.ScaleResult;
import fingering.page.audition.SheetResult;
import fingering.sheet.AuditionSheet;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.Optional;

/** Plans audition sheets and scales, as the commands do. */
public interface SheetAdviser {

  /**
   * Plans a sheet.
   *
   * @throws FingeringException if no piece can be planned; the message is one sentence
   */
  SheetResult plan(AuditionSheet sheet);

  /** Why pieces of a sheet cannot be planned, a sentence each; empty if they can. */
  ImmutableList<String> problems(AuditionSheet sheet);

  /**
   * Plans a scale in several ways.
   *
   * @param from where it begins, as typed: 4 or D4; empty for the lowest place that is possible
   * @param player the player file of the student; empty for an unknown one
   * @throws FingeringException if it cannot be played; the message is one sentence
   */
  ScaleResult scale(
      ScaleRequest request, Instrument instrument, String from, Optional<Path> player);
}
