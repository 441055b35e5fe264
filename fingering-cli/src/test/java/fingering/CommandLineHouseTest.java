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
import org.junit.jupiter.api.Test;

/** The command line keeps to the house as {@code DEVELOPERS.md} tells it. */
class CommandLineHouseTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("fingering.cli", "fingering.page", "fingering.check");

  @Test
  void picturesKnowNoPagesAndPagesKnowNoCommands() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("svg")
        .definedBy("fingering.page.svg")
        .layer("staff")
        .definedBy("fingering.page.staff")
        .layer("check")
        .definedBy("fingering.check")
        .layer("page")
        .definedBy("fingering.page")
        .layer("cli")
        .definedBy("fingering.cli")
        .whereLayer("svg")
        .mayNotAccessAnyLayer()
        .whereLayer("staff")
        .mayOnlyAccessLayers("svg")
        .whereLayer("check")
        .mayNotAccessAnyLayer()
        .whereLayer("page")
        .mayOnlyAccessLayers("svg", "staff", "check")
        .whereLayer("cli")
        .mayNotBeAccessedByAnyLayer()
        .check(PROGRAM);
  }

  @Test
  void noWayLeadsRoundInACircle() {
    slices().matching("fingering.(**)").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void optionsAreReadInTheCommandsAlone() {
    noClasses()
        .that()
        .resideOutsideOfPackage("fingering.cli")
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
  void onlyTheEntryPrintsAndEndsTheProgram() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(Main.class)
        .should(ACCESS_STANDARD_STREAMS)
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .check(PROGRAM);
  }

  @Test
  void noClassIsTakenApartByReflection() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.lang.reflect..", "sun..")
        .check(PROGRAM);
  }

  @Test
  void nothingStaticIsSetAgain() {
    fields().that().areStatic().should().beFinal().check(PROGRAM);
  }

  @Test
  void theDateIsAskedOfAClockThatATestCanSet() {
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
