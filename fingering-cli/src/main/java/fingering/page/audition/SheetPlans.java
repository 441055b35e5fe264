package fingering.page.audition;

import static fingering.page.view.PageText.text;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.page.AuditionContent;
import fingering.page.AuditionPage;
import fingering.page.NoteWays;
import fingering.page.live.SheetPlansView;
import fingering.page.live.SheetPlansView.Field;
import fingering.page.live.SheetPlansView.Link;
import fingering.page.live.SheetPlansView.Row;
import fingering.verdict.PlanFigures;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;

/** The plans of an audition sheet in words and music. */
public final class SheetPlans {
  private static final String PIECE = "piece";
  private static final Splitter RANGES = Splitter.on(", ");

  /** The most ranges of measures that are listed for a piece. */
  private static final int MOST_RANGES = 8;

  private SheetPlans() {}

  /**
   * The plans.
   *
   * @param address the address of the sheet
   * @param student for whom they are made, and on what
   * @param links where a piece of the sheet is opened, by its number from 1; empty if nowhere
   */
  public static SheetPlansView of(
      SheetResult result, String address, String student, IntFunction<String> links) {
    AuditionContent content = result.content();
    ImmutableList.Builder<SheetPlansView.Piece> pieces = ImmutableList.builder();
    Set<Glyph> known = EnumSet.noneOf(Glyph.class);
    for (int i = 0; i < content.pieces().size(); i++) {
      int number = result.planned().get(i);
      pieces.add(
          new SheetPlansView.Piece(
              AuditionPage.piece(content.pieces().get(i), PIECE + number, known),
              links.apply(number)));
    }
    return new SheetPlansView(
        address,
        content.title(),
        student,
        content.answer(),
        result.asked().stream().map(SheetPlans::row).collect(ImmutableList.toImmutableList()),
        pieces.build(),
        result.problems().stream()
            .map(one -> text("panel.problem", one.number(), one.sentence()))
            .collect(ImmutableList.toImmutableList()),
        content.care());
  }

  private static Row row(SheetResult.Asked asked) {
    ImmutableList.Builder<Field> fields = ImmutableList.builder();
    asked
        .advice()
        .ifPresent(
            advice ->
                advice.scale().keys().forEach((key, value) -> fields.add(new Field(key, value))));
    return new Row(
        asked.what(),
        asked.met(),
        asked.met() ? text("panel.shown") : text("panel.missing"),
        asked.shown().stream()
            .map(
                one ->
                    new Link(
                        PIECE + one.number(),
                        text("panel.piece", one.number(), one.name()),
                        text("panel.where", some(one.measures()), one.amount())))
            .collect(ImmutableList.toImmutableList()),
        remarks(asked),
        asked.offers().stream()
            .map(
                offer ->
                    text(
                        "panel.offer",
                        offer.number(),
                        offer.name(),
                        offer.measures(),
                        price(offer.more())))
            .collect(ImmutableList.toImmutableList()),
        fields.build(),
        asked.advice().map(advice -> text("panel.add-advised", advice.name())).orElse(""));
  }

  /** The first measures of a long list. */
  private static String some(String measures) {
    List<String> ranges = RANGES.splitToList(measures);
    return ranges.size() <= MOST_RANGES
        ? measures
        : text("panel.measures-more", String.join(", ", ranges.subList(0, MOST_RANGES)));
  }

  private static ImmutableList<String> remarks(SheetResult.Asked asked) {
    if (asked.easiest()) {
      return ImmutableList.of();
    }
    ImmutableList.Builder<String> remarks = ImmutableList.builder();
    if (asked.met()) {
      remarks.add(text("panel.not-easiest"));
    } else if (asked.offers().isEmpty()) {
      remarks.add(text("panel.nowhere"));
    } else {
      remarks.add(text("panel.not-together"));
    }
    asked
        .advice()
        .ifPresent(advice -> remarks.add(text("panel.advice", advice.name(), advice.position())));
    return remarks.build();
  }

  private static String price(PlanFigures more) {
    List<String> figures = NoteWays.figures(more);
    return figures.isEmpty() ? text("panel.harder") : String.join(", ", figures);
  }
}
