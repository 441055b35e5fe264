import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Makes the installer of the system that builds, with {@code jpackage}: a .deb, an .msi or a .dmg.
 * Run by the build, from its source. Where a tool is missing it says so and makes none.
 */
public final class Installer {
  private static final String ABOUT = "Plans left-hand fingerings for string parts";

  /** The same in all versions, so that Windows replaces an older one. */
  private static final String UPGRADES = "5d1e3ab8-36a5-4c1b-8d67-0f8e6d5a7c11";

  private final Path project;
  private final Path target;
  private final Path work;
  private final String version;
  private final Instant time;

  private Installer(Path project, String version, Instant time) throws IOException {
    this.project = project;
    this.target = project.resolve("target");
    this.version = version;
    this.time = time;
    this.work = target.resolve("installer");
    delete(work);
    Files.createDirectories(work.resolve("input"));
    Files.copy(target.resolve("fingering.jar"), work.resolve("input/fingering.jar"));
    association("musicxml", "application/vnd.recordare.musicxml+xml", "MusicXML score");
    association("mxl", "application/vnd.recordare.musicxml", "Compressed MusicXML score");
  }

  /**
   * Makes the installer.
   *
   * @param arguments the folder of the module, where the runnable jar and the runtime are in {@code
   *     target}; the version; and the time of all files in the package
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    String type = system.startsWith("windows") ? "msi" : system.startsWith("mac") ? "dmg" : "deb";
    List<String> tools = type.equals("deb") ? List.of("dpkg-deb", "fakeroot") : List.of();
    for (String tool : tools) {
      if (!onThePath(tool)) {
        System.out.println("The .deb is not made: " + tool + " is not installed.");
        return;
      }
    }
    if (!Files.isExecutable(jpackage()) && type.equals("deb")) {
      System.out.println("The .deb is not made: this JDK has no jpackage.");
      return;
    }
    String version = arguments[1].replaceFirst("-.*", "");
    Installer installer = new Installer(Path.of(arguments[0]), version, Instant.parse(arguments[2]));
    switch (type) {
      case "deb" -> installer.deb();
      case "msi" -> installer.msi();
      default -> installer.dmg();
    }
    delete(installer.work);
  }

  /** The launcher of jpackage gives way to that of the zips, which has an archive of classes. */
  private void deb() throws IOException, InterruptedException {
    Path icon = Files.write(work.resolve("fingering.png"), png());
    List<String> image = common("app-image", "fingering", version, icon);
    image.addAll(List.of("--dest", work.toString()));
    run(image);
    Path root = work.resolve("fingering");
    delete(root.resolve("lib/libapplauncher.so"));
    delete(root.resolve("lib/app/fingering.cfg"));
    delete(root.resolve("bin/fingering"));
    Files.copy(project.resolve("bin/fingering"), root.resolve("bin/fingering"));
    copy(project.resolve("../docs"), root.resolve("docs"));
    copy(target.resolve("classes/META-INF/licences"), root.resolve("licences"));
    setModes(root);
    run(
        List.of(
            jpackage().toString(),
            "--type",
            "deb",
            "--name",
            "fingering",
            "--app-version",
            version,
            "--app-image",
            root.toString(),
            "--description",
            ABOUT,
            "--linux-app-category",
            "sound",
            "--vendor",
            "Fingering",
            "--linux-deb-maintainer",
            "fingering@localhost",
            "--linux-shortcut",
            "--license-file",
            project.resolve("../docs/LICENSE.txt").toString(),
            "--file-associations",
            work.resolve("musicxml.properties").toString(),
            "--file-associations",
            work.resolve("mxl.properties").toString(),
            "--resource-dir",
            project.resolve("src/dist/linux").toString(),
            "--icon",
            icon.toString(),
            "--dest",
            target.toString()));
  }

  /** Never run: nobody has built on Windows yet. */
  private void msi() throws IOException, InterruptedException {
    Path icon = Files.write(work.resolve("fingering.ico"), ico(png()));
    Path terminal =
        Files.writeString(
            work.resolve("terminal.properties"),
            "win-console=true\njava-options=-XX:+UseSerialGC -XX:TieredStopAtLevel=1\n");
    List<String> command = common("msi", "Fingering", version, icon);
    command.addAll(
        List.of(
            "--add-launcher",
            "fingering-terminal=" + terminal,
            "--file-associations",
            work.resolve("musicxml.properties").toString(),
            "--file-associations",
            work.resolve("mxl.properties").toString(),
            "--win-menu",
            "--win-shortcut",
            "--win-upgrade-uuid",
            UPGRADES,
            "--dest",
            target.toString()));
    tryTo(command, "msi");
  }

  /** Never run: nobody has built on macOS yet. There, a version may not begin with 0. */
  private void dmg() throws IOException, InterruptedException {
    Path icon = Files.write(work.resolve("fingering.icns"), icns(png()));
    List<String> command = common("dmg", "Fingering", version.replaceFirst("^0", "1"), icon);
    command.addAll(List.of("--dest", target.toString()));
    tryTo(command, "dmg");
  }

  private List<String> common(String type, String name, String numbered, Path icon) {
    return new ArrayList<>(
        List.of(
            jpackage().toString(),
            "--type",
            type,
            "--name",
            name,
            "--app-version",
            numbered,
            "--description",
            ABOUT,
            "--icon",
            icon.toString(),
            "--input",
            work.resolve("input").toString(),
            "--main-jar",
            "fingering.jar",
            "--runtime-image",
            target.resolve("runtime").toString(),
            "--java-options",
            "-XX:+UseSerialGC",
            "--java-options",
            "-XX:TieredStopAtLevel=1",
            "--java-options",
            "-Dfingering.desktop=true"));
  }

  private void association(String extension, String type, String description) throws IOException {
    Files.writeString(
        work.resolve(extension + ".properties"),
        "extension=%s%nmime-type=%s%ndescription=%s%n".formatted(extension, type, description));
  }

  private static Path jpackage() {
    String name = Files.exists(bin("jpackage.exe")) ? "jpackage.exe" : "jpackage";
    return bin(name);
  }

  private static Path bin(String tool) {
    return Path.of(System.getProperty("java.home"), "bin", tool);
  }

  private static boolean onThePath(String tool) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, tool)));
  }

  private void tryTo(List<String> command, String type) throws InterruptedException {
    try {
      run(command);
    } catch (IOException e) {
      System.out.println("The ." + type + " is not made: " + e.getMessage());
    }
  }

  private void run(List<String> command) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>();
    if (Files.isExecutable(Path.of("/bin/sh"))) {
      // Nobody could read what is packed with a stricter mask.
      all.addAll(List.of("/bin/sh", "-c", "umask 022; exec \"$@\"", "sh"));
    }
    all.addAll(command);
    ProcessBuilder builder = new ProcessBuilder(all).redirectErrorStream(true);
    builder.environment().put("SOURCE_DATE_EPOCH", Long.toString(time.getEpochSecond()));
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    if (code != 0) {
      throw new IOException("jpackage ended with " + code + ": " + said.strip());
    }
  }

  /** The modes of the package: no matter who builds, everybody may read and run it. */
  private static void setModes(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.toList()) {
        boolean open =
            Files.isDirectory(file)
                || file.getParent().endsWith("bin")
                || file.endsWith("jexec")
                || file.endsWith("jspawnhelper");
        Files.setPosixFilePermissions(
            file, PosixFilePermissions.fromString(open ? "rwxr-xr-x" : "rw-r--r--"));
      }
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path file : all.toList()) {
        Files.copy(file, to.resolve(from.relativize(file)));
      }
    }
  }

  private static void delete(Path path) throws IOException {
    if (Files.notExists(path)) {
      return;
    }
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** The icon: four strings of different thickness, and three fingers on them. */
  private static byte[] png() throws IOException {
    int size = 256;
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setColor(new Color(0x2b2622));
    pen.fill(new RoundRectangle2D.Double(8, 8, 240, 240, 56, 56));
    pen.setColor(new Color(0xd9c9a8));
    for (int string = 0; string < 4; string++) {
      int x = 56 + 48 * string;
      pen.setStroke(
          new BasicStroke(9 - 2 * string, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
      pen.draw(new Line2D.Double(x, 8, x, 248));
    }
    pen.setColor(new Color(0xf4a340));
    for (int finger = 0; finger < 3; finger++) {
      pen.fill(new Ellipse2D.Double(56 + 48 * finger - 26, 44 + 60 * finger - 4, 52, 52));
    }
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }

  /** An icon of Windows with one picture; its sizes 0 mean 256. */
  private static byte[] ico(byte[] png) {
    return ByteBuffer.allocate(22 + png.length)
        .order(ByteOrder.LITTLE_ENDIAN)
        .putShort((short) 0)
        .putShort((short) 1)
        .putShort((short) 1)
        .putInt(0)
        .putShort((short) 1)
        .putShort((short) 32)
        .putInt(png.length)
        .putInt(22)
        .put(png)
        .array();
  }

  /** An icon of macOS with one picture, of 256 pixels. */
  private static byte[] icns(byte[] png) {
    return ByteBuffer.allocate(16 + png.length)
        .put("icns".getBytes(StandardCharsets.US_ASCII))
        .putInt(16 + png.length)
        .put("ic08".getBytes(StandardCharsets.US_ASCII))
        .putInt(8 + png.length)
        .put(png)
        .array();
  }
}
