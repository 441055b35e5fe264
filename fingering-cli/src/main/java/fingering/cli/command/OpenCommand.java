package fingering.cli.command;

import fingering.cli.advice.LessonAdviser;
import fingering.web.LocalServer;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens the local page. */
@Command(
    name = "open",
    description =
        "Opens a page in the browser: drop a score on it, choose part and measures, and see the verdict and the music. Nothing leaves this computer.",
    footer = {
      "",
      "The page works as long as the command runs; end it with Ctrl+C.",
      "",
      "Examples:",
      "  fingering open",
      "  fingering open docs/demo/demo.musicxml",
      "  fingering open --folder docs/examples"
    })
final class OpenCommand extends BaseCommand {
  @Parameters(
      paramLabel = "SCORE|LESSON|FOLDER",
      arity = "0..1",
      description = "A score or a lesson to open, or a folder of them.")
  Optional<Path> opened = Optional.empty();

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description =
          "The folder of your scores and lessons. Default: Fingering in your home folder.")
  Optional<Path> folder = Optional.empty();

  @Option(
      names = "--no-browser",
      description = "Only print the address; open it yourself within a minute.")
  boolean noBrowser;

  @Override
  public Integer call() {
    Optional<Path> given = opened.filter(Files::isDirectory);
    if (given.isPresent() && folder.isPresent()) {
      throw usageError("two folders are given; leave one of them out");
    }
    folder
        .filter(path -> !Files.isDirectory(path))
        .ifPresent(
            path -> {
              throw usageError("there is no folder " + path + "; make it first, or name another");
            });
    Path own =
        given
            .or(() -> folder)
            .orElseGet(() -> Path.of(System.getProperty("user.home", "."), "Fingering"));
    try (LocalServer server =
        LocalServer.start(own.toAbsolutePath(), new LessonAdviser(), Clock.systemUTC())) {
      String address =
          opened
              .filter(path -> !Files.isDirectory(path))
              .map(server::addressOf)
              .orElseGet(server::address);
      PrintWriter out = spec.commandLine().getOut();
      out.println(address);
      if (noBrowser || !browse(address)) {
        out.println("Open this address in your browser within a minute. Ctrl+C ends the page.");
      } else {
        out.println("The page is open in your browser. Ctrl+C ends it.");
      }
      // Without the address, nobody can come.
      if (!out.checkError()) {
        waitForTheEnd(server);
      }
      return ExitCode.DONE;
    }
  }

  private static void waitForTheEnd(LocalServer server) {
    Runtime.getRuntime().addShutdownHook(new Thread(server::close));
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Asks the system to open an address; returns whether it has a program for that. */
  private static boolean browse(String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    ProcessBuilder program =
        system.startsWith("windows")
            ? new ProcessBuilder("rundll32", "url.dll,FileProtocolHandler", address)
            : new ProcessBuilder(system.startsWith("mac") ? "open" : "xdg-open", address);
    try {
      program
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
