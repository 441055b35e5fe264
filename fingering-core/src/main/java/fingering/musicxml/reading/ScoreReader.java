package fingering.musicxml.reading;

import com.ctc.wstx.stax.WstxInputFactory;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.file.LimitedReader;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.xml.XmlText;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Unmarshaller;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Work;
import org.audiveris.proxymusic.util.Marshalling;
import org.codehaus.stax2.XMLInputFactory2;

/** Reads the score that a file holds. */
public final class ScoreReader {

  private ScoreReader() {}

  /**
   * Reads the score of a file. Nothing is loaded from outside the file.
   *
   * @throws UnreadableScoreException if the file holds no score, no part one that cannot be read,
   *     or more than its {@linkplain ScoreFile#limits limits} allow
   */
  public static Score read(ScoreFile file) {
    PartsWalk walk = new PartsWalk();
    ScorePartwise score = unmarshal(file, walk);
    if (walk.empty()) {
      throw new UnreadableScoreException(
          "The score has no part with a measure in it: export it again from your notation program.");
    }
    return walk.score(title(score), file.remarks());
  }

  private static String title(ScorePartwise score) {
    return Stream.of(
            Optional.ofNullable(score.getWork()).map(Work::getWorkTitle),
            Optional.ofNullable(score.getMovementTitle()))
        .flatMap(Optional::stream)
        .map(XmlText::oneLine)
        .filter(title -> !title.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static ScorePartwise unmarshal(ScoreFile file, PartsWalk walk) {
    try {
      XMLStreamReader reader = open(file);
      try {
        while (reader.getEventType() != XMLStreamConstants.START_ELEMENT) {
          reader.next();
        }
        refuseOtherRoots(reader.getLocalName());
        Unmarshaller binding = Marshalling.getContext(ScorePartwise.class).createUnmarshaller();
        binding.setListener(walk);
        return binding
            .unmarshal(new LimitedReader(reader, file.limits()), ScorePartwise.class)
            .getValue();
      } catch (IllegalArgumentException e) {
        // What the binding throws at attributes that should be whole numbers and are none.
        throw new UnreadableScoreException(
            "The score has text where a number should stand at line %d: export it again from your notation program, or mend it there."
                .formatted(reader.getLocation().getLineNumber()),
            e);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException e) {
      throw UnreadableScoreException.malformed(e);
    } catch (JAXBException e) {
      Throwable linked = e.getLinkedException();
      if (linked instanceof XMLStreamException stream) {
        throw UnreadableScoreException.malformed(stream);
      }
      throw new UnreadableScoreException(
          "The score is no MusicXML that can be read: export it again from your notation program.",
          e);
    }
  }

  private static XMLStreamReader open(ScoreFile file) throws XMLStreamException {
    if (file.utf8().isEmpty()) {
      return factory().createXMLStreamReader(new StringReader(file.text()));
    }
    try {
      return factory()
          .createXMLStreamReader(file.utf8().get().openStream(), StandardCharsets.UTF_8.name());
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory cannot fail", e);
    }
  }

  private static void refuseOtherRoots(String root) {
    switch (root) {
      case "score-partwise" -> {}
      case "score-timewise" ->
          throw new UnreadableScoreException(
              "The score is ordered by measures (score-timewise) and not by parts: open it in your notation program and export it again as MusicXML.");
      case "opus" ->
          throw new UnreadableScoreException(
              "The file is only a list of scores (opus): name one of the scores it lists.");
      default ->
          throw new UnreadableScoreException(
              "The file is no MusicXML score but holds <%s>: export the score as MusicXML from your notation program and use that file."
                  .formatted(XmlText.printable(root)));
    }
  }

  private static XMLInputFactory factory() {
    WstxInputFactory factory = new WstxInputFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
    // Lazy parsing would report errors from accessors, as unchecked exceptions.
    factory.setProperty(XMLInputFactory2.P_LAZY_PARSING, false);
    return factory;
  }
}
