package fingering.playability;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.playability.check.Checker;
import fingering.tables.Pitch;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes small scores for tests. Events are separated by spaces, measures by bars: {@code C4/1} is
 * a quarter note, {@code C4+E4/2} a double stop, {@code r/4} a rest, {@code "con_sord."} words,
 * {@code {pp}} a dynamic, {@code <...>} the content of another direction, {@code [C4]} a clef,
 * {@code ||} a final bar line, and {@code &} goes back to the start of the measure for a second
 * voice. After the length and a comma follow {@code (} and {@code )} for a slur, {@code tr}, {@code
 * trem}, {@code from} and {@code to} for a tremolo, {@code harm}, {@code s4} for a printed string,
 * and {@code -} and {@code _} for the start and the end of a tie.
 */
public final class Scored {
  private static final Splitter BLANKS = Splitter.onPattern("\\s+").omitEmptyStrings();
  private static final Splitter COMMAS = Splitter.on(',');
  private static final int QUARTER = 96;

  private final StringBuilder list = new StringBuilder();
  private final StringBuilder parts = new StringBuilder();
  private int count;
  private int tempo = 60;
  private boolean octaveLower;

  private Scored() {}

  public static Scored score() {
    return new Scored();
  }

  /** Returns a score of one part, at quarter = 60. */
  public static Scored of(String name, String music) {
    return score().part(name, music);
  }

  public Scored tempo(int quarters) {
    tempo = quarters;
    return this;
  }

  /** Transposes the parts that follow an octave down. */
  public Scored octaveLower() {
    octaveLower = true;
    return this;
  }

  public Scored part(String name, String music) {
    return part(name, "", music);
  }

  public Scored part(String name, String sound, String music) {
    count++;
    String id = "P" + count;
    list.append(
        "<score-part id=\"%s\"><part-name>%s</part-name>%s</score-part>"
            .formatted(
                id,
                name,
                sound.isEmpty()
                    ? ""
                    : "<score-instrument id=\"%s-I\"><instrument-name/><instrument-sound>%s</instrument-sound></score-instrument>"
                        .formatted(id, sound)));
    parts.append("<part id=\"").append(id).append("\">");
    int number = 0;
    for (String measure : Splitter.on(" | ").split(music.replace(" || ", " || | "))) {
      number++;
      parts.append("<measure number=\"").append(number).append("\">");
      if (number == 1) {
        parts.append(
            "<attributes><divisions>96</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
                + (measure.contains("[") ? "" : "<clef><sign>G</sign><line>2</line></clef>")
                + (octaveLower
                    ? "<transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>"
                    : "")
                + "</attributes><sound tempo=\"TEMPO\"/>");
      }
      measure(measure);
      parts.append("</measure>");
    }
    parts.append("</part>");
    return this;
  }

  private void measure(String music) {
    int length = 0;
    int voice = 1;
    for (String event : BLANKS.split(music)) {
      if (event.startsWith("\"")) {
        direction("<words>" + event.replace("\"", "").replace('_', ' ') + "</words>");
      } else if (event.startsWith("<")) {
        direction(event.replace('_', ' '));
      } else if (event.startsWith("{")) {
        direction("<dynamics><" + event.substring(1, event.length() - 1) + "/></dynamics>");
      } else if (event.startsWith("[")) {
        parts.append(
            "<attributes><clef><sign>%s</sign><line>%s</line></clef></attributes>"
                .formatted(event.charAt(1), event.charAt(2)));
      } else if (event.equals("&")) {
        parts.append("<backup><duration>").append(length).append("</duration></backup>");
        voice++;
      } else if (event.equals("||")) {
        parts.append("<barline location=\"right\"><bar-style>light-heavy</bar-style></barline>");
      } else {
        int sounds = notes(event, voice);
        length += voice == 1 ? sounds : 0;
      }
    }
  }

  private void direction(String type) {
    parts
        .append("<direction><direction-type>")
        .append(type)
        .append("</direction-type></direction>");
  }

  private int notes(String event, int voice) {
    List<String> signs = new ArrayList<>(COMMAS.splitToList(event));
    String head = signs.remove(0);
    int slash = head.indexOf('/');
    int length = (int) Math.round(Double.parseDouble(head.substring(slash + 1)) * QUARTER);
    String before = "";
    for (String one : Splitter.on('+').split(head.substring(0, slash))) {
      parts.append("<note>").append(before);
      if (one.equals("r")) {
        parts.append("<rest/>");
      } else {
        Pitch pitch = Pitch.parse(one);
        parts.append(
            "<pitch><step>%s</step><alter>%d</alter><octave>%d</octave></pitch>"
                .formatted(pitch.letter(), pitch.alter(), pitch.octave()));
      }
      parts.append("<duration>").append(length).append("</duration>");
      signs.stream()
          .filter(sign -> sign.equals("-") || sign.equals("_"))
          .forEach(
              sign ->
                  parts.append("<tie type=\"" + (sign.equals("-") ? "start" : "stop") + "\"/>"));
      parts.append("<voice>").append(voice).append("</voice><notations>");
      signs.forEach(sign -> parts.append(notation(sign)));
      parts.append("</notations></note>");
      before = "<chord/>";
    }
    return length;
  }

  private static String notation(String sign) {
    return switch (sign) {
      case "(" -> "<slur type=\"start\" number=\"1\"/>";
      case ")" -> "<slur type=\"stop\" number=\"1\"/>";
      case "-" -> "<tied type=\"start\"/>";
      case "_" -> "<tied type=\"stop\"/>";
      case "tr" -> "<ornaments><trill-mark/></ornaments>";
      case "trem" -> "<ornaments><tremolo type=\"single\">3</tremolo></ornaments>";
      case "from" -> "<ornaments><tremolo type=\"start\">3</tremolo></ornaments>";
      case "to" -> "<ornaments><tremolo type=\"stop\">3</tremolo></ornaments>";
      case "harm" -> "<technical><harmonic><natural/></harmonic></technical>";
      default -> "<technical><string>" + sign.substring(1) + "</string></technical>";
    };
  }

  public Score read() {
    String xml =
        "<score-partwise version=\"4.0\"><part-list>"
            + list
            + "</part-list>"
            + parts.toString().replace("TEMPO", Integer.toString(tempo))
            + "</score-partwise>";
    try {
      Path file = Files.createTempFile("checked", ".musicxml");
      try {
        Files.writeString(file, xml);
        return ScoreReader.read(ScoreFile.read(file));
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public ScoreCheck check(String level) {
    return Checker.of(CheckLevel.preset(level)).check(read());
  }

  public ScoreCheck check(String level, Forces forces) {
    return Checker.of(CheckLevel.preset(level))
        .check(read(), CheckRequest.WHOLE.withForces(forces));
  }

  /** Returns the findings of a kind in all parts. */
  public ImmutableList<Finding> findings(String level, FindingKind kind) {
    return of(check(level), kind);
  }

  public ImmutableList<Finding> findings(String level, Forces forces, FindingKind kind) {
    return of(check(level, forces), kind);
  }

  private static ImmutableList<Finding> of(ScoreCheck check, FindingKind kind) {
    return check.findings().stream()
        .filter(finding -> finding.kind() == kind)
        .collect(ImmutableList.toImmutableList());
  }
}
