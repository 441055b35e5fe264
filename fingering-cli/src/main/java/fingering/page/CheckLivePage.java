package fingering.page;

import fingering.check.CheckVerdict;
import fingering.check.CheckedFile;
import fingering.check.ReportOptions;
import fingering.musicxml.reading.Score;
import fingering.page.live.CheckView;
import fingering.page.live.LiveFrame;
import fingering.page.template.JtecheckfoundGenerated;
import fingering.page.template.JtechecksetGenerated;
import fingering.page.view.CheckedScore;
import fingering.page.view.Templates;
import fingering.playability.CheckLevel;
import fingering.playability.CheckRequest;
import fingering.playability.Finding;
import fingering.playability.FindingKind;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The check of an open score, on the local page. */
public final class CheckLivePage {
  private CheckLivePage() {}

  /** The players of a level in words. */
  public static String players(CheckLevel level) {
    return CheckVerdict.players(level);
  }

  /** The page, which then asks for what is found. */
  public static String page(LiveFrame frame, CheckView view) {
    return Templates.filled(
        output -> JtechecksetGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /**
   * What was found, which takes its place in the page.
   *
   * @param name the name of the file
   */
  public static String found(String name, Score score, ScoreCheck check, CheckRequest request) {
    ReportOptions options =
        new ReportOptions(check.level(), Severity.WORTH_KNOWING, Severity.RISKY);
    CheckedFile file = CheckedFile.of(Path.of(name), check, Optional.empty());
    FoundMusic music = new FoundMusic(path -> score, request, 1);
    Set<FindingKind> kinds = EnumSet.noneOf(FindingKind.class);
    check.findings().stream().map(Finding::kind).forEach(kinds::add);
    CheckedScore checked =
        CheckedScore.of(file, check, options, 1, music.of(file.file(), check, options));
    CheckView.Found found =
        new CheckView.Found(
            CheckVerdict.of(file, check), checked, music.shapes(), CheckPage.terms(kinds));
    return Templates.filled(
        output -> JtecheckfoundGenerated.render(output, Templates.PLAIN, found));
  }
}
