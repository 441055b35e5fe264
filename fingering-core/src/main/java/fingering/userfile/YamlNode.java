package fingering.userfile;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;

/** A value in a user file, with its line: a single value, a list, or keys with values. */
public sealed interface YamlNode {
  /** The line on which the value begins. */
  FileLine place();

  /**
   * Parses a file.
   *
   * @param file the name of the file, for messages
   * @throws UserFileException if the text is empty, is not YAML, holds several documents, gives a
   *     key twice, or uses anchors, aliases or tags
   */
  static YamlNode parse(String file, String text) {
    return YamlTree.parse(file, text);
  }

  /**
   * A single value.
   *
   * @param place the line on which the value begins
   * @param text the value as written, without quotes; empty if nothing is written
   */
  record Scalar(FileLine place, String text) implements YamlNode {}

  /**
   * A list.
   *
   * @param place the line on which the list begins
   * @param items the items, in order
   */
  record Sequence(FileLine place, ImmutableList<YamlNode> items) implements YamlNode {}

  /**
   * Keys with values.
   *
   * @param place the line on which the first key is
   * @param entries the values by key, in the order of the file
   */
  record Mapping(FileLine place, ImmutableMap<String, Entry> entries) implements YamlNode {}

  /**
   * The value of a key.
   *
   * @param place the line of the key
   * @param value the value
   */
  record Entry(FileLine place, YamlNode value) {}
}
