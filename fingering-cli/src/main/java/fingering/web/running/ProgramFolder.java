package fingering.web.running;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The folder in which programs of this user keep what they need between two starts. */
public final class ProgramFolder {
  private ProgramFolder() {}

  /**
   * The folder, which need not exist yet.
   *
   * @param system the name of the operating system, as Java has it
   * @param environment the environment variables
   * @param home the home folder of the user
   */
  public static Path of(String system, Map<String, String> environment, Path home) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return folder(environment, "LOCALAPPDATA")
          .orElseGet(() -> home.resolve("AppData").resolve("Local"))
          .resolve("Fingering");
    }
    if (name.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Fingering");
    }
    // By the XDG Base Directory Specification, a relative path does not count.
    return folder(environment, "XDG_STATE_HOME")
        .filter(Path::isAbsolute)
        .orElseGet(() -> home.resolve(".local").resolve("state"))
        .resolve("fingering");
  }

  private static Optional<Path> folder(Map<String, String> environment, String variable) {
    return Optional.ofNullable(environment.get(variable))
        .filter(value -> !value.isBlank())
        .map(Path::of);
  }
}
