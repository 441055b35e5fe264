package fingering.musicxml;

import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small MusicXML scores for tests. Four divisions to a quarter note unless a test sets others. */
public final class ScoreText {
  public static final String START =
      "<attributes><divisions>4</divisions><key><fifths>0</fifths></key><time><beats>4</beats>"
          + "<beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef></attributes>";

  private ScoreText() {}

  /** A note or rest under construction; its text is the element. */
  public static final class N {
    private final String head;
    private String chord = "";
    private String duration;
    private String ties = "";
    private String voice = "<voice>1</voice>";
    private String print = "";
    private String notations = "";
    private String attributes = "";

    private N(String head, int duration) {
      this.head = head;
      this.duration = "<duration>" + duration + "</duration>";
    }

    public N chord() {
      chord = "<chord/>";
      return this;
    }

    public N grace() {
      chord = "<grace slash=\"yes\"/>" + chord;
      duration = "";
      return this;
    }

    public N cue() {
      chord = "<cue/>" + chord;
      return this;
    }

    public N tie(String type) {
      ties += "<tie type=\"" + type + "\"/>";
      notations += "<tied type=\"" + type + "\"/>";
      return this;
    }

    public N slur(String type, int number) {
      notations += "<slur type=\"" + type + "\" number=\"" + number + "\"/>";
      return this;
    }

    public N voice(String number) {
      voice = "<voice>" + number + "</voice>";
      return this;
    }

    public N notation(String xml) {
      notations += xml;
      return this;
    }

    /** Adds an element between voice and notations: type, accidental, notehead. */
    public N print(String xml) {
      print += xml;
      return this;
    }

    public N diamond() {
      return print("<notehead filled=\"no\">diamond</notehead>");
    }

    public N parenthesised() {
      return print("<notehead parentheses=\"yes\">normal</notehead>");
    }

    public N technical(String xml) {
      return notation("<technical>" + xml + "</technical>");
    }

    public N with(String attribute) {
      attributes += " " + attribute;
      return this;
    }

    @Override
    public String toString() {
      String printed = notations.isEmpty() ? "" : "<notations>" + notations + "</notations>";
      return "<note"
          + attributes
          + ">"
          + chord
          + head
          + duration
          + ties
          + voice
          + print
          + printed
          + "</note>";
    }
  }

  /** A note such as C4, F#4 or Bb3. */
  public static N note(String pitch, int duration) {
    int alter =
        (int) pitch.chars().filter(c -> c == '#').count()
            - (int) pitch.chars().skip(1).filter(c -> c == 'b').count();
    return new N(
        "<pitch><step>%s</step><alter>%d</alter><octave>%s</octave></pitch>"
            .formatted(pitch.substring(0, 1), alter, pitch.replaceAll("[^0-9]", "")),
        duration);
  }

  public static N rest(int duration) {
    return new N("<rest/>", duration);
  }

  public static String backup(int duration) {
    return "<backup><duration>" + duration + "</duration></backup>";
  }

  public static String words(String words) {
    return direction("<words>" + words + "</words>");
  }

  public static String direction(String type) {
    return "<direction><direction-type>" + type + "</direction-type></direction>";
  }

  public static String metronome(String unit, String perMinute) {
    return direction(
        "<metronome><beat-unit>%s</beat-unit><per-minute>%s</per-minute></metronome>"
            .formatted(unit, perMinute));
  }

  public static String rehearsal(String mark) {
    return direction("<rehearsal>" + mark + "</rehearsal>");
  }

  public static String measure(String number, Object... content) {
    return measureWith("number=\"" + number + "\"", content);
  }

  public static String measureWith(String attributes, Object... content) {
    StringBuilder xml = new StringBuilder("<measure " + attributes + ">");
    for (Object element : content) {
      xml.append(element);
    }
    return xml.append("</measure>\n").toString();
  }

  /** A score for one violin; the first measure needs {@link #START}. */
  public static String violin(String... measures) {
    return score(part("Violin", "", measures));
  }

  /** A part: name, its score-instrument element or nothing, and its measures. */
  public record Part(String name, String instrument, String measures) {}

  public static Part part(String name, String sound, String... measures) {
    String instrument =
        sound.isEmpty()
            ? ""
            : "<score-instrument id=\"I-%s\"><instrument-name/><instrument-sound>%s</instrument-sound></score-instrument>"
                .formatted(sound, sound);
    return new Part(name, instrument, String.join("", measures));
  }

  /** A part of which only the name and the MIDI program are known. */
  public static Part partWithProgram(String name, int program, String... measures) {
    return new Part(
        name,
        "<midi-instrument><midi-channel>1</midi-channel><midi-program>%d</midi-program></midi-instrument>"
            .formatted(program),
        String.join("", measures));
  }

  public static String score(Part... parts) {
    StringBuilder list = new StringBuilder();
    StringBuilder music = new StringBuilder();
    for (int i = 0; i < parts.length; i++) {
      String id = "P" + (i + 1);
      list.append("<score-part id=\"").append(id).append("\"><part-name>").append(parts[i].name());
      list.append("</part-name>").append(parts[i].instrument()).append("</score-part>");
      music.append("<part id=\"").append(id).append("\">").append(parts[i].measures());
      music.append("</part>");
    }
    return "<?xml version=\"1.0\"?><score-partwise version=\"4.0\"><work><work-title>Study"
        + "</work-title></work><part-list>"
        + list
        + "</part-list>"
        + music
        + "</score-partwise>";
  }

  public static Score read(String xml) {
    try {
      Path file = Files.createTempFile("study", ".musicxml");
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

  public static Passage passage(String xml) {
    return read(xml).passage(PassageRequest.WHOLE);
  }
}
