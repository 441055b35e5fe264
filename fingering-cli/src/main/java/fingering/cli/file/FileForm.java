package fingering.cli.file;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** A form of files, and the endings of file names that promise it (common practice, no source). */
public enum FileForm {
  /** Findings for editors and build servers. It comes before JSON because of its long ending. */
  SARIF("sarif", "", "sarif", "sarif.json"),
  TEXT("text", "", "txt", "text"),
  JSON("json", "", "json"),
  HTML("html", "", "html", "htm"),
  SVG("svg", "", "svg"),
  YAML("yaml", "", "yaml", "yml"),
  SCORE("a score", "--write", "musicxml", "mxl", "xml", "abc"),
  CALENDAR("a calendar", "--calendar", "ics"),
  MIDI("midi", "--midi", "mid", "midi"),
  PDF("pdf", "", "pdf"),
  IMAGE("such a picture", "", "png", "jpg", "jpeg", "gif");

  private final String words;
  private final String option;
  private final ImmutableList<String> endings;

  FileForm(String words, String option, String... endings) {
    this.words = words;
    this.option = option;
    this.endings = ImmutableList.copyOf(endings);
  }

  /** The form that the name of a file promises; empty if its ending is unknown. */
  public static Optional<FileForm> of(Path file) {
    String name = Ascii.toLowerCase(file.toString());
    return Stream.of(values())
        .filter(form -> form.endings.stream().anyMatch(ending -> name.endsWith("." + ending)))
        .findFirst();
  }

  /** The form in words: {@code text}. */
  public String words() {
    return words;
  }

  /** The option that makes this form in some commands; empty if there is none. */
  public String option() {
    return option;
  }

  /** The usual ending: {@code .txt}. */
  public String ending() {
    return "." + endings.get(0);
  }
}
