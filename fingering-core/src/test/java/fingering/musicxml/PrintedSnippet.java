package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.util.List;
import java.util.Optional;

/** Small scores written out as XML, and what is printed in them. */
final class PrintedSnippet {
  /** One division to a quarter note, the treble clef and 4/4. */
  static final String START =
      "<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
          + "<clef><sign>G</sign><line>2</line></clef></attributes>";

  private PrintedSnippet() {}

  /** The printed viola part with these measures. */
  static PrintedPart part(String... measures) {
    return printed(score(xml("P1", measures)), 1);
  }

  /** The first measure of a part that has only one. */
  static PrintedMeasure measure(String content) {
    return part(content).measures().get(0);
  }

  /** The notes of a part of one measure. */
  static List<PrintedNote> notes(String content) {
    return measure(content).notes();
  }

  static String xml(String id, String... measures) {
    StringBuilder part = new StringBuilder("<part id=\"" + id + "\">");
    for (int i = 0; i < measures.length; i++) {
      part.append("<measure number=\"%d\">%s</measure>".formatted(i + 1, measures[i]));
    }
    return part.append("</part>").toString();
  }

  /** A score with one or two parts, for violas. */
  static Score score(String... parts) {
    StringBuilder list = new StringBuilder();
    for (int i = 1; i <= parts.length; i++) {
      list.append(
          "<score-part id=\"P%d\"><part-name>Viola %d</part-name></score-part>".formatted(i, i));
    }
    return ScoreReader.read(
        ScoreFile.of(
            "<score-partwise version=\"4.0\"><part-list>%s</part-list>%s</score-partwise>"
                .formatted(list, String.join("", parts)),
            ImmutableList.of()));
  }

  /** What is printed in a part, by its number from 1. */
  static PrintedPart printed(Score score, int number) {
    PassageRequest request = PassageRequest.WHOLE.withPart("P" + number);
    return score.printed(score.passage(request), Optional.empty());
  }

  /** A quarter note, with elements after its duration. */
  static String quarter(String after) {
    return "<note>" + pitched("A", 4) + "<duration>1</duration>" + after + "</note>";
  }

  static String pitched(String step, int octave) {
    return "<pitch><step>%s</step><octave>%d</octave></pitch>".formatted(step, octave);
  }

  static String notations(String content) {
    return "<notations>" + content + "</notations>";
  }

  static String direction(String attributes, String... types) {
    StringBuilder direction = new StringBuilder("<direction " + attributes + ">");
    for (String type : types) {
      direction.append("<direction-type>").append(type).append("</direction-type>");
    }
    return direction.append("</direction>").toString();
  }
}
