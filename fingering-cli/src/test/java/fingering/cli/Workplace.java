package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The folder in which a reader of the handbook types its commands, with a copy of docs. Java cannot
 * change its working directory, so the folder is put before every word that names a file.
 */
final class Workplace {
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final Pattern APPENDED = Pattern.compile("echo '([^']*)' >> (\\S+)");
  private static final Pattern CHANGED = Pattern.compile("sed -i 's/([^/]*)/([^/]*)/' (\\S+)");
  private static final String REDIRECTION = " >+\\s*\\S+$";
  private static final Pattern FILE =
      Pattern.compile(
          "[\\w./*-]+(/|\\.(musicxml|xml|mxl|abc|yaml|json|journal|html|svg|sarif"
              + "|ics)(@.*)?)");
  private static final Set<String> BEFORE_A_FILE =
      Set.of("--journal", "--calendar", "--exercises", "--midi", "--output", "--write");

  /** The date of docs/practice.md, for commands that depend on the current date. */
  private static final String TODAY = "2026-11-21";

  private final Path folder;
  private int lastCode;

  Workplace(Path folder) throws IOException {
    this.folder = folder;
    copy(DocumentedCommand.DOCS, folder.resolve("docs"));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  /** Copies a file of docs to the name that pages use for a reader's own file. */
  Workplace with(String name, String original) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.copy(folder.resolve("docs").resolve(original), file);
    return this;
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  /**
   * Runs a command as typed. {@code echo} adds a line to a file or returns the last exit code;
   * {@code sed} changes a line. Redirected output is returned too.
   */
  Session run(String command) throws IOException {
    Matcher appended = APPENDED.matcher(command);
    if (appended.matches()) {
      Files.writeString(
          file(appended.group(2)), appended.group(1) + "\n", StandardOpenOption.APPEND);
      return new Session(0, "", "");
    }
    Matcher changed = CHANGED.matcher(command);
    if (changed.matches()) {
      Path file = file(changed.group(3));
      String before = Files.readString(file);
      String after = before.replaceAll("(?m)" + changed.group(1), changed.group(2));
      assertThat(after).as(command).isNotEqualTo(before);
      Files.writeString(file, after);
      return new Session(0, "", "");
    }
    if (command.equals("echo $?")) {
      return new Session(0, lastCode + "\n", "");
    }
    Session session = Session.of(words(command.replaceFirst(REDIRECTION, "")).toArray());
    lastCode = session.code();
    return new Session(session.code(), shown(session.out()), shown(session.err()));
  }

  /** The output as the reader sees it, without the folder of the workplace. */
  private String shown(String printed) {
    return printed.replace(folder + "/", "");
  }

  private List<String> words(String command) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(command);
    String before = "";
    while (matcher.find()) {
      String word = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
      boolean file =
          BEFORE_A_FILE.contains(before)
              || word.startsWith("docs/")
              || FILE.matcher(word).matches();
      words.add(file ? folder + "/" + word : word);
      before = word;
    }
    words.remove(0);
    add(words, "practice", "--today", TODAY);
    if (words.contains("--lesson")) {
      return words;
    }
    if (words.contains("journal") && words.contains("add")) {
      add(words, "journal", "--at", TODAY + "T18:30");
    }
    add(words, "journal", "--journal", folder + "/practice.journal");
    return words;
  }

  private static void add(List<String> words, String command, String option, String value) {
    if (words.get(0).equals(command) && !words.contains(option)) {
      words.add(option);
      words.add(value);
    }
  }
}
