package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.UnreadableScoreException;
import fingering.musicxml.file.LimitedReader;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.xml.XmlParsers;
import fingering.musicxml.xml.XmlText;
import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Unmarshaller;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Work;
import org.audiveris.proxymusic.util.Marshalling;

/** Reads the score in a file. */
public final class ScoreReader {

  private ScoreReader() {}

  /**
   * Reads the score in a file. Nothing is loaded from outside the file. A part that cannot be read
   * is refused only if it is requested.
   *
   * @throws UnreadableScoreException if the file is not a score, no part can be read, or it exceeds
   *     its {@linkplain ScoreFile#limits limits}
   */
  public static Score read(ScoreFile file) {
    ScoreListener listener = new ScoreListener();
    List<String> remarks = new ArrayList<>(file.remarks());
    ScorePartwise score = unmarshal(file, listener, remarks);
    if (listener.empty()) {
      throw new UnreadableScoreException(
          "The score has no part with a measure in it: export it again from your notation program.");
    }
    return listener.score(title(score), ImmutableList.copyOf(remarks));
  }

  /**
   * Prepares the XML binding, which takes longer than reading a score of some pages. A program that
   * has other things to do before it reads can call this in another thread; {@link #read} waits for
   * it. It fails silently, since reading fails in the same way.
   */
  public static void prepare() {
    try {
      binding();
    } catch (JAXBException e) {
      // Reading reports it.
    }
  }

  private static Unmarshaller binding() throws JAXBException {
    return Marshalling.getContext(ScorePartwise.class).createUnmarshaller();
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

  private static ScorePartwise unmarshal(
      ScoreFile file, ScoreListener listener, List<String> remarks) {
    try {
      XMLStreamReader reader = open(file);
      try {
        while (reader.getEventType() != XMLStreamConstants.START_ELEMENT) {
          reader.next();
        }
        refuseOtherRoots(reader.getLocalName());
        Unmarshaller binding = binding();
        binding.setListener(listener);
        LimitedReader limited = new LimitedReader(reader, file.limits());
        ScorePartwise score = binding.unmarshal(limited, ScorePartwise.class).getValue();
        limited.remark().ifPresent(remarks::add);
        return score;
      } catch (IllegalArgumentException e) {
        // The XML binding throws this for attributes that should be whole numbers but are not.
        throw new UnreadableScoreException(
            "The score has text instead of a number at line %d: export it again from your notation program, or correct the file there."
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
          "The score is not readable MusicXML: export it again from your notation program.", e);
    }
  }

  private static XMLStreamReader open(ScoreFile file) throws XMLStreamException {
    if (file.utf8().isEmpty()) {
      return XmlParsers.factory().createXMLStreamReader(new StringReader(file.text()));
    }
    try {
      return XmlParsers.factory()
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
              "The file is only a list of scores (opus): choose one of the scores in the list.");
      default ->
          throw new UnreadableScoreException(
              "The file is not a MusicXML score but contains <%s>: export the score as MusicXML from your notation program and use that file."
                  .formatted(XmlText.printable(root)));
    }
  }
}
