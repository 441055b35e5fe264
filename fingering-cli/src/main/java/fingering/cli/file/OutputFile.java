package fingering.cli.file;

import com.google.common.base.Ascii;
import fingering.cli.terminal.Screen;
import fingering.cli.terminal.TextStyle;
import fingering.musicxml.UnwritableScoreException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Where to print; shared by the commands. */
public class OutputFile {
  @Option(
      names = "--output",
      paramLabel = "FILE",
      description = "Print into a new file instead of the terminal.")
  Optional<Path> output = Optional.empty();

  /** Refuses a file that is there already, or has no folder, before any work is done. */
  public void check() {
    output.ifPresent(file -> refuse(file, "--output"));
  }

  /** Refuses such a file, and names the option that is to have another. */
  public static void refuse(Path file, String option) {
    if (Files.exists(file)) {
      throw existing(file, option);
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      throw new UnwritableScoreException(
          "%s cannot be written because there is no folder %s: make it first, or choose another."
              .formatted(file, folder));
    }
  }

  static UnwritableScoreException existing(Path file, String option) {
    return new UnwritableScoreException(file + " exists already; give " + option + " a new name.");
  }

  static UnwritableScoreException unwritable(Path file, IOException e) {
    return new UnwritableScoreException(
        file + " cannot be written; check the folder, its permissions and the space on its disk.",
        e);
  }

  /** The form of these that the ending of the file's name tells, as in {@code plans.html}. */
  public final <F extends Enum<F>> Optional<F> named(Class<F> forms) {
    String name = output.map(file -> Ascii.toLowerCase(file.toString())).orElse("");
    return EnumSet.allOf(forms).stream()
        .filter(form -> name.endsWith("." + Ascii.toLowerCase(form.name())))
        .findFirst();
  }

  /** Whether what is printed are words to be read, and no form with an encoding of its own. */
  public boolean words() {
    return true;
  }

  /** Prints the text where the options say, and tells of the file that it makes. */
  public void print(String text, CommandSpec spec) {
    try (NewFiles files = new NewFiles()) {
      print(text, files, spec);
    }
  }

  /**
   * Prints the text where the options say, together with other files that are to appear, and tells
   * of all files that it makes.
   */
  public void print(String text, NewFiles files, CommandSpec spec) {
    output.ifPresent(file -> files.text(text, file, "--output"));
    files.appear();
    if (output.isEmpty()) {
      PrintWriter out = spec.commandLine().getOut();
      PrintWriter printer = words() ? out : Screen.exact(out);
      printer.print(text);
      printer.flush();
    }
    files.tell(spec);
  }

  /** Tells of the file that was made, if any. */
  public void told(CommandSpec spec) {
    output.ifPresent(file -> WrittenFiles.tell(spec, file));
  }

  /**
   * The name of an unfinished file beside a target. No temporary file of the system: those are
   * readable to nobody else, and what is written is for others.
   */
  static Path beside(Path target) {
    return target.resolveSibling("." + UUID.randomUUID() + ".part");
  }

  /** Whether to colour: only on a terminal that can, and never where NO_COLOR is set. */
  public TextStyle style() {
    return TextStyle.of(
        output.isEmpty()
            && CommandLine.Help.Ansi.AUTO.enabled()
            && !"dumb".equals(System.getenv("TERM")));
  }

  /** Columns of the terminal, 80 where it does not say. */
  public static int columns() {
    String columns = System.getenv("COLUMNS");
    try {
      return columns == null ? 80 : Math.max(60, Math.min(200, Integer.parseInt(columns.strip())));
    } catch (NumberFormatException e) {
      return 80;
    }
  }
}
