package fingering.music;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instrument;

/**
 * The music of one part, or some measures of it, ready to be planned.
 *
 * @param title title of the score, empty where it has none
 * @param partId the part's id in the score
 * @param partName the part's name as printed
 * @param instrument the instrument it is read for
 * @param tempo the tempo at which it begins, as asked for, printed or assumed
 * @param measures the measures, in order
 * @param moments the moments, in order of time
 * @param remarks what was assumed in reading, a sentence each
 */
public record Passage(
    String title,
    String partId,
    String partName,
    Instrument instrument,
    Tempo tempo,
    ImmutableList<Measure> measures,
    ImmutableList<Moment> moments,
    ImmutableList<String> remarks) {

  /** All sounding notes in score order, those of a chord lowest first. */
  public ImmutableList<Note> notes() {
    return moments.stream()
        .flatMap(moment -> moment.struck().stream())
        .collect(ImmutableList.toImmutableList());
  }
}
