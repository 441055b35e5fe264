package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.audition.Audition;
import fingering.audition.AuditionPlanner;
import fingering.cli.audition.SheetPieces.Problem;
import fingering.cli.audition.SheetPieces.Ready;
import fingering.cli.option.InstrumentOptions;
import fingering.cli.option.LimitOptions;
import fingering.cli.option.PlayerOptions;
import fingering.cli.student.ScoringContext;
import fingering.cli.student.Students;
import fingering.musicxml.SelectionException;
import fingering.sheet.AuditionSheet;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Plans an audition sheet for its student.
 *
 * @param sheet the sheet
 * @param player the student, and how the plans are made
 * @param students the student, as read
 * @param scoring the rules, as read
 * @param build the strings and the size of the instrument
 * @param keepPrinted whether excerpts keep the printed fingering
 * @param limit the largest score that is read
 */
public record SheetPlanner(
    AuditionSheet sheet,
    PlayerOptions player,
    Students students,
    ScoringContext scoring,
    InstrumentOptions build,
    boolean keepPrinted,
    LimitOptions limit) {

  /**
   * A planner for a sheet.
   *
   * @param player the student; that of the sheet if none is given
   * @throws FingeringException if the student or the rules cannot be read
   */
  public static SheetPlanner of(
      AuditionSheet sheet,
      PlayerOptions player,
      InstrumentOptions build,
      boolean keepPrinted,
      LimitOptions limit) {
    player.from(sheet::studentFile);
    Students students = player.students();
    return new SheetPlanner(
        sheet, player, students, player.weights.scoring(students), build, keepPrinted, limit);
  }

  /**
   * Reads the pieces, and plans each by itself.
   *
   * @throws FingeringException if the student plays another instrument; the message is one sentence
   */
  public SheetPieces pieces() {
    Instrument played = instrument();
    return new SheetPieces(
        sheet, played, player.hand(students, played, build), scoring.scoring(), keepPrinted, limit);
  }

  /**
   * Plans the pieces together.
   *
   * @param folder the new folder for the marked scores; empty if none are written
   * @throws FingeringException if the student plays another instrument, or no piece can be planned;
   *     the message is one sentence
   */
  public PlannedSheet plan(Optional<Path> folder) {
    SheetPieces pieces = pieces();
    if (pieces.ready().isEmpty()) {
      Problem first = pieces.problems().get(0);
      throw new SelectionException(
          "%s, line %d: %s".formatted(sheet.file(), first.line(), first.message()));
    }
    Audition audition =
        AuditionPlanner.plan(
            pieces.ready().stream().map(Ready::piece).collect(ImmutableList.toImmutableList()),
            sheet.requiredSkills(),
            sheet.inOnePiece());
    return new PlannedSheet(
        sheet, instrument(), pieces.ready(), audition, pieces.problems(), folder);
  }

  private Instrument instrument() {
    Instrument named = sheet.instrument();
    students
        .instrument()
        .filter(own -> !own.id().equals(named.id()))
        .ifPresent(
            own -> {
              throw new SelectionException(
                  "%s is for the %s, but the player of %s plays the %s: give another player file."
                      .formatted(
                          sheet.file(),
                          named.nameInSentence(),
                          students.files(),
                          own.nameInSentence()));
            });
    Instrument played = build.apply(named, students);
    students.requirePatterns(played);
    return played;
  }
}
