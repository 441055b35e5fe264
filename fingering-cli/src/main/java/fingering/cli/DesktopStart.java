package fingering.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Whether somebody started the program without a terminal, such as by a double click. Such a reader
 * wants the page; a message would be printed where nobody sees it.
 *
 * <p>That there is no terminal does not say so: pipes, scripts and timers have none either, and
 * expect a message. So one of these must be true:
 *
 * <ul>
 *   <li>whoever packs the program says so, with the property {@value #PROPERTY}: entries of a
 *       desktop menu, application bundles; arguments are then files to open;
 *   <li>the program runs in {@code javaw}, with which Windows opens a jar, and which has neither
 *       input nor output;
 *   <li>input, output and errors all lead nowhere, as when a desktop of another system opens a jar.
 * </ul>
 */
final class DesktopStart {
  static final String PROPERTY = "fingering.desktop";

  private static final int STREAMS = 3;

  private DesktopStart() {}

  /** The command that the running program was started with: the typed one, or to open the page. */
  static String[] command(String... arguments) {
    boolean said = Boolean.getBoolean(PROPERTY);
    boolean page =
        (said || arguments.length == 0)
            && is(said, ProcessHandle.current().info().command(), Path.of("/dev"));
    return page ? opening(arguments) : arguments;
  }

  /** The command that opens the page, with a file or without. */
  static String[] opening(String... files) {
    return Stream.concat(Stream.of("open", "--demo"), Stream.of(files)).toArray(String[]::new);
  }

  /**
   * Whether a program was started so.
   *
   * @param said whether the property is set
   * @param java the file of the Java that runs it, if known
   * @param devices the folder of devices: {@code /dev}, or one like it
   */
  static boolean is(boolean said, Optional<String> java, Path devices) {
    return said || java.filter(DesktopStart::windowed).isPresent() || mute(devices);
  }

  private static boolean windowed(String java) {
    return java.endsWith("javaw.exe") || java.endsWith("javaw");
  }

  private static boolean mute(Path devices) {
    Path nowhere = devices.resolve("null");
    return IntStream.range(0, STREAMS)
        .allMatch(number -> same(devices.resolve("fd").resolve(Integer.toString(number)), nowhere));
  }

  private static boolean same(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      return false;
    }
  }
}
