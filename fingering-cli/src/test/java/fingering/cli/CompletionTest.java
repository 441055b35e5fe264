package fingering.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Completion in a shell, and manual pages in man. */
class CompletionTest {
  private static final int COLUMNS = 80;

  @TempDir Path folder;

  private record Finished(int code, String output) {}

  private static Finished run(Object... words) throws IOException, InterruptedException {
    List<String> command = java.util.Arrays.stream(words).map(String::valueOf).toList();
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Finished(process.waitFor(), said);
  }

  private static boolean there(String program) {
    return Files.isExecutable(Path.of("/bin", program))
        || Files.isExecutable(Path.of("/usr/bin", program));
  }

  private Path script(String shell) throws IOException {
    return Files.writeString(
        folder.resolve(shell), Session.of("completion", shell).succeeded().out());
  }

  @Test
  void bashAcceptsTheScript() throws Exception {
    assumeTrue(there("bash"));
    assertThat(run("bash", "-n", script("bash"))).isEqualTo(new Finished(0, ""));
  }

  @Test
  void zshAcceptsTheScript() throws Exception {
    assumeTrue(there("zsh"));
    assertThat(run("zsh", "-n", script("zsh"))).isEqualTo(new Finished(0, ""));
  }

  // Bash reference manual, "Programmable Completion": what is typed stands in COMP_WORDS and
  // COMP_CWORD, and what fits is put into COMPREPLY.
  @ParameterizedTest
  @CsvSource({
    "comp, '', compare completion",
    "plan, --cho, --choose --choices",
    "plan, --keep-p, --keep-printed --keep-plan",
    "check, --fail, --fail-on",
    "'plan --choose', th, third",
    "'plan --preset', b, beginner",
    "'compare --instrument', viol, violin viola",
    "'compare --format', '', text json html svg",
    "journal, sh, show"
  })
  void bashCompletesAWord(String before, String typed, String expected) throws Exception {
    assumeTrue(there("bash"));
    boolean command = typed.isEmpty() && before.equals("comp");
    String words = "fingering " + (command ? before : before + " '" + typed + "'");
    int at = words.split(" ").length - 1;
    Finished ended =
        run(
            "bash",
            "-c",
            "source %s; COMP_WORDS=(%s); COMP_CWORD=%d; _complete_fingering 2>/dev/null; echo ${COMPREPLY[@]}"
                .formatted(script("bash"), words, at));
    assertThat(ended.output().strip().split("\\s+")).containsExactlyInAnyOrder(expected.split(" "));
  }

  // zshmodules(1), "The zsh/zpty module": a zsh that takes what is typed as from a terminal. What
  // is completed is run, and prints its words.
  @Test
  void zshCompletesAndKeepsItsSettings() throws Exception {
    assumeTrue(there("zsh"));
    script("zsh");
    Files.createFile(folder.resolve("my part.musicxml"));
    Path typing =
        Files.writeString(
            folder.resolve("typing"),
            """
            zmodload zsh/zpty && zpty z zsh -f -i
            zpty -w z 'autoload -U compinit; compinit -u -D; compdef _files mine'
            zpty -w z 'fingering() { print -r -- "RUN:${(j:|:)@}" }; source ./zsh'
            for typed in 'pla' 'plan --choose th' 'compare --part x my' 'journal sh' \\
                'check docs --fail' 'plan --preset adv' 'chart vio'; do
              zpty -w -n z "fingering $typed"$'\\t\\n'
            done
            zpty -w z 'print -r -- "KEPT:${_comps[mine]}:$options[completealiases]"; print EN""D:'
            zpty -r z said '*END:*' && print -r -- "$said"
            """);
    Process zsh =
        new ProcessBuilder("timeout", "60", "zsh", "-f", typing.toString())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    zsh.getOutputStream().close();
    assertThat(new String(zsh.getInputStream().readAllBytes(), UTF_8))
        .contains(
            "RUN:plan",
            "RUN:plan|--choose|third",
            "RUN:compare|--part|x|my part.musicxml",
            "RUN:journal|show",
            "RUN:check|docs|--fail-on",
            "RUN:plan|--preset|advanced",
            "RUN:chart|viol",
            "KEPT:_files:off");
    assertThat(zsh.waitFor()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "plan", "check", "journal", "practice", "scale"})
  void aManualPageFitsTheTerminal(String command) throws Exception {
    Object[] words = command.isEmpty() ? new Object[] {"man"} : new Object[] {"man", command};
    String roff = Session.of(words).succeeded().out();
    assertThat(roff).startsWith(".TH \"FINGERING").contains("\n.SH \"EXIT STATUS\"\n");
    assertThat(roff.chars()).allMatch(each -> each < 127);

    assumeTrue(there("groff"));
    Path page = Files.writeString(folder.resolve("page.1"), roff);
    Finished shown = run("groff", "-man", "-Tutf8", "-ww", "-P-c", "-rLL=80n", page);
    assertThat(shown.code()).isZero();
    String plain = shown.output().replaceAll(".\b", "");
    assertThat(plain.lines()).allMatch(line -> line.length() <= COLUMNS);
    assertThat(plain).contains("SYNOPSIS", "--help", "EXIT STATUS").doesNotContain("warning");
  }

  @Test
  void anUnknownCommandHasNoPage() {
    assertThat(Session.of("man", "woman").refused(2).err())
        .contains("choose one of open, demo, compare");
  }
}
