package fingering.cli.command;

import fingering.cli.advice.LessonAdviser;
import fingering.tables.FingeringException;
import fingering.web.LocalServer;
import fingering.web.running.ProgramFolder;
import fingering.web.running.ServerFile;
import fingering.web.running.Wanted;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
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
      "The page works as long as the command runs; end it with Ctrl+C. The command",
      "also ends half an hour after the last page was closed. If it is running already,",
      "a second one opens another page.",
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

  @Option(
      names = "--demo",
      description =
          "Open the demo if the folder has no scores and no lessons. Desktop icons start the program this way.")
  boolean demo;

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
    Wanted wanted = new Wanted(opened.filter(path -> !Files.isDirectory(path)), demo);
    ServerFile file = ServerFile.of(programFolder(), own);
    Optional<LocalServer> server =
        file.inTurn(() -> handedOver(file, wanted) ? Optional.empty() : start(own, wanted, file));
    if (server.isPresent()) {
      waitForTheEnd(server.get(), file);
    }
    return ExitCode.DONE;
  }

  /** Lets a server that is running open what is wanted; returns whether there is one. */
  private boolean handedOver(ServerFile file, Wanted wanted) {
    Optional<String> address = file.read().flatMap(running -> running.open(wanted));
    address.ifPresent(shown -> show(shown, "It was running already, and ends as before."));
    return address.isPresent();
  }

  private Optional<LocalServer> start(Path own, Wanted wanted, ServerFile file) {
    LocalServer server =
        LocalServer.start(
            own.toAbsolutePath(), new LessonAdviser(), Clock.system(ZoneId.systemDefault()));
    try {
      file.write(server.running());
      // Without the address, nobody can come.
      if (show(server.address(wanted), "Ctrl+C ends it.")) {
        server.warmUp();
        return Optional.of(server);
      }
    } catch (FingeringException e) {
      end(server, file);
      throw e;
    }
    end(server, file);
    return Optional.empty();
  }

  private static void end(LocalServer server, ServerFile file) {
    file.delete(server.running());
    server.close();
  }

  /** Shows an address in the browser, or prints it; returns whether anybody can know it. */
  private boolean show(String address, String ending) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(address);
    boolean shown = !noBrowser && browse(address);
    String how =
        shown
            ? "The page is open in your browser. "
            : "Open this address in your browser within a minute. ";
    out.println(how + ending);
    return !out.checkError() || shown;
  }

  private static Path programFolder() {
    return ProgramFolder.of(
        System.getProperty("os.name", ""),
        System.getenv(),
        Path.of(System.getProperty("user.home", ".")));
  }

  private static void waitForTheEnd(LocalServer server, ServerFile file) {
    Thread last = new Thread(() -> end(server, file));
    Runtime.getRuntime().addShutdownHook(last);
    try {
      server.awaitEnd();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    end(server, file);
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
