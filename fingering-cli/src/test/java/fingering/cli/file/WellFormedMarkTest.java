package fingering.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.StringReader;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;

/** The mark of a written file is a comment of XML, whatever its checksum. */
class WellFormedMarkTest {
  @Test
  void markedTextIsWellFormed() throws Exception {
    SAXParser parser = SAXParserFactory.newInstance().newSAXParser();
    for (int i = 0; i < 2000; i++) {
      String marked = OwnFiles.marked("<score>" + i + "</score>\n");
      assertThat(OwnFiles.unchanged(marked)).isTrue();
      assertThatCode(
              () -> parser.parse(new InputSource(new StringReader(marked)), new DefaultHandler()))
          .as(marked)
          .doesNotThrowAnyException();
    }
  }
}
