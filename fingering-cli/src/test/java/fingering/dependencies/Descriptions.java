package fingering.dependencies;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.model.License;
import org.apache.maven.model.Model;
import org.apache.maven.model.Parent;
import org.apache.maven.model.io.xpp3.MavenXpp3Reader;
import org.codehaus.plexus.util.xml.pull.XmlPullParserException;

/** What libraries say of themselves in their project descriptions (poms), which lie beside them. */
final class Descriptions {
  private Descriptions() {}

  /** Under which licences a library stands: its own, or those of the nearest parent with any. */
  static List<Licence> licences(Library library) {
    Path repository = library.jar().toAbsolutePath();
    for (int i = library.group().split("\\.").length + 3; i > 0; i--) {
      repository = repository.getParent();
    }
    Model model = read(pom(repository, library.group(), library.artifact(), library.version()));
    while (model.getLicenses().isEmpty() && model.getParent() != null) {
      Parent parent = model.getParent();
      model =
          read(pom(repository, parent.getGroupId(), parent.getArtifactId(), parent.getVersion()));
    }
    return model.getLicenses().stream().map(License::getName).map(Licence::named).toList();
  }

  private static Path pom(Path repository, String group, String artifact, String version) {
    return repository
        .resolve(group.replace('.', '/'))
        .resolve(artifact)
        .resolve(version)
        .resolve(artifact + "-" + version + ".pom");
  }

  private static Model read(Path pom) {
    try (InputStream in = Files.newInputStream(pom)) {
      return new MavenXpp3Reader().read(in, false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (XmlPullParserException e) {
      throw new IllegalStateException(pom + " cannot be read", e);
    }
  }
}
