package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.cli.student.ScoringContext;
import fingering.page.AuditionContent;
import fingering.page.AuditionPage;
import fingering.page.view.SkillTable;
import java.util.stream.IntStream;

/** An audition sheet with its plans as an HTML page. */
public final class AuditionHtml {
  private AuditionHtml() {}

  /** The page. */
  public static String of(PlannedSheet sheet, ScoringContext scoring) {
    return AuditionPage.of(content(sheet, scoring));
  }

  /** The content of the page. */
  public static AuditionContent content(PlannedSheet sheet, ScoringContext scoring) {
    AskedTable table = new AskedTable(sheet);
    return new AuditionContent(
        AuditionText.title(sheet),
        ImmutableList.copyOf(AuditionVerdict.of(sheet)),
        ImmutableList.of(scoring.line()),
        new SkillTable(table.head(), table.rows()),
        IntStream.range(0, sheet.ready().size())
            .mapToObj(piece -> piece(sheet, scoring, piece))
            .collect(ImmutableList.toImmutableList()),
        sheet.problemLines(),
        String.join(" ", AuditionText.care(sheet, scoring)));
  }

  private static AuditionContent.Piece piece(
      PlannedSheet sheet, ScoringContext scoring, int number) {
    AuditionPieceText text = new AuditionPieceText(sheet, scoring, number);
    return new AuditionContent.Piece(
        sheet.title(number),
        ImmutableList.<String>builder()
            .add(text.positions())
            .addAll(text.shown())
            .addAll(text.remarks())
            .build(),
        sheet.alone(number),
        sheet.ready().get(number).printed());
  }
}
