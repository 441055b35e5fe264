package fingering.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Scores of a few whole notes, one a measure. */
final class TinyScore {
  private final StringBuilder partList = new StringBuilder();
  private final StringBuilder parts = new StringBuilder();
  private final String title;
  private int count;

  private TinyScore(String title) {
    this.title = title;
  }

  static TinyScore titled(String title) {
    return new TinyScore(title);
  }

  /** Adds a part; notes are written as A4 or G5, naturals only. */
  TinyScore part(String name, String... notes) {
    count++;
    partList.append(
        "<score-part id=\"P%d\"><part-name>%s</part-name></score-part>".formatted(count, name));
    parts.append("<part id=\"P%d\">".formatted(count));
    List<String> written = List.of(notes);
    for (int i = 0; i < written.size(); i++) {
      parts.append("<measure number=\"%d\">".formatted(i + 1));
      if (i == 0) {
        parts.append(
            "<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type>"
                + "</time><clef><sign>G</sign><line>2</line></clef></attributes>");
      }
      parts.append(
          ("<note><pitch><step>%s</step><octave>%s</octave></pitch><duration>4</duration>"
                  + "<type>whole</type></note></measure>")
              .formatted(written.get(i).substring(0, 1), written.get(i).substring(1)));
    }
    parts.append("</part>");
    return this;
  }

  Path in(Path folder) throws IOException {
    Path file = folder.resolve("tiny.musicxml");
    return Files.writeString(
        file,
        ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise version=\"4.0\">"
                + "<work><work-title>%s</work-title></work><part-list>%s</part-list>%s"
                + "</score-partwise>\n")
            .formatted(title, partList, parts));
  }
}
