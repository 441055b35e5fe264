package fingering.dependencies;

import java.util.List;
import org.apache.maven.artifact.versioning.DefaultArtifactVersion;
import org.apache.maven.artifact.versioning.InvalidVersionSpecificationException;
import org.apache.maven.artifact.versioning.VersionRange;

/**
 * A published weakness of a library.
 *
 * @param id as it is published, such as {@code CVE-2022-1471}
 * @param library group and artifact
 * @param affected the versions that have it, in Maven's notation of ranges
 * @param what what can happen, in a few words
 */
record Advisory(String id, String library, VersionRange affected, String what) {
  /** Reads a row: four fields between tabs. */
  static Advisory of(String row) {
    List<String> fields = List.of(row.split("\t", -1));
    if (fields.size() != 4 || fields.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException("Not four fields between tabs: " + row);
    }
    try {
      VersionRange affected = VersionRange.createFromVersionSpec(fields.get(2));
      if (!affected.hasRestrictions()) {
        throw new IllegalArgumentException("Not a range of versions: " + row);
      }
      return new Advisory(fields.get(0), fields.get(1), affected, fields.get(3));
    } catch (InvalidVersionSpecificationException e) {
      throw new IllegalArgumentException("Not a range of versions: " + row, e);
    }
  }

  boolean concerns(String name, String version) {
    return name.equals(library) && affected.containsVersion(new DefaultArtifactVersion(version));
  }
}
