package fingering.page;

import fingering.page.live.CirclesView;
import fingering.page.live.LiveFrame;
import fingering.page.live.PracticeNow;
import fingering.page.live.PracticeView;
import fingering.page.template.JtelessoncirclesGenerated;
import fingering.page.template.JtelessonpartGenerated;
import fingering.page.template.JtelessonpracticeGenerated;
import fingering.page.template.JtepracticenowGenerated;
import fingering.page.view.SpotView;
import fingering.page.view.Templates;
import gg.jte.Content;
import java.util.List;

/** What the local page shows of a lesson beside its plans. */
public final class LessonTools {
  private LessonTools() {}

  /**
   * The practice page of a lesson, which then asks for its content.
   *
   * @param address the address of the lesson
   */
  public static String practice(LiveFrame frame, String address) {
    return Templates.filled(
        output -> JtelessonpracticeGenerated.render(output, Templates.PLAIN, frame, address));
  }

  /** The content of the practice page. */
  public static String practice(PracticeView view) {
    Content progress = Templates.elements(view.practice().progress().orElse(""));
    return Templates.filled(
        output -> JtepracticenowGenerated.render(output, Templates.PLAIN, view, progress));
  }

  /** The spots of the practice page, drawn. */
  public static List<SpotView> spots(PracticeNow now) {
    return PracticePage.spots(now.spots());
  }

  /** What to circle. */
  public static String circles(CirclesView view) {
    return Templates.filled(
        output -> JtelessoncirclesGenerated.render(output, Templates.PLAIN, view));
  }

  /**
   * Where a copy of the part was written.
   *
   * @param name the name of the file
   * @param folder its folder
   * @param address where it can be had
   */
  public static String written(String name, String folder, String address) {
    return Templates.filled(
        output -> JtelessonpartGenerated.render(output, Templates.PLAIN, name, folder, address));
  }
}
