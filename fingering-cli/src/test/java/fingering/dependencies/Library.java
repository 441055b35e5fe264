package fingering.dependencies;

import java.nio.file.Path;

/**
 * A library as the build resolved it.
 *
 * @param group who makes it, as Maven names them
 * @param artifact its name
 * @param version its version
 * @param inJar whether it goes into the runnable jar, and not into tests only
 * @param jar where it lies in the local repository
 */
record Library(String group, String artifact, String version, boolean inJar, Path jar) {
  /** The name without the version, such as {@code com.google.guava:guava}. */
  String name() {
    return group + ":" + artifact;
  }
}
