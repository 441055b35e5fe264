package fingering.page;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.page.live.HomeView;
import fingering.page.live.LiveFrame;
import fingering.page.live.TypeView;
import fingering.page.live.TypeView.Start;
import fingering.page.live.TypedView;
import fingering.page.template.JtetypeGenerated;
import fingering.page.template.JtetypedGenerated;
import fingering.page.template.JtetypeinsteadGenerated;
import fingering.page.template.JtetypesavedGenerated;
import fingering.page.view.Templates;

/** The page on which an excerpt is typed, and what replaces parts of it. */
public final class TypePage {
  private TypePage() {}

  /**
   * What a new page contains: the fields above the notes, and the open strings. Accidentals hold as
   * in print.
   *
   * @param instrument the id of the instrument; any other text stands for the violin
   */
  public static String start(String instrument) {
    return start(
        TypeTools.instruments().stream()
            .filter(start -> start.id().equals(instrument))
            .findFirst()
            .orElseGet(() -> TypeTools.instruments().get(0)));
  }

  private static String start(Start instrument) {
    return text("type.start", instrument.name(), instrument.clef(), instrument.strings());
  }

  /** Whether nothing has been typed yet. */
  public static boolean untouched(String text) {
    return TypeTools.instruments().stream().anyMatch(start -> start(start).equals(text));
  }

  /**
   * The page.
   *
   * @param address the address of the draft on the server
   * @param name the name of its file, without ending; empty if it has none
   * @param unsaved whether the text would be lost if the program ended
   * @param drafts other drafts that are not saved
   */
  public static String of(
      LiveFrame frame,
      String address,
      String text,
      String name,
      boolean unsaved,
      String folder,
      ImmutableList<HomeView.Entry> drafts) {
    TypeView view =
        new TypeView(
            address,
            text,
            name,
            unsaved,
            folder,
            drafts,
            TypeTools.instruments(),
            TypeTools.choices(),
            TypeTools.tools(),
            TypeTools.legend(),
            LivePage.shapes());
    return Templates.filled(
        output -> JtetypeGenerated.render(output, Templates.PLAIN, frame, view));
  }

  /**
   * The music as typed.
   *
   * @param unsaved whether the text would be lost if the program ended
   */
  public static String drawn(TypedView view, boolean unsaved) {
    return Templates.filled(
        output -> JtetypedGenerated.render(output, Templates.PLAIN, view, unsaved));
  }

  /**
   * What was saved.
   *
   * @param sentence the file and its folder
   * @param score where it can be planned
   */
  public static String saved(String sentence, String score) {
    return Templates.filled(
        output -> JtetypesavedGenerated.render(output, Templates.PLAIN, sentence, score));
  }

  /** A sentence about a file that is no score, without full stop, and a link to this page. */
  public static String instead(String sentence) {
    return Templates.filled(
        output -> JtetypeinsteadGenerated.render(output, Templates.PLAIN, sentence));
  }

  /** The same sentence without a link. */
  public static String insteadInWords(String sentence) {
    return sentence + text("type.or") + text("type.instead") + ".";
  }
}
