package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.engraving.EngravedSystem;
import fingering.engraving.glyph.Glyph;
import fingering.page.HandoutFit.Fitted;
import fingering.page.HandoutFit.HandoutParts;
import fingering.page.live.SheetBar;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.music.Rings;
import fingering.page.template.JtehandoutGenerated;
import fingering.page.view.HandoutContent;
import fingering.page.view.HandoutView;
import fingering.page.view.HandoutView.Side;
import fingering.page.view.HandoutView.Spot;
import fingering.page.view.HandoutView.Work;
import fingering.page.view.Ladder;
import fingering.page.view.PractisedSpot;
import fingering.page.view.Templates;
import fingering.svg.Svg;
import gg.jte.Content;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * One side of paper for a student: the music with the fingers of one plan and what to circle, the
 * tempo ladder to tick, a few spots with their exercises, and lines to write on.
 *
 * @param html the page
 * @param sides the sides of paper that it fills
 */
public record HandoutPage(String html, int sides) {
  /** The decimals of lengths in millimetres. */
  private static final int DECIMALS = 2;

  /** The rows of a ladder to fill in. */
  private static final int EMPTY_ROWS = 14;

  /** Lays out a handout. */
  public static HandoutPage of(HandoutContent content) {
    return of(content, Optional.empty());
  }

  /** Lays out a handout that the local page shows. */
  public static HandoutPage of(HandoutContent content, SheetBar bar) {
    return of(content, Optional.of(bar));
  }

  private static HandoutPage of(HandoutContent content, Optional<SheetBar> bar) {
    Lanes lanes = Lanes.of(content.plan(), content.rival());
    MusicPanel music =
        new MusicPanel(
            content.plan().passage(),
            content.printed(),
            lanes,
            Rings.of(content.plan().passage(), content.circles()));
    ImmutableList<Optional<MusicPanel>> exercises =
        content.spots().stream()
            .map(spot -> spot.exercise().flatMap(MusicPanel::of))
            .collect(ImmutableList.toImmutableList());
    Ladder ladder = content.ladder().orElseGet(HandoutPage::empty);
    HandoutParts parts =
        new HandoutParts(
            music,
            exercises,
            content.spots(),
            ladder,
            how(content),
            about(content, lanes).size(),
            content.title(),
            lanes.signs() + " " + text("handout.rings"),
            content.care(),
            content.paper().width(),
            content.paper().height());
    Fitted fitted = HandoutFit.of(parts);
    List<EngravedSystem> all = new ArrayList<>();
    fitted.sides().forEach(all::addAll);
    HandoutView view = view(content, lanes, parts, fitted, all);
    Content styles =
        PageStyle.handout(content.paper(), margin(fitted.space()), margin(fitted.exerciseSpace()));
    String html =
        Templates.filled(
            output -> JtehandoutGenerated.render(output, Templates.PLAIN, styles, view, bar));
    return new HandoutPage(html, fitted.sides().size());
  }

  /**
   * The page of laid out parts.
   *
   * @param all takes every drawn line, for the shapes that they use
   */
  private static HandoutView view(
      HandoutContent content,
      Lanes lanes,
      HandoutParts parts,
      Fitted fitted,
      List<EngravedSystem> all) {
    int number = fitted.sides().size();
    ImmutableList.Builder<Side> sides = ImmutableList.builder();
    for (int i = 0; i < number; i++) {
      String running =
          i == 0 ? "" : text("handout.running", content.title(), student(content), i + 1, number);
      sides.add(
          new Side(
              running, lines(parts.music(), fitted.sides().get(i), parts.width(), fitted.space())));
    }
    ImmutableList.Builder<Spot> spots = ImmutableList.builder();
    for (int i = 0; i < fitted.spots(); i++) {
      PractisedSpot spot = content.spots().get(i);
      Optional<MusicPanel> exercise = parts.exercises().get(i);
      List<EngravedSystem> drawn =
          exercise
              .map(panel -> panel.lines(parts.column() / fitted.exerciseSpace()))
              .orElse(List.of());
      all.addAll(drawn);
      spots.add(
          new Spot(
              spot.measures(),
              spot.text(),
              exercise
                  .map(panel -> lines(panel, drawn, parts.column(), fitted.exerciseSpace()))
                  .orElse(ImmutableList.of())));
    }
    return new HandoutView(
        Templates.elements(MusicPanel.shapes(all, EnumSet.noneOf(Glyph.class))),
        content.title(),
        about(content, lanes),
        sides.build(),
        new Work(fitted.ladder(), parts.how(), spots.build()),
        fitted.writing(),
        parts.signs(),
        content.care());
  }

  private static ImmutableList<HandoutView.Line> lines(
      MusicPanel panel, List<EngravedSystem> lines, double width, double space) {
    return lines.stream()
        .map(
            line ->
                new HandoutView.Line(
                    panel.view(line, width / space),
                    Svg.number(width, DECIMALS),
                    Svg.number((HandoutFit.height(line) + HandoutFit.OVERLAP) * space, DECIMALS)))
        .collect(ImmutableList.toImmutableList());
  }

  /** The white below a line; less than 0, since pictures may overlap. */
  private static String margin(double space) {
    return Svg.number(-HandoutFit.OVERLAP * space, DECIMALS);
  }

  private static String student(HandoutContent content) {
    return content.student().orElseGet(() -> text("handout.line"));
  }

  private static ImmutableList<String> about(HandoutContent content, Lanes lanes) {
    ImmutableList.Builder<String> about = ImmutableList.builder();
    String day = content.day().orElseGet(() -> text("handout.line"));
    String goal = content.goal().orElseGet(() -> text("handout.line"));
    about.add(text("handout.student", student(content), day, goal));
    about.add(text("handout.music", content.music(), content.plan().name()));
    if (content.rival().isPresent()) {
      about.add(String.join("; ", lanes.key()) + ".");
    }
    return about.build();
  }

  private static ImmutableList<String> how(HandoutContent content) {
    return content
        .ladder()
        .map(ladder -> ImmutableList.of(text("handout.how") + " " + ladder.figures()))
        .orElseGet(() -> ImmutableList.of(text("handout.how-empty")));
  }

  /** A ladder to fill in. */
  private static Ladder empty() {
    return new Ladder(
        ImmutableList.of(text("handout.day"), text("handout.start"), text("handout.clean"), ""),
        ImmutableList.copyOf(Collections.nCopies(EMPTY_ROWS, ImmutableList.of("", "", "", ""))),
        "");
  }
}
