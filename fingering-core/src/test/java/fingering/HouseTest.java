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
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The library keeps to the house as {@code DEVELOPERS.md} tells it. */
class HouseTest {
  /** A room in the list of the house: its name, then what it is for. */
  private static final Pattern ROOM = Pattern.compile("(?m)^ +(fingering(?:\\.[a-z]+)+) +\\S");

  /** Names of types that hold what can be changed. */
  private static final Pattern CHANGEABLE =
      Pattern.compile(
          "(java\\.util|com\\.google\\.common\\.collect)\\.(?!Immutable)[\\w.]*"
              + "(List|Map|Set|Collection|Queue|Deque|Table)"
              + "|java\\.util\\.concurrent\\.atomic\\.Atomic(Integer|Long|Boolean|Reference)");

  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("fingering");

  @Test
  void everyRoomIsOnTheList() throws IOException {
    assertThat(rooms())
        .doesNotHaveDuplicates()
        .containsAll(LIBRARY.stream().map(JavaClass::getPackageName).distinct().toList());
  }

  @Test
  void aRoomKnowsOnlyThoseListedBeforeIt() throws IOException {
    List<String> rooms = rooms();
    for (int room = 0; room + 1 < rooms.size(); room++) {
      noClasses()
          .that()
          .resideInAPackage(rooms.get(room))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(rooms.subList(room + 1, rooms.size()).toArray(String[]::new))
          // The rooms of the command line are listed too, and are not there yet.
          .allowEmptyShould(true)
          .check(LIBRARY);
    }
  }

  @Test
  void noWayLeadsRoundInACircle() {
    slices().matching("fingering.(**)").should().beFreeOfCycles().check(LIBRARY);
  }

  @Test
  void musicAndTypedTunesRestOnTheTablesAlone() {
    for (String room : List.of("fingering.music", "fingering.abc")) {
      noClasses()
          .that()
          .resideInAPackage(room)
          .should()
          .dependOnClassesThat(
              describe(
                  "lie in another room than the tables",
                  known ->
                      known.getPackageName().startsWith("fingering.")
                          && !List.of(room, "fingering.tables").contains(known.getPackageName())))
          .check(LIBRARY);
    }
  }

  @Test
  void whatReckonsKnowsNoScoreFile() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "fingering.fingerboard",
            "fingering.scoring",
            "fingering.search",
            "fingering.demand",
            "fingering.tempo",
            "fingering.audition",
            "fingering.learning")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("fingering.musicxml")
        .check(LIBRARY);
  }

  @Test
  void theXmlBindingStaysWithTheScores() {
    noClasses()
        .that()
        .resideOutsideOfPackage("fingering.musicxml")
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
  void noClassIsTakenApartByReflection() {
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
  void whatIsSharedNeverChanges() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .andShould(be(describe("immutable, or an array that nobody else sees", HouseTest::kept)))
        .check(LIBRARY);
  }

  @Test
  void nobodyAsksForTheDate() {
    noClasses()
        .should()
        .callMethodWhere(
            target(nameMatching("now|system(DefaultZone|UTC)?|currentTimeMillis|nanoTime")))
        .check(LIBRARY);
  }

  /** The rooms of the house, in their order. */
  static List<String> rooms() throws IOException {
    return ROOM.matcher(Files.readString(Path.of("..", "DEVELOPERS.md")))
        .results()
        .map(room -> room.group(1))
        .toList();
  }

  private static boolean kept(JavaField field) {
    // An enum's own array of its constants is the compiler's.
    boolean unseen =
        field.getModifiers().contains(JavaModifier.PRIVATE)
            || field.getModifiers().contains(JavaModifier.SYNTHETIC);
    JavaClass type = field.getRawType();
    return type.isArray() ? unseen : !CHANGEABLE.matcher(type.getName()).matches();
  }
}
