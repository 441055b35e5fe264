package fingering.dependencies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The libraries that the build resolved, against the list of known advisories. */
class AdvisoriesTest {
  private List<Advisory> advisories = List.of();

  @BeforeEach
  void readList() throws IOException {
    advisories =
        Files.readAllLines(Path.of("../docs/contributing/advisories.tsv")).stream()
            .filter(line -> !line.startsWith("#"))
            .map(Advisory::of)
            .toList();
  }

  @Test
  void noLibraryHasAKnownWeakness() {
    assertThat(Libraries.resolved())
        .isNotEmpty()
        .allSatisfy(
            library ->
                assertThat(known(library.name(), library.version()))
                    .as("%s %s; take a newer one in pom.xml", library.name(), library.version())
                    .isEmpty());
  }

  @Test
  void everyRowIsOnALibraryThatIsUsed() {
    List<String> used = Libraries.resolved().stream().map(Library::name).toList();
    assertThat(advisories)
        .isNotEmpty()
        .allSatisfy(advisory -> assertThat(used).contains(advisory.library()));
  }

  /** The first version without a weakness, and one before it, as published (from memory). */
  @ParameterizedTest
  @CsvSource({
    "CVE-2022-1471, org.yaml:snakeyaml, 1.33, 2.0",
    "CVE-2023-2976, com.google.guava:guava, 31.1-jre, 32.0.0-jre",
    "CVE-2022-42003, com.fasterxml.jackson.core:jackson-databind, 2.13.4, 2.13.4.2",
    "CVE-2022-40152, com.fasterxml.woodstox:woodstox-core, 6.3.1, 6.4.0",
    "CVE-2025-48924, org.apache.commons:commons-lang3, 3.14.0, 3.18.0",
  })
  void weaknessEndsWithTheVersionThatMendsIt(String id, String name, String weak, String mended) {
    assertThat(known(name, weak)).contains(id);
    assertThat(known(name, mended)).doesNotContain(id);
  }

  @ParameterizedTest
  @CsvSource({"'CVE-1 a:b (,2.0) words'", "'CVE-1\ta:b\t2.0\twords'", "'CVE-1\ta:b\t(2.0\twords'"})
  void rowThatCannotBeReadIsRefused(String row) {
    assertThatThrownBy(() -> Advisory.of(row)).hasMessageContaining("CVE-1");
  }

  private List<String> known(String name, String version) {
    Stream<Advisory> found =
        advisories.stream().filter(advisory -> advisory.concerns(name, version));
    return found.map(Advisory::id).toList();
  }
}
