package fingering.dependencies;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.ctc.wstx.stax.WstxInputFactory;
import com.google.common.base.Splitter;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The libraries in the runnable jar: the published list of them, and their licence texts. */
class DependenciesTest {
  /** The list that the build makes from the dependencies. */
  private static final Path LIST = Path.of("target/dependencies.md");

  private static final Path LICENCES = Path.of("target/classes/META-INF/licences");

  @Test
  void handbookListsTheLibrariesThatTheBuildFinds() throws IOException {
    assertThat(Files.readString(Path.of("../docs/contributing/dependencies.md")))
        .contains("\n\n" + Files.readString(LIST) + "\n");
  }

  private static Stream<List<String>> libraries() throws IOException {
    return Files.readAllLines(LIST).stream()
        .skip(2)
        .map(row -> Splitter.on('|').trimResults().splitToList(row.replace("`", "")))
        .map(cells -> List.of(cells.get(1).replaceFirst(".*:", ""), cells.get(3)));
  }

  @ParameterizedTest
  @MethodSource("libraries")
  void libraryComesWithItsLicence(List<String> library) throws IOException {
    String name = library.get(0);
    String licence = library.get(1);
    Path own = LICENCES.resolve(name + "-jar");
    if (!Files.isDirectory(own) || !hasFiles(own)) {
      assertThat(LICENCES.resolve(licence + ".txt")).isNotEmptyFile();
    }
  }

  private static boolean hasFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.anyMatch(
          file -> file.getFileName().toString().toUpperCase(Locale.ROOT).contains("LICENSE"));
    }
  }

  @Test
  void lesserLicenceComesWithTheLicenceThatItExtends() {
    assertThat(LICENCES.resolve("LGPL-3.0.txt")).content().contains("GNU LESSER GENERAL PUBLIC");
    assertThat(LICENCES.resolve("GPL-3.0.txt")).content().contains("Version 3, 29 June 2007");
  }

  // The build leaves these packages of Woodstox out of the jar, because Woodstox does not bring the
  // licences of the code in them.
  @Test
  void restOfWoodstoxDoesNotUseThePackagesLeftOut() throws Exception {
    Path jar =
        Path.of(WstxInputFactory.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    String[] leftOut = {"com.ctc.wstx.msv..", "com.ctc.wstx.osgi..", "com.ctc.wstx.shaded.."};
    try (JarFile woodstox = new JarFile(jar.toFile())) {
      noClasses()
          .that()
          .resideOutsideOfPackages(leftOut)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(leftOut)
          .check(new ClassFileImporter().importJar(woodstox));
    }
  }
}
