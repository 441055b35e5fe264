package fingering;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import fingering.cli.Main;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The packages of the command line depend on one another as {@code DEVELOPERS.md} lists them. */
class CommandLineArchitectureTest {
  /** A line of the list: the name of a package, then its purpose. */
  private static final Pattern PACKAGE = Pattern.compile("(?m)^ +(fingering(?:\\.[a-z]+)+) +\\S");

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(
              "fingering.cli",
              "fingering.web",
              "fingering.page",
              "fingering.sheet",
              "fingering.check");

  @Test
  void picturesDoNotDependOnPagesNorPagesOnCommands() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("check")
        .definedBy("fingering.check")
        .layer("view")
        .definedBy("fingering.page.view", "fingering.page.live")
        .layer("template")
        .definedBy("fingering.page.template")
        .layer("page")
        .definedBy("fingering.page", "fingering.page.music")
        .layer("web")
        .definedBy("fingering.web..")
        .layer("cli")
        .definedBy("fingering.cli..")
        .whereLayer("check")
        .mayNotAccessAnyLayer()
        .whereLayer("view")
        .mayOnlyAccessLayers("check")
        .whereLayer("template")
        .mayOnlyAccessLayers("check", "view")
        .whereLayer("page")
        .mayOnlyAccessLayers("check", "view", "template")
        .whereLayer("web")
        .mayOnlyAccessLayers("view", "page")
        .whereLayer("cli")
        .mayNotBeAccessedByAnyLayer()
        .check(PROGRAM);
  }

  @Test
  void aPackageDependsOnlyOnThoseListedBeforeIt() throws IOException {
    List<String> packages =
        PACKAGE
            .matcher(Files.readString(Path.of("..", "DEVELOPERS.md")))
            .results()
            .map(line -> line.group(1))
            .toList();
    for (int p = 0; p + 1 < packages.size(); p++) {
      noClasses()
          .that()
          .resideInAPackage(packages.get(p))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(packages.subList(p + 1, packages.size()).toArray(String[]::new))
          // The packages of the library are listed too, but are not imported here.
          .allowEmptyShould(true)
          .check(PROGRAM);
    }
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("fingering.(**)").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void onlyTheCommandLineReadsOptions() {
    noClasses()
        .that()
        .resideOutsideOfPackage("fingering.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("picocli..")
        .check(PROGRAM);
  }

  @Test
  void theXmlBindingStaysInTheLibrary() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.audiveris..", "jakarta..")
        .check(PROGRAM);
  }

  @Test
  void onlyMainPrintsAndEndsTheProgram() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(Main.class)
        .should(ACCESS_STANDARD_STREAMS)
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .check(PROGRAM);
  }

  @Test
  void templatesAreFilledOnlyByPages() {
    noClasses()
        .that()
        .resideOutsideOfPackages("fingering.page..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("gg.jte..", "fingering.page.template")
        .check(PROGRAM);
  }

  @Test
  void onlyTheMusicPanelKnowsTheEngraver() {
    noClasses()
        .that()
        .doNotHaveSimpleName("MusicPanel")
        .should()
        .dependOnClassesThat()
        .haveSimpleNameEndingWith("Engraver")
        .check(PROGRAM);
  }

  @Test
  void noReflection() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.lang.reflect..", "sun..")
        .check(PROGRAM);
  }

  @Test
  void staticFieldsAreFinal() {
    fields().that().areStatic().should().beFinal().check(PROGRAM);
  }

  @Test
  void theDateComesFromAClock() {
    noClasses()
        .should()
        .callMethodWhere(
            target(nameMatching("now"))
                .and(
                    describe(
                        "without a clock",
                        call -> call.getTarget().getRawParameterTypes().isEmpty())))
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .check(PROGRAM);
  }
}
