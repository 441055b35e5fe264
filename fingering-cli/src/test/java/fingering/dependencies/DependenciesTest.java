package fingering.dependencies;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** The list of libraries and their licences, against what the build resolved and what they say. */
class DependenciesTest {
  private static final Path TEXTS = Path.of("src/main/licences");
  private static final Pattern OWN_TEXT =
      Pattern.compile("META-INF/LICENSE.*|LICENSES|biweekly/biweekly\\.license");

  @Test
  void listNamesEveryLibraryWithItsVersionAndLicence() throws IOException {
    String page = Files.readString(Path.of("../docs/contributing/dependencies.md"));
    assertThat(page)
        .contains(
            "## In the jar\n\n" + table(true) + "\n",
            "## For tests only\n\n" + table(false) + "\n");
  }

  private static String table(boolean inJar) {
    return Libraries.resolved().stream()
        .filter(library -> library.inJar() == inJar)
        .map(DependenciesTest::row)
        .collect(Collectors.joining("", "| Library | Version | Licence |\n|---|---|---|\n", ""));
  }

  private static String row(Library library) {
    String licences =
        Descriptions.licences(library).stream()
            .map(Licence::id)
            .distinct()
            .collect(Collectors.joining(" or "));
    return "| `%s` | %s | %s |%n"
        .formatted(library.name(), library.version(), licences)
        .replace(System.lineSeparator(), "\n");
  }

  @Test
  void whatGoesIntoTheJarMayGoThere() {
    assertThat(inJar())
        .isNotEmpty()
        .allSatisfy(
            library -> assertThat(Descriptions.licences(library)).anyMatch(Licence::goesIntoJar));
  }

  @Test
  void whatGoesIntoTheJarBringsItsLicence() {
    for (Library library : inJar()) {
      List<Path> given =
          Descriptions.licences(library).stream()
              .map(licence -> TEXTS.resolve(licence.id() + ".txt"))
              .toList();
      boolean brought =
          entries(library).stream().anyMatch(entry -> OWN_TEXT.matcher(entry).matches());
      assertThat(brought || given.stream().allMatch(Files::exists))
          .as("%s has its text in its jar or in %s", library.name(), given)
          .isTrue();
    }
    // The lesser licence is written as an addition to the greater.
    assertThat(TEXTS.resolve("GPL-3.0.txt")).content().contains("Version 3, 29 June 2007");
  }

  // These hold copies of others' work under licences whose texts the library does not bring.
  @Test
  void whatIsLeftOutOfLibraryIsUsedByNothingElseInIt() throws IOException {
    String pom = Files.readString(Path.of("pom.xml"));
    String[] leftOut = {"com.ctc.wstx.msv..", "com.ctc.wstx.osgi..", "com.ctc.wstx.shaded.."};
    for (String packages : leftOut) {
      String path = packages.replace("..", "/**").replace('.', '/');
      assertThat(pom).contains("<exclude>" + path + "</exclude>");
    }
    Library library =
        inJar().stream()
            .filter(each -> each.artifact().equals("woodstox-core"))
            .findFirst()
            .orElseThrow();
    try (JarFile jar = new JarFile(library.jar().toFile())) {
      noClasses()
          .that()
          .resideOutsideOfPackages(leftOut)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(leftOut)
          .check(new ClassFileImporter().importJar(jar));
    }
  }

  @Test
  void noClassIsInTwoLibraries() {
    Map<String, String> first = new TreeMap<>();
    for (Library library : inJar()) {
      for (String entry : entries(library)) {
        if (entry.endsWith(".class") && !entry.endsWith("module-info.class")) {
          String other = first.putIfAbsent(entry, library.name());
          assertThat(other).as("%s is in %s too", entry, library.name()).isNull();
        }
      }
    }
    assertThat(first).hasSizeGreaterThan(1000);
  }

  @Test
  void licenceThatIsNotKnownIsToldByItsName() {
    assertThatThrownBy(() -> Licence.named("Beerware")).hasMessageContaining("'Beerware'");
  }

  private static List<Library> inJar() {
    return Libraries.resolved().stream().filter(Library::inJar).toList();
  }

  private static List<String> entries(Library library) {
    try (JarFile jar = new JarFile(library.jar().toFile())) {
      return jar.stream().map(ZipEntry::getName).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
