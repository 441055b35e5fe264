package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.Audition;
import fingering.audition.PlannedPiece;
import fingering.cli.audition.SheetPieces.Problem;
import fingering.cli.audition.SheetPieces.Ready;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A sheet with the plans for it.
 *
 * @param sheet the sheet
 * @param instrument the instrument, as it is tuned and built
 * @param ready the pieces that can be played, in the order of the sheet
 * @param audition their plans, in the same order
 * @param problems why the others cannot be played
 * @param folder the new folder into which the marked scores go; empty where none are written
 */
public record PlannedSheet(
    AuditionSheet sheet,
    Instrument instrument,
    ImmutableList<Ready> ready,
    Audition audition,
    ImmutableList<Problem> problems,
    Optional<Path> folder) {

  /** The number of a piece that can be played, as it stands in the sheet, from 1. */
  int number(int piece) {
    return ready.get(piece).entry().number();
  }

  /** A piece by number and name. */
  String title(int piece) {
    return number(piece) + ". " + planned(piece).piece().name();
  }

  /** A piece with its plan. */
  PlannedPiece planned(int piece) {
    return audition.pieces().get(piece);
  }

  /** Where a piece is written; empty where none are. */
  Optional<Path> written(int piece) {
    return folder.map(place -> place.resolve(MarkedFolder.name(this, piece)));
  }

  /** What could not be done, each as part of a sentence; nothing where all is well. */
  public ImmutableList<String> open() {
    ImmutableList.Builder<String> open = ImmutableList.builder();
    if (!problems.isEmpty()) {
      open.add(
          "%d of %d pieces of %s cannot be planned and are named with their lines at the end"
              .formatted(problems.size(), sheet.entries().size(), sheet.file()));
    }
    long unmet = audition.skills().stream().filter(skill -> !skill.met()).count();
    if (unmet > 0) {
      open.add(
          "%d of %d things asked for in %s cannot be shown: ask for less, or choose other pieces"
              .formatted(unmet, audition.skills().size(), sheet.file()));
    }
    return open.build();
  }
}
