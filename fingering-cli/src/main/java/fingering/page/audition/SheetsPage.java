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
import fingering.page.template.JtesheetanswerGenerated;
import fingering.page.template.JtesheetnothingGenerated;
import fingering.page.template.JtesheetplansGenerated;
import fingering.page.template.JtesheetsGenerated;
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

  /**
   * What a change of a sheet changes on its page; what is typed in forms for more stays.
   *
   * @param all whether the upper part of the form changes too
   */
  public static String answer(SheetView view, boolean all) {
    return Templates.filled(
        output -> JtesheetanswerGenerated.render(output, Templates.PLAIN, view, all));
  }

  /** The plans of a sheet. */
  public static String plans(SheetPlansView view) {
    return Templates.filled(output -> JtesheetplansGenerated.render(output, Templates.PLAIN, view));
  }

  /** A sentence in place of the plans of a sheet. */
  public static String nothing(String sentence) {
    return Templates.filled(
        output -> JtesheetnothingGenerated.render(output, Templates.PLAIN, sentence));
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
        output -> JtesheetaddedGenerated.render(output, Templates.PLAIN, sentence, address, link));
  }
}
