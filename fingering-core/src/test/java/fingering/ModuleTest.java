package fingering;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.base.Splitter;
import java.lang.module.Configuration;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The library works as a module, with its tables, and hides its internal packages. */
class ModuleTest {
  private static final String MODULE = "fingering.core";

  /** The only library without a module descriptor. */
  private static final String BINDING = "proxymusic";

  /** The modules on the class path, without the automatic modules of the test libraries. */
  private static final class ClassPath implements ModuleFinder {
    private final ModuleFinder all =
        ModuleFinder.of(
            Splitter.on(System.getProperty("path.separator"))
                .splitToStream(System.getProperty("java.class.path"))
                .map(Path::of)
                .filter(ClassPath::isModule)
                .toArray(Path[]::new));

    private static boolean isModule(Path entry) {
      return Files.isDirectory(entry)
          ? Files.exists(entry.resolve("module-info.class"))
          : Stream.of(ModuleFinder.of(entry))
              .flatMap(finder -> finder.findAll().stream())
              .anyMatch(ClassPath::isWanted);
    }

    private static boolean isWanted(ModuleReference module) {
      return !module.descriptor().isAutomatic() || module.descriptor().name().equals(BINDING);
    }

    @Override
    public Optional<ModuleReference> find(String name) {
      return all.find(name);
    }

    @Override
    public Set<ModuleReference> findAll() {
      return new HashSet<>(all.findAll());
    }
  }

  private static final ModuleLayer LAYER = layer();

  private static ModuleLayer layer() {
    ModuleLayer boot = ModuleLayer.boot();
    Configuration configuration =
        boot.configuration().resolveAndBind(new ClassPath(), ModuleFinder.of(), Set.of(MODULE));
    return boot.defineModulesWithOneLoader(configuration, ClassLoader.getPlatformClassLoader());
  }

  private static Class<?> type(String name) throws ClassNotFoundException {
    return LAYER.findLoader(MODULE).loadClass(name);
  }

  @AfterEach
  void restoreContextClassLoader() {
    Thread.currentThread().setContextClassLoader(getClass().getClassLoader());
  }

  @Test
  void scoresTablesAndPresetsAreRead() throws ReflectiveOperationException {
    // The XML binding looks for its implementation here.
    Thread.currentThread().setContextClassLoader(LAYER.findLoader(MODULE));
    Path demo = Path.of("..", "docs", "demo", "demo.musicxml");
    Object file =
        type("fingering.musicxml.file.ScoreFile").getMethod("read", Path.class).invoke(null, demo);
    Object score =
        type("fingering.musicxml.reading.ScoreReader")
            .getMethod("read", file.getClass())
            .invoke(null, file);
    assertThat(score).isNotNull();
    assertThat(score.getClass().getModule().getName()).isEqualTo(MODULE);
    Object speed =
        type("fingering.tempo.PlayerSpeed")
            .getMethod("named", String.class)
            .invoke(null, "advanced");
    assertThat(speed.toString()).contains("advanced");
    Object level =
        type("fingering.playability.CheckLevel")
            .getMethod("preset", String.class)
            .invoke(null, "advanced");
    Object checker =
        type("fingering.playability.check.Checker")
            .getMethod("of", level.getClass())
            .invoke(null, level);
    assertThat(checker).isNotNull();
  }

  @Test
  void internalPackagesAreNotExported() {
    Set<String> exported =
        LAYER.findModule(MODULE).orElseThrow().getDescriptor().exports().stream()
            .map(one -> one.source())
            .collect(Collectors.toSet());
    assertThat(exported)
        .contains("fingering.plan", "fingering.musicxml.reading")
        .doesNotContain("fingering.musicxml.element", "fingering.playability.rules");
  }
}
