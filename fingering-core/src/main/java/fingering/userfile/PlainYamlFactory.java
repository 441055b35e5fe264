package fingering.userfile;

import com.fasterxml.jackson.core.io.IOContext;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.Reader;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;

/**
 * Makes parsers for one file that refuse anchors, aliases and tags. The parser of Jackson skips
 * some of them without a trace.
 */
final class PlainYamlFactory extends YAMLFactory {
  private static final long serialVersionUID = 1L;

  private final String file;

  PlainYamlFactory(String file) {
    this.file = file;
  }

  @Override
  protected YAMLParser _createParser(Reader reader, IOContext context) {
    return new Parser(file, context, _parserFeatures, _yamlParserFeatures, _loaderOptions, reader);
  }

  private static final class Parser extends YAMLParser {
    private final String file;

    Parser(
        String file,
        IOContext context,
        int parserFeatures,
        int formatFeatures,
        LoaderOptions options,
        Reader reader) {
      super(context, parserFeatures, formatFeatures, options, null, reader);
      this.file = file;
    }

    @Override
    protected Event getEvent() throws IOException {
      Event event = super.getEvent();
      if (event instanceof AliasEvent alias) {
        throw refusal(
            event, "'*" + alias.getAnchor() + "' refers to another value; write the value itself");
      }
      if (event instanceof NodeEvent node && node.getAnchor() != null) {
        throw refusal(event, "remove '&" + node.getAnchor() + "': names for values are not used");
      }
      if ((event instanceof ScalarEvent scalar && scalar.getTag() != null)
          || (event instanceof CollectionStartEvent start && start.getTag() != null)) {
        throw refusal(event, "remove the tag before the value: tags such as '!!str' are not used");
      }
      return event;
    }

    private UserFileException refusal(Event event, String problem) {
      return new FileLine(file, event.getStartMark().getLine() + 1).refusal(problem);
    }
  }
}
