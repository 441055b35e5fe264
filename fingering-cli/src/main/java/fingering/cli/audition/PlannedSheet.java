package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.Audition;
import fingering.audition.PlannedPiece;
import fingering.cli.audition.SheetPieces.Problem;
import fingering.cli.audition.SheetPieces.Ready;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.sheet.AuditionSheet;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * An audition sheet with its plans.
 *
 * @param sheet the sheet
 * @param instrument the instrument with its tuning and size
 * @param ready the pieces that can be planned, in the order of the sheet
 * @param audition their plans, in the same order
 * @param problems why the others cannot be planned
 * @param folder the new folder for the marked scores; empty if none are written
 */
public record PlannedSheet(
    AuditionSheet sheet,
    Instrument instrument,
    ImmutableList<Ready> ready,
    Audition audition,
    ImmutableList<Problem> problems,
    Optional<Path> folder) {

  /** The number of a piece in the sheet, from 1. */
  int number(int piece) {
    return ready.get(piece).entry().number();
  }

  /** Number and name of a piece. */
  String title(int piece) {
    return number(piece) + ". " + planned(piece).piece().name();
  }

  /** A piece with its plan. */
  PlannedPiece planned(int piece) {
    return audition.pieces().get(piece);
  }

  /** The plan of a piece by itself. */
  Comparison alone(int piece) {
    Plan plan = planned(piece).plan();
    return new Comparison(plan.passage(), ImmutableList.of(plan), ImmutableList.of());
  }

  /** Why the other pieces cannot be planned, each with its line of the sheet. */
  ImmutableList<String> problemLines() {
    return problems.stream()
        .map(one -> "%s, line %d: %s".formatted(sheet.file(), one.line(), one.message()))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The score to practise first, if the pieces are written: the first that does not keep its
   * easiest fingering, else the first.
   */
  public Optional<Path> firstWritten() {
    int first =
        IntStream.range(0, ready.size())
            .filter(piece -> AuditionVerdict.changed(planned(piece)))
            .findFirst()
            .orElse(0);
    return written(first);
  }

  /** The file of a piece; empty if none are written. */
  Optional<Path> written(int piece) {
    return folder.map(place -> place.resolve(MarkedFolder.name(this, piece)));
  }

  /** What could not be done, each as a clause; empty if everything was. */
  public ImmutableList<String> open() {
    ImmutableList.Builder<String> open = ImmutableList.builder();
    if (!problems.isEmpty()) {
      open.add(
          "%d of %d pieces of %s cannot be planned and are listed at the end"
              .formatted(problems.size(), sheet.entries().size(), sheet.file()));
    }
    long unmet = audition.skills().stream().filter(skill -> !skill.met()).count();
    if (unmet > 0) {
      open.add(
          "%d of %d skills asked for in %s cannot be shown: ask for less, or choose other pieces"
              .formatted(unmet, audition.skills().size(), sheet.file()));
    }
    return open.build();
  }
}
