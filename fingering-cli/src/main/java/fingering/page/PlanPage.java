package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.template.JteplanGenerated;
import fingering.page.view.CircleGroup;
import fingering.page.view.Differences;
import fingering.page.view.NamedList;
import fingering.page.view.PageHead;
import fingering.page.view.PageHead.Section;
import fingering.page.view.PlaceLink;
import fingering.page.view.PlanView;
import fingering.page.view.Templates;
import fingering.plan.Comparison;
import fingering.plan.Plan;
import fingering.practice.CircleFinder;
import gg.jte.Content;
import java.util.ArrayList;
import java.util.List;

/**
 * A self-contained HTML page of plans: no script, no other file, nothing from the network. It
 * answers first, then shows the music and where the plans differ. What only some readers ask for is
 * folded.
 */
public final class PlanPage {
  /** The most measures with differences that are not folded. */
  private static final int MOST = 16;

  private final PageContent content;
  private final Comparison comparison;
  private final boolean alone;

  private PlanPage(PageContent content) {
    this.content = content;
    comparison = content.comparison();
    alone = comparison.plans().size() == 1;
  }

  /** The page as HTML. */
  public static String of(PageContent content) {
    return new PlanPage(content).page();
  }

  private String page() {
    PlanView view = view();
    return Templates.filled(
        output ->
            JteplanGenerated.render(output, Templates.PLAIN, head(view), PageStyle.sheet(), view));
  }

  private PageHead head(PlanView view) {
    ImmutableList.Builder<Section> sections = ImmutableList.builder();
    sections.add(new Section("music", text("music.heading")));
    if (!alone) {
      sections.add(new Section("differ", text("differ.heading")));
    }
    if (!view.demands().isEmpty()) {
      sections.add(new Section("demands", text("demands.heading")));
    }
    sections
        .add(new Section("figures", text("figures.heading")))
        .add(new Section("more", text("more.heading")));
    return new PageHead(
        content.title(),
        content.verdict(),
        content.about(),
        new Section("music", text("skip.music")),
        sections.build());
  }

  private PlanView view() {
    Lanes lanes = Lanes.of(content.main(), content.rival());
    CostTables costs = new CostTables(comparison);
    HandGraph hand = new HandGraph(comparison);
    return new PlanView(
        lanes.key(),
        lanes.signs(),
        new MusicPanel(comparison.passage(), content.printed(), lanes).html(),
        differences(),
        NamedList.of(content.demands()),
        costs.figures(content.tempi()),
        content.remarks(),
        NamedList.of(content.notes()),
        comparison.plans().stream()
            .flatMap(plan -> Strain.of(plan, alone).stream())
            .collect(ImmutableList.toImmutableList()),
        content.care(),
        CircleGroup.of(CircleFinder.of(comparison.passage(), content.printed()), true),
        comparison.plans().stream()
            .map(plan -> new StudentMarks(plan).shifts(name(plan)))
            .collect(ImmutableList.toImmutableList()),
        hand.panels(),
        hand.shades(),
        boards(),
        content.limits(),
        costs.costs());
  }

  /** The name of a plan; empty if it is the only one, and need not be named. */
  private String name(Plan plan) {
    return alone ? "" : plan.name();
  }

  /** The measures that decide between two plans first; the others are folded. */
  private Differences differences() {
    List<Measure> decisive = content.decisive().stream().limit(MOST).toList();
    List<Measure> others = new ArrayList<>(comparison.differingMeasures());
    others.removeAll(decisive);
    return new Differences(
        comparison.plans().stream().map(Plan::name).collect(ImmutableList.toImmutableList()),
        rows(decisive),
        rows(others));
  }

  private ImmutableList<Differences.Row> rows(List<Measure> measures) {
    List<MeasureFingers> fingers = comparison.plans().stream().map(MeasureFingers::new).toList();
    return measures.stream()
        .map(
            measure ->
                new Differences.Row(
                    PlaceLink.to(measure),
                    fingers.stream()
                        .map(plan -> plan.in(measure))
                        .collect(ImmutableList.toImmutableList())))
        .collect(ImmutableList.toImmutableList());
  }

  private ImmutableList<Content> boards() {
    double furthest =
        comparison.plans().stream().mapToDouble(FingerboardPicture::furthest).max().orElse(1);
    return comparison.plans().stream()
        .map(plan -> new FingerboardPicture(plan, name(plan), furthest).svg())
        .map(Templates::elements)
        .collect(ImmutableList.toImmutableList());
  }
}
