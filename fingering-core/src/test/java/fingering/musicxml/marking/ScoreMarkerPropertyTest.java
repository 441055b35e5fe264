package fingering.musicxml.marking;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.NoteAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import javax.xml.stream.XMLStreamException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Random scores, long enough to cross the parser's buffers at every kind of character. */
class ScoreMarkerPropertyTest {

  private static final List<String> BREAKS = List.of("\n", "\r\n", "\r", "", " ", "\r\n\r\n");
  private static final List<String> FILLERS =
      List.of(
          "<!-- \uD834\uDD1E <note> \r\n -->",
          "<?pi a\r\nb?>",
          "<barline/>",
          "<direction><direction-type><words>a&amp;&#10;\r\n&#x1D11E;</words></direction-type></direction>",
          "<x><![CDATA[\r\n</note> \uD834\uDD1E]]></x>",
          "");
  private static final List<String> NOTE_PARTS =
      List.of(
          "<pitch><step>A</step></pitch>",
          "<duration>1</duration>",
          "<voice>1</voice>",
          "<x a='&lt;>\r\n'/>",
          "<!-- \r\n\uD834\uDD1E -->");

  private final StringBuilder text = new StringBuilder();
  private final List<NoteMarks> marks = new ArrayList<>();

  private static String pick(Random random, List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private String score(Random random) {
    text.setLength(0);
    marks.clear();
    text.append("<?xml version='1.0'?>\r\n<!DOCTYPE score-partwise [ <!-- \r\n --> ]>\r\n");
    text.append("<score-partwise>");
    for (int part = 0; part < 2; part++) {
      text.append(pick(random, BREAKS)).append("<part>");
      for (int measure = 0; measure < 10; measure++) {
        text.append(pick(random, BREAKS)).append("<measure>");
        for (int note = 0; note < 1 + random.nextInt(9); note++) {
          addNote(random, new NoteAddress(part, measure, note));
        }
        text.append(pick(random, BREAKS)).append("</measure>");
      }
      text.append("</part>");
    }
    return text.append("</score-partwise>\r\n").toString();
  }

  private void addNote(Random random, NoteAddress address) {
    text.append(pick(random, FILLERS)).append(pick(random, BREAKS)).append("<note>");
    text.append(pick(random, BREAKS)).append("<rest/>");
    for (int i = random.nextInt(5); i > 0; i--) {
      text.append(pick(random, BREAKS)).append("  ").append(pick(random, NOTE_PARTS));
    }
    text.append(pick(random, BREAKS)).append("</note>");
    if (random.nextInt(3) > 0) {
      marks.add(
          new NoteMarks(
              address,
              Optional.of("3"),
              OptionalInt.of(2),
              random.nextBoolean() ? Optional.of("MARK") : Optional.empty()));
    }
  }

  @Property(tries = 300)
  void strippingTheMarksGivesTheOriginalAndTheCountsGrowByTheMarks(@ForAll Random random)
      throws XMLStreamException {
    String original = score(random);

    String marked = ScoreMarker.mark(original, marks);

    assertThat(strip(marked)).isEqualTo(original);
    int words = (int) marks.stream().filter(each -> each.words().isPresent()).count();
    Map<String, Integer> growth = MarkerTexts.growth(original, marked);
    assertThat(growth.getOrDefault("fingering", 0)).isEqualTo(marks.size());
    assertThat(growth.getOrDefault("string", 0)).isEqualTo(marks.size());
    assertThat(growth.getOrDefault("notations", 0)).isEqualTo(marks.size());
    assertThat(growth.getOrDefault("direction@placement=above", 0)).isEqualTo(words);
  }

  private static String strip(String marked) {
    return marked
        .replaceAll("(?s)<direction placement=\"above\">.*?</direction>\\s*", "")
        .replaceAll("(?s)\\s*<notations>.*?</notations>", "");
  }
}
