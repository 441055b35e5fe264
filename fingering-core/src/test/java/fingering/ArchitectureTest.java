package fingering;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The packages depend on one another in the order that {@code DEVELOPERS.md} lists. */
class ArchitectureTest {
  /** A line of the list: the name of a package, then its purpose. */
  private static final Pattern PACKAGE = Pattern.compile("(?m)^ +(fingering(?:\\.[a-z]+)+) +\\S");

  /** Names of mutable collection types. */
  private static final Pattern MUTABLE =
      Pattern.compile(
          "(java\\.util|com\\.google\\.common\\.collect)\\.(?!Immutable)[\\w.]*"
              + "(List|Map|Set|Collection|Queue|Deque|Table)"
              + "|java\\.util\\.concurrent\\.atomic\\.Atomic(Integer|Long|Boolean|Reference)");

  /** Text in quotes that contains an option. */
  private static final Pattern OPTION = Pattern.compile("\"[^\"\\n]*--[a-z][^\"\\n]*\"");

  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("fingering");

  @Test
  void everyPackageIsListed() throws IOException {
    assertThat(packages())
        .doesNotHaveDuplicates()
        .containsAll(LIBRARY.stream().map(JavaClass::getPackageName).distinct().toList());
  }

  @Test
  void aPackageDependsOnlyOnThoseListedBeforeIt() throws IOException {
    List<String> packages = packages();
    for (int p = 0; p + 1 < packages.size(); p++) {
      noClasses()
          .that()
          .resideInAPackage(packages.get(p))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(packages.subList(p + 1, packages.size()).toArray(String[]::new))
          // The packages of the command line are listed too, but are not on this class path.
          .allowEmptyShould(true)
          .check(LIBRARY);
    }
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("fingering.(**)").should().beFreeOfCycles().check(LIBRARY);
  }

  @Test
  void musicAndAbcDependOnTheTablesOnly() {
    for (String name : List.of("fingering.music", "fingering.abc")) {
      noClasses()
          .that()
          .resideInAPackage(name + "..")
          .should()
          .dependOnClassesThat(
              describe(
                  "reside in another package than the tables",
                  other ->
                      other.getPackageName().startsWith("fingering.")
                          && !other.getPackageName().startsWith(name)
                          && !other.getPackageName().equals("fingering.tables")))
          .check(LIBRARY);
    }
  }

  @Test
  void scoringAndSearchDoNotDependOnScoreFiles() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "fingering.fingerboard",
            "fingering.scoring..",
            "fingering.player",
            "fingering.search",
            "fingering.demand",
            "fingering.tempo",
            "fingering.audition",
            "fingering.learning")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("fingering.musicxml..")
        .check(LIBRARY);
  }

  @Test
  void theXmlBindingStaysInMusicxml() {
    noClasses()
        .that()
        .resideOutsideOfPackage("fingering.musicxml..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.audiveris..", "jakarta..", "javax.xml..", "com.ctc..")
        .check(LIBRARY);
  }

  @Test
  void nothingIsPrinted() {
    NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(LIBRARY);
  }

  @Test
  void noReflection() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.lang.reflect..", "sun..")
        .orShould()
        .callMethodWhere(
            target(owner(describe("a class", one -> one.isEquivalentTo(Class.class))))
                .and(target(nameMatching("forName|getDeclared.*|getMethods?|getFields?"))))
        .check(LIBRARY);
  }

  @Test
  void staticFieldsAreImmutable() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .andShould(be(describe("immutable, or a private array", ArchitectureTest::immutable)))
        .check(LIBRARY);
  }

  @Test
  void nothingReadsTheClock() {
    noClasses()
        .should()
        .callMethodWhere(
            target(nameMatching("now|system(DefaultZone|UTC)?|currentTimeMillis|nanoTime")))
        .check(LIBRARY);
  }

  /** The page has no options, and neither have other programs that use the library. */
  @ParameterizedTest
  @ValueSource(strings = {"src/main/java", "../tuning-tables/src/main/java"})
  void noMessageNamesAnOptionOfTheCommandLine(Path sources) throws IOException {
    try (Stream<Path> files = Files.walk(sources)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        assertThat(OPTION.matcher(Files.readString(file)).results().map(MatchResult::group))
            .as(file.toString())
            .isEmpty();
      }
    }
  }

  /** The packages, in the order of the list. */
  static List<String> packages() throws IOException {
    return PACKAGE
        .matcher(Files.readString(Path.of("..", "DEVELOPERS.md")))
        .results()
        .map(line -> line.group(1))
        .toList();
  }

  private static boolean immutable(JavaField field) {
    // An enum's own array of its constants is the compiler's.
    boolean hidden =
        field.getModifiers().contains(JavaModifier.PRIVATE)
            || field.getModifiers().contains(JavaModifier.SYNTHETIC);
    JavaClass type = field.getRawType();
    return type.isArray() ? hidden : !MUTABLE.matcher(type.getName()).matches();
  }
}
