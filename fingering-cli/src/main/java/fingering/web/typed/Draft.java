package fingering.web.typed;

import fingering.page.TypePage;
import java.util.Optional;

/**
 * A text that is being typed. Immutable: a change makes a new one.
 *
 * @param id its id in addresses
 * @param name the name of its file, with ending; empty if it was never saved
 * @param text the text as typed so far
 * @param stored the content of its file as last read or written here; empty if it was never saved
 */
public record Draft(String id, String name, String text, Optional<String> stored) {

  /**
   * A new page.
   *
   * @param instrument the id of the instrument, whose open strings are its first notes
   */
  public static Draft fresh(String id, String instrument) {
    return new Draft(id, "", TypePage.start(instrument), Optional.empty());
  }

  /** The address of its page. */
  public String address() {
    return "/type/" + id;
  }

  /** Whether the text would be lost if the program ended. */
  public boolean unsaved() {
    return !TypePage.untouched(text)
        && !stored.map(String::stripTrailing).equals(Optional.of(text.stripTrailing()));
  }

  /** The same with another text. */
  public Draft with(String newText) {
    return new Draft(id, name, newText, stored);
  }

  /** The same after its text was saved. */
  Draft saved(String file, String content) {
    return new Draft(id, file, content, Optional.of(content));
  }
}
