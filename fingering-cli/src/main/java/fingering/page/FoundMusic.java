package fingering.page;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Multimaps;
import fingering.check.FindingGroup;
import fingering.check.ReportOptions;
import fingering.engraving.EngravedSystem;
import fingering.engraving.drawing.Circled;
import fingering.engraving.glyph.Glyph;
import fingering.engraving.ink.Kind;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.music.print.PrintedPart;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.page.music.Lanes;
import fingering.page.music.MusicPanel;
import fingering.page.template.JtefoundGenerated;
import fingering.page.view.FoundLine;
import fingering.page.view.Templates;
import fingering.playability.CheckRequest;
import fingering.playability.Finding;
import fingering.playability.ScoreCheck;
import fingering.svg.Svg;
import fingering.tables.FingeringException;
import gg.jte.Content;
import gg.jte.html.HtmlContent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The measures of findings in notes, with the notes concerned in a ring: those of the most severe
 * ones only, so that the page of many scores stays small. One score at a time is read again and
 * forgotten, so no music is kept.
 */
final class FoundMusic {
  /** The most findings of a page that are drawn. */
  static final int MOST = 40;

  /** The most measures that are drawn for a finding. */
  private static final int MEASURES = 2;

  /** The width of a line of music, in staff spaces; two measures rarely need more. */
  private static final double WIDTH = 80;

  /** Pixels in a staff space. */
  private static final double SPACE = 5.5;

  private final Function<Path, Score> scores;
  private final CheckRequest request;
  private final int each;
  private final List<EngravedSystem> drawn = new ArrayList<>();
  private int left = MOST;

  /**
   * Music for some scores.
   *
   * @param scores reads a score
   * @param request what is checked
   * @param number the number of scores, which share what is drawn
   */
  FoundMusic(Function<Path, Score> scores, CheckRequest request, int number) {
    this.scores = scores;
    this.request = request;
    each = Math.max(2, MOST / Math.max(1, number));
  }

  /** A sentence about findings, and the part in which the first of them is. */
  private record Found(PartInfo part, Finding first) {}

  /** The music of the first finding of each sentence, the most severe first. */
  ImmutableMap<Finding, Content> of(Path file, ScoreCheck check, ReportOptions options) {
    List<Found> all =
        check.parts().stream()
            .flatMap(
                part ->
                    FindingGroup.of(options.shown(part), part.movements()).stream()
                        .flatMap(group -> group.sentences(Integer.MAX_VALUE - 1).stream())
                        .map(sentence -> new Found(part.part(), sentence.first())))
            .sorted(Comparator.comparing(found -> found.first().severity()))
            .limit(Math.min(each, left))
            .toList();
    if (all.isEmpty()) {
      return ImmutableMap.of();
    }
    try {
      return draw(scores.apply(file), all);
    } catch (FingeringException e) {
      // The findings are in words too; the file may have changed since it was checked.
      return ImmutableMap.of();
    }
  }

  private ImmutableMap<Finding, Content> draw(Score score, List<Found> all) {
    ImmutableMap.Builder<Finding, Content> music = ImmutableMap.builder();
    Multimaps.index(all, Found::part)
        .asMap()
        .forEach(
            (part, inPart) -> {
              Passage passage = score.passage(part, request.passage(score), request.setup());
              PrintedPart printed = score.printed(passage, Optional.empty());
              for (Found found : inPart) {
                left--;
                music.put(found.first(), draw(found.first(), passage, printed));
              }
            });
    return music.buildKeepingLast();
  }

  private Content draw(Finding finding, Passage passage, PrintedPart printed) {
    int first = finding.place().measureIndex();
    int last = Math.min(finding.to().measureIndex(), first + MEASURES - 1);
    MusicPanel panel =
        MusicPanel.excerpt(passage, printed, first, last, Lanes.NONE, ring(finding, passage));
    List<EngravedSystem> lines = panel.lines(WIDTH);
    drawn.addAll(lines);
    ImmutableList<FoundLine> shown =
        lines.stream()
            .map(
                line -> {
                  double width = MusicPanel.right(line);
                  return new FoundLine(panel.view(line, width), Svg.number(width * SPACE));
                })
            .collect(ImmutableList.toImmutableList());
    HtmlContent html = output -> JtefoundGenerated.render(output, Templates.PLAIN, shown);
    return html;
  }

  private static ImmutableList<Circled> ring(Finding finding, Passage passage) {
    Optional<Measure> measure = passage.measure(finding.place().measureIndex());
    return finding.place().measureIndex() != finding.to().measureIndex()
            || finding.notes().isEmpty()
            || measure.isEmpty()
        ? ImmutableList.of()
        : ImmutableList.of(
            new Circled(
                measure.get().start().add(finding.place().onset()).doubleValue(),
                ImmutableSet.of(Kind.HEAD)));
  }

  /** The shapes of all that is drawn. */
  Content shapes() {
    return Templates.elements(MusicPanel.shapes(drawn, EnumSet.noneOf(Glyph.class)));
  }
}
