package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.engraving.glyph.Glyph;
import fingering.page.live.AnswerView;
import fingering.page.live.ConflictView;
import fingering.page.live.DemandsView;
import fingering.page.live.HomeView;
import fingering.page.live.LiveFrame;
import fingering.page.live.MusicLine;
import fingering.page.live.NoteView;
import fingering.page.live.OpenView;
import fingering.page.music.MusicPanel;
import fingering.page.template.JteanswerGenerated;
import fingering.page.template.JtechipsGenerated;
import fingering.page.template.JteconflictGenerated;
import fingering.page.template.JtedemandsGenerated;
import fingering.page.template.JtehomeGenerated;
import fingering.page.template.JtenoteGenerated;
import fingering.page.template.JteopenGenerated;
import fingering.page.template.JtesayGenerated;
import fingering.page.template.JtesystemsGenerated;
import fingering.page.template.JtetroubleGenerated;
import fingering.page.view.Templates;
import gg.jte.Content;

/**
 * The pages of the local server, and the pieces that replace parts of them. They have no style and
 * no script of their own: both are files of the server.
 */
public final class LivePage {
  private LivePage() {}

  /** The first page: what can be opened. */
  public static String home(LiveFrame frame, HomeView view) {
    return Templates.filled(
        output -> JtehomeGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The page of an open score, which then asks for the plans. */
  public static String open(LiveFrame frame, OpenView view) {
    return Templates.filled(
        output -> JteopenGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /** The plans of an open score, which take their places in its page. */
  public static String answer(AnswerView view) {
    return Templates.filled(output -> JteanswerGenerated.render(output, Templates.PLAIN, view));
  }

  /** Lines of music that take their places in the page of an open lesson. */
  public static String lines(ImmutableList<MusicLine> lines) {
    return Templates.filled(output -> JtesystemsGenerated.render(output, Templates.PLAIN, lines));
  }

  /** The ways to play a note. */
  public static String note(NoteView view) {
    return Templates.filled(output -> JtenoteGenerated.render(output, Templates.PLAIN, view));
  }

  /** Demands, each with a button to drop it. */
  public static String chips(String address, ImmutableList<DemandsView.Chip> chips) {
    return Templates.filled(
        output -> JtechipsGenerated.render(output, Templates.PLAIN, address, chips));
  }

  /** The demands on the chosen plan. */
  public static String demands(DemandsView view) {
    return Templates.filled(output -> JtedemandsGenerated.render(output, Templates.PLAIN, view));
  }

  /** Demands that cannot all be met. */
  public static String conflict(ConflictView view) {
    return Templates.filled(output -> JteconflictGenerated.render(output, Templates.PLAIN, view));
  }

  /** A page of one sentence, for readers without a page to show it in. */
  public static String say(LiveFrame frame, String sentence) {
    return Templates.filled(
        output -> JtesayGenerated.render(output, Templates.PLAIN, frame, sentence));
  }

  /** A sentence about what went wrong, for the page that is shown. */
  public static String trouble(String sentence) {
    return Templates.filled(
        output -> JtetroubleGenerated.render(output, Templates.PLAIN, sentence));
  }

  /** The style sheet of all pages of the server. */
  public static String style() {
    return PageStyle.live();
  }

  /** All shapes of notation, since any of them may be needed later. */
  public static Content shapes() {
    return Templates.elements(MusicPanel.shapes(ImmutableList.copyOf(Glyph.values())));
  }
}
