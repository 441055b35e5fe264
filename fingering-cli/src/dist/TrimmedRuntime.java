import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes a Java runtime of only the modules that the runnable jar uses, with the tools of the JDK:
 * {@code jdeps} finds the modules, {@code jlink} puts them together. Run by the build, from its
 * source.
 */
public final class TrimmedRuntime {
  /**
   * Encodings other than Unicode and Western ones. No class names them, but scores do.
   */
  private static final String ENCODINGS = "jdk.charsets";

  /**
   * Libraries of Linux for windows, pictures and sound. The program has none of these, but the XML
   * binding asks for their module. Without them a package depends on no system library for them.
   */
  private static final List<String> UNUSED =
      List.of(
          "libawt.so",
          "libawt_headless.so",
          "libawt_xawt.so",
          "libfontmanager.so",
          "libfreetype.so",
          "libjavajpeg.so",
          "libjawt.so",
          "libjsound.so",
          "liblcms.so",
          "libmlib_image.so",
          "libsplashscreen.so");

  private TrimmedRuntime() {}

  /**
   * Makes the runtime, in place of an earlier one.
   *
   * @param arguments the runnable jar, and the folder of the runtime
   */
  public static void main(String[] arguments) throws IOException {
    String jar = arguments[0];
    Path runtime = Path.of(arguments[1]);
    delete(runtime);
    String release = Integer.toString(Runtime.version().feature());
    String modules =
        run(
                "jdeps",
                "--print-module-deps",
                "--ignore-missing-deps",
                "--multi-release",
                release,
                jar)
            .strip();
    run(
        "jlink",
        "--add-modules",
        modules + "," + ENCODINGS,
        "--strip-debug",
        "--no-header-files",
        "--no-man-pages",
        "--compress=2",
        "--output",
        runtime.toString());
    for (String library : UNUSED) {
      Files.deleteIfExists(runtime.resolve("lib").resolve(library));
    }
    System.out.println("A runtime of " + modules + "," + ENCODINGS + " in " + runtime);
  }

  private static String run(String name, String... arguments) {
    ToolProvider tool =
        ToolProvider.findFirst(name)
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "This JDK has no " + name + "; take a full JDK 17 or later."));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = tool.run(new PrintWriter(out), new PrintWriter(err), arguments);
    if (code != 0) {
      throw new IllegalStateException(
          name + " " + List.of(arguments) + " ended with " + code + ": " + out + err);
    }
    return out.toString();
  }

  private static void delete(Path folder) throws IOException {
    if (Files.notExists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
