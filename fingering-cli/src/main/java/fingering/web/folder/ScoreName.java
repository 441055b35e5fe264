package fingering.web.folder;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableSet;
import fingering.page.TypePage;
import java.util.Locale;

/** What the name of a file says about its content. */
public enum ScoreName {
  SCORE("musicxml", "xml", "mxl", "abc"),
  LESSON("yaml", "yml"),
  PDF("pdf"),
  PICTURE("png", "jpg", "jpeg", "gif", "tif", "tiff", "bmp", "webp", "heic", "heif", "svg"),
  SOUND("mid", "midi", "mp3", "wav", "ogg", "flac", "m4a"),
  NOTATION("mscz", "mscx", "sib", "musx", "mus", "dorico", "ove", "enc", "cap", "capx", "nwc"),
  OTHER;

  private final ImmutableSet<String> endings;

  ScoreName(String... endings) {
    this.endings = ImmutableSet.copyOf(endings);
  }

  /** The kind of a name. */
  public static ScoreName of(String name) {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    for (ScoreName kind : values()) {
      if (kind.endings.contains(ending)) {
        return kind;
      }
    }
    return OTHER;
  }

  /** Whether scores have such names. */
  public boolean readable() {
    return this == SCORE;
  }

  /** What to do with a file that is no score, in one sentence. */
  public String advice() {
    return TypePage.insteadInWords(phrase());
  }

  /** The same sentence as HTML, with a link to the page on which an excerpt is typed. */
  public String adviceWithLink() {
    return TypePage.instead(phrase());
  }

  private String phrase() {
    return switch (this) {
      case PDF -> text("wrong.pdf");
      case PICTURE -> text("wrong.picture");
      case SOUND -> text("wrong.sound");
      case NOTATION -> text("wrong.notation");
      case SCORE, LESSON, OTHER -> text("wrong.other");
    };
  }
}
