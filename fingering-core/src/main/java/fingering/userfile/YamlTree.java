package fingering.userfile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Builds the tree of a file from the tokens of the YAML parser. */
final class YamlTree {
  /** The maximum nesting depth of lists and keys; no user file needs more than four. */
  private static final int MAX_DEPTH = 20;

  private final String file;
  private final YAMLParser parser;

  private YamlTree(String file, YAMLParser parser) {
    this.file = file;
    this.parser = parser;
  }

  static YamlNode parse(String file, String text) {
    refuseControlCharacters(file, text);
    try (YAMLParser parser = new PlainYamlFactory(file).createParser(text)) {
      return new YamlTree(file, parser).document();
    } catch (JsonProcessingException e) {
      throw YamlError.of(file, text, e);
    } catch (IllegalArgumentException e) {
      // SnakeYAML throws it for some escapes, such as "\UFFFFFFFF".
      throw new FileLine(file, 1).refusal(YamlError.INVALID);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void refuseControlCharacters(String file, String text) {
    int line = 1;
    for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
      int character = text.codePointAt(i);
      if (character == '\n') {
        line++;
      } else if (!UserText.allowed(character)) {
        throw new FileLine(file, line)
            .refusal("the character U+%04X is not text; delete it".formatted(character));
      }
    }
  }

  private YamlNode document() throws IOException {
    JsonToken first = parser.nextToken();
    if (first == null) {
      throw new FileLine(file, 1).refusal("the file is empty; write keys and values into it");
    }
    YamlNode root = node(first, 0);
    if (parser.nextToken() != null) {
      throw place().refusal("a second document begins; remove the line '---', or write two files");
    }
    return root;
  }

  private YamlNode node(JsonToken token, int depth) throws IOException {
    if (depth > MAX_DEPTH) {
      throw place().refusal("lists and keys are nested too deeply; correct the brackets");
    }
    FileLine place = place();
    return switch (token) {
      case START_OBJECT -> new YamlNode.Mapping(place, entries(depth));
      case START_ARRAY -> new YamlNode.Sequence(place, items(depth));
      case VALUE_NULL -> new YamlNode.Scalar(place, "");
      default -> new YamlNode.Scalar(place, parser.getText());
    };
  }

  private ImmutableMap<String, YamlNode.Entry> entries(int depth) throws IOException {
    Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      FileLine place = place();
      String key = parser.currentName();
      YamlNode.Entry earlier = entries.get(key);
      if (earlier != null) {
        throw place.refusal(
            "the key '%s' is given twice, first in line %d; write it once"
                .formatted(key, earlier.place().line()));
      }
      entries.put(key, new YamlNode.Entry(place, node(parser.nextToken(), depth + 1)));
    }
    return ImmutableMap.copyOf(entries);
  }

  private ImmutableList<YamlNode> items(int depth) throws IOException {
    ImmutableList.Builder<YamlNode> items = ImmutableList.builder();
    for (JsonToken token = parser.nextToken();
        token != JsonToken.END_ARRAY;
        token = parser.nextToken()) {
      items.add(node(token, depth + 1));
    }
    return items.build();
  }

  private FileLine place() {
    return new FileLine(file, parser.currentTokenLocation().getLineNr());
  }
}
