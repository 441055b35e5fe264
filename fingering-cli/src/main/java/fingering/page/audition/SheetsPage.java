package fingering.page.audition;

import fingering.page.live.LiveFrame;
import fingering.page.live.ScalesView;
import fingering.page.live.SheetPlansView;
import fingering.page.live.SheetView;
import fingering.page.live.SheetsView;
import fingering.page.template.JtescalesGenerated;
import fingering.page.template.JtescalewaysGenerated;
import fingering.page.template.JtesheetGenerated;
import fingering.page.template.JtesheetaddedGenerated;
import fingering.page.template.JtesheetformGenerated;
import fingering.page.template.JtesheetplansGenerated;
import fingering.page.template.JtesheetsGenerated;
import fingering.page.template.JtetroubleGenerated;
import fingering.page.view.Templates;

/** The pages of scales and audition sheets, and the pieces that replace parts of them. */
public final class SheetsPage {
  private SheetsPage() {}

  /** The list of sheets. */
  public static String list(LiveFrame frame, SheetsView view) {
    return Templates.filled(
        output -> JtesheetsGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The page of a sheet, which then asks for the plans. */
  public static String page(LiveFrame frame, SheetView view) {
    return Templates.filled(
        output -> JtesheetGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The form of a sheet, which takes the place of the one before. */
  public static String form(SheetView view) {
    return Templates.filled(
        output -> JtesheetformGenerated.render(output, Templates.PLAIN, view, true));
  }

  /** The plans of a sheet. */
  public static String plans(SheetPlansView view) {
    return Templates.filled(output -> JtesheetplansGenerated.render(output, Templates.PLAIN, view));
  }

  /** A sentence in place of the plans of a sheet that has no pieces yet. */
  public static String nothing(String sentence) {
    return Templates.filled(
        output -> JtetroubleGenerated.render(output, Templates.PLAIN, sentence));
  }

  /** The page of scales, which then asks for the fingerings. */
  public static String scales(LiveFrame frame, ScalesView view) {
    return Templates.filled(
        output -> JtescalesGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The fingerings of a scale. */
  public static String ways(ScalesView.Ways view) {
    return Templates.filled(output -> JtescalewaysGenerated.render(output, Templates.PLAIN, view));
  }

  /** A sentence about what was kept or added, with a link to it. */
  public static String added(String sentence, String address, String link) {
    return Templates.filled(
        output ->
            JtesheetaddedGenerated.render(output, Templates.PLAIN, sentence, address, link));
  }
}
