package fingering.musicxml.random;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A random score with parts for strings, valid by construction, and what must be read from it. */
final class RandomScore {
  private static final ImmutableList<PartInstrument> ALL =
      ImmutableList.copyOf(PartInstrument.values());

  private static final String[] METERS = {
    "4/4 96", "3/4 72", "6/8 72", "5/8 60", "3+2/8 60", "7/16 42", "2/2 96", "- 60"
  };
  private static final String[] DIVISIONS = {"24", "48", "480", "1", "10080", "24"};

  /** Lengths in 24ths of a quarter note, and how they are printed. */
  private static final Object[][] LENGTHS = {
    {96, "whole", 0}, {72, "half", 1}, {48, "half", 0}, {36, "quarter", 1}, {24, "quarter", 0},
    {24, "quarter", 0}, {12, "eighth", 0}, {12, "eighth", 0}, {18, "eighth", 1}, {6, "16th", 0},
    {3, "32nd", 0}, {8, "eighth", 3}
  };

  /** A note that goes on in the next one of its voice. */
  private record Tied(int time, List<Integer> pitches, List<Integer> first) {}

  private final Random random;
  private final SchemaContent schema;
  private final List<List<String>> measures = new ArrayList<>();
  private final List<ExpectedNotes.Part> parts = new ArrayList<>();
  private final StringBuilder list = new StringBuilder();

  private StringBuilder out = new StringBuilder();
  private PartInstrument instrument = PartInstrument.VIOLIN;
  private int divisions = 24;
  private int transposed;
  private int start;
  private ExpectedNotes expected = new ExpectedNotes();

  RandomScore(Random random, SchemaContent schema) {
    this.random = random;
    this.schema = schema;
    schema.with(random);
    int number = 1 + random.nextInt(3);
    int length = 2 + random.nextInt(4);
    String[] meters = new String[length];
    for (int m = 0; m < length; m++) {
      meters[m] = m > 0 && one(3) ? meters[m - 1] : METERS[random.nextInt(METERS.length)];
    }
    for (int part = 1; part <= number; part++) {
      part(part, meters);
    }
  }

  /** The parts, with the notes that must be read. */
  List<ExpectedNotes.Part> parts() {
    return parts;
  }

  private boolean one(int of) {
    return random.nextInt(of) == 0;
  }

  private String maybe(int of, String name, String type) {
    return one(of) ? schema.element(name, type) : "";
  }

  String partwise() {
    return new WholeScore(list.toString(), measures).partwise();
  }

  String timewise() {
    return new WholeScore(list.toString(), measures).timewise();
  }

  private void part(int number, String[] meters) {
    instrument = ALL.get(random.nextInt(ALL.size()));
    String instrumentId = "P" + number + "-I1";
    list.append(
            "<score-part id=\"P%d\"><part-name>%s</part-name>"
                .formatted(number, instrument.printed()))
        .append(maybe(3, "part-name-display", "name-display"))
        .append(maybe(3, "part-abbreviation", "part-name"))
        .append("<score-instrument id=\"" + instrumentId + "\"><instrument-name>")
        .append(instrument.printed())
        .append("</instrument-name></score-instrument></score-part>\n");
    expected = new ExpectedNotes();
    start = 0;
    transposed = 0;
    List<String> music = new ArrayList<>();
    Tied tied = null;
    int staves = one(5) ? 2 : 1;
    for (int m = 0; m < meters.length; m++) {
      out = new StringBuilder();
      boolean changed = m == 0 || !meters[m].equals(meters[m - 1]);
      if (m == 0 || changed || one(4)) {
        attributes(m == 0, changed ? meters[m] : "", staves, tied == null);
      }
      out.append(maybe(6, "print", "print"));
      out.append(maybe(6, "barline", "barline"));
      int length = Integer.parseInt(Splitter.on(' ').splitToList(meters[m]).get(1));
      tied = voice(1, 1, 0, length, tied, m + 1 < meters.length);
      int here = length;
      for (int voice = 2; one(2) && voice <= 3; voice++) {
        out.append("<backup><duration>" + duration(here) + "</duration></backup>\n");
        int from = one(3) ? 24 : 0;
        if (from > 0) {
          out.append("<forward><duration>" + duration(from) + "</duration>");
          out.append("<voice>" + voice + "</voice></forward>\n");
        }
        here = one(3) ? Math.max(from + 12, length - 24) : length;
        voice(voice, staves, from, here, null, false);
      }
      if (here < length) {
        out.append("<forward><duration>" + duration(length - here) + "</duration></forward>\n");
      }
      out.append(maybe(5, "barline", "barline"));
      start += length;
      music.add(out.toString());
    }
    measures.add(music);
    parts.add(expected.part(number, instrument.printed()));
  }

  private void attributes(boolean first, String meter, int staves, boolean mayTranspose) {
    out.append("<attributes>");
    if (first || one(3)) {
      String next = DIVISIONS[random.nextInt(DIVISIONS.length)];
      divisions = Integer.parseInt(next);
      out.append("<divisions>" + next + "</divisions>");
    }
    out.append(maybe(2, "key", "key"));
    if (meter.startsWith("-")) {
      out.append("<time><senza-misura/></time>");
    } else if (!meter.isEmpty()) {
      List<String> time = Splitter.onPattern("[/ ]").splitToList(meter);
      out.append(
          "<time><beats>"
              + time.get(0)
              + "</beats><beat-type>"
              + time.get(1)
              + "</beat-type></time>");
    }
    if (first && staves > 1) {
      out.append("<staves>" + staves + "</staves>");
    }
    out.append(maybe(6, "part-symbol", "part-symbol"));
    if (first || one(3)) {
      out.append(clef());
    }
    out.append(maybe(5, "staff-details", "staff-details"));
    if (mayTranspose && (first || one(4))) {
      transpose(first);
    }
    out.append(maybe(8, "measure-style", "measure-style"));
    out.append("</attributes>\n");
  }

  private String clef() {
    return switch (random.nextInt(4)) {
      case 0 -> "<clef><sign>G</sign><line>2</line></clef>";
      case 1 -> "<clef><sign>F</sign><line>4</line></clef>";
      case 2 -> "<clef><sign>C</sign><line>" + (3 + random.nextInt(2)) + "</line></clef>";
      default ->
          "<clef><sign>G</sign><line>2</line><clef-octave-change>1</clef-octave-change></clef>";
    };
  }

  private void transpose(boolean first) {
    int octaves = instrument.octaves();
    int chromatic = one(3) ? random.nextInt(5) - 2 : 0;
    if (octaves == 0 && chromatic == 0 && (first || one(2))) {
      transposed = first ? 0 : transposed;
      return;
    }
    transposed = chromatic + 12 * octaves;
    boolean letters = one(2);
    out.append("<transpose>");
    if (letters) {
      out.append("<diatonic>" + Integer.signum(chromatic) + "</diatonic>");
    }
    out.append("<chromatic>" + chromatic + "</chromatic>");
    if (octaves != 0) {
      out.append("<octave-change>" + octaves + "</octave-change>");
    }
    out.append("</transpose>");
  }

  /** A duration in divisions; a decimal number if a division is longer. */
  private String duration(int units) {
    double exact = (double) units * divisions / ExpectedNotes.UNIT;
    return exact == Math.rint(exact) ? String.valueOf((long) exact) : String.valueOf(exact);
  }

  private Tied voice(int voice, int staves, int from, int to, Tied before, boolean goesOn) {
    Tied tied = before;
    int here = from;
    while (here < to) {
      if (one(4)) {
        between();
      }
      Object[] length = LENGTHS[random.nextInt(LENGTHS.length)];
      int units = (int) length[0];
      boolean triplet = length[2].equals(3);
      if ((triplet && divisions % 24 != 0) || here + (triplet ? 24 : units) > to) {
        units = Math.min(to - here, one(2) ? 6 : 3);
        length = new Object[] {units, units == 6 ? "16th" : "32nd", 0};
        triplet = false;
      }
      for (int i = triplet ? 3 : 1; i > 0; i--) {
        boolean last = here + units >= to;
        tied = event(voice, staves, here, length, tied, !last || goesOn);
        here += units;
      }
    }
    return tied;
  }

  /** What stands between notes. */
  private void between() {
    out.append(
            switch (random.nextInt(9)) {
              case 0 -> schema.element("harmony", "harmony");
              case 1 -> schema.element("figured-bass", "figured-bass");
              case 2 -> schema.element("sound", "sound");
              case 3 -> schema.element("listening", "listening");
              case 4 -> schema.element("grouping", "grouping");
              case 5 -> schema.element("bookmark", "bookmark");
              default -> schema.element("direction", "direction");
            })
        .append('\n');
    if (one(8)) {
      out.append("<attributes>");
      if (one(2)) {
        divisions = Integer.parseInt(DIVISIONS[random.nextInt(2)]);
        out.append("<divisions>" + divisions + "</divisions>");
      }
      out.append(clef()).append("</attributes>\n");
    }
  }

  private Tied event(
      int voice, int staves, int here, Object[] length, Tied before, boolean mayTie) {
    int units = (int) length[0];
    int kind = before == null ? random.nextInt(40) : 39;
    if (kind < 4) {
      note(voice, staves, "<rest/>", "", units, length, false, false, "");
      return null;
    }
    if (kind == 4) {
      note(voice, staves, "<unpitched/>", "", units, length, false, false, "");
      return null;
    }
    if (kind == 5) {
      note(
          voice,
          staves,
          PartInstrument.pitch(instrument.any(random)),
          "<cue/>",
          units,
          length,
          false,
          false,
          "");
      return null;
    }
    if (kind == 6) {
      note(
          voice,
          staves,
          PartInstrument.pitch(instrument.any(random)),
          "",
          units,
          length,
          false,
          false,
          " print-object=\"no\"");
      return null;
    }
    if (kind < 10) {
      grace(voice, staves, here);
    }
    List<Integer> pitches = before == null ? instrument.chord(random) : before.pitches();
    boolean tie = mayTie && one(7);
    List<Integer> first = new ArrayList<>();
    for (int i = 0; i < pitches.size(); i++) {
      boolean loose =
          note(
              voice,
              staves,
              (i > 0 ? "<chord/>" : "") + PartInstrument.pitch(pitches.get(i)),
              "",
              units,
              length,
              before != null,
              tie,
              "");
      if (loose) {
        expected.loose(start + here);
      }
      if (before == null) {
        first.add(expected.add(voice, start + here, units, pitches.get(i), transposed));
      } else {
        int note = before.first().get(i);
        first.add(note);
        expected.tie(note, start + here, units);
      }
    }
    return tie ? new Tied(start + here, pitches, first) : null;
  }

  private void grace(int voice, int staves, int here) {
    int pitch = instrument.any(random);
    boolean loose =
        note(
            voice,
            staves,
            PartInstrument.pitch(pitch),
            one(2) ? "<grace slash=\"yes\"/>" : "<grace/>",
            0,
            new Object[] {0, "eighth", 0},
            false,
            false,
            "");
    expected.add(voice, start + here, 0, pitch, transposed);
    if (loose) {
      expected.loose(start + here);
    }
  }

  /**
   * Writes a note with anything that may stand at it. Returns whether it has to do with harmonics.
   */
  private boolean note(
      int voice,
      int staves,
      String full,
      String before,
      int units,
      Object[] length,
      boolean stop,
      boolean go,
      String attributes) {
    StringBuilder note = new StringBuilder("<note" + attributes + ">");
    boolean grace = before.startsWith("<grace");
    note.append(before).append(full);
    if (!grace) {
      note.append("<duration>" + duration(units) + "</duration>");
    }
    // A tie is written as what sounds, what is printed, or both.
    int form = random.nextInt(6);
    String stopped = stop ? "<X type=\"stop\"/>" : "";
    String ties = stopped + (go ? "<X type=\"start\"/>" : "");
    note.append(form == 0 ? "" : ties.replace("X", "tie"));
    note.append(maybe(12, "footnote", "formatted-text"));
    note.append("<voice>" + voice + "</voice>");
    note.append("<type>" + length[1] + "</type>");
    note.append(length[2].equals(1) ? "<dot/>" : "");
    note.append(maybe(8, "accidental", "accidental"));
    if (length[2].equals(3)) {
      note.append(
          "<time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>");
    }
    note.append(maybe(5, "stem", "stem"));
    String head = maybe(20, "notehead", "notehead");
    note.append(head).append(maybe(20, "notehead-text", "notehead-text"));
    if (staves > 1) {
      note.append("<staff>" + (voice > 1 ? 2 : 1) + "</staff>");
    }
    note.append(maybe(6, "beam", "beam"));
    StringBuilder marks = new StringBuilder();
    if (form == 0 || form == 1 || form > 2) {
      String tied = ties.replace("X", "tied");
      marks.append(tied.isEmpty() ? "" : "<notations>" + tied + "</notations>");
    }
    marks.append(maybe(3, "notations", "notations"));
    marks.append(maybe(12, "notations", "notations"));
    note.append(marks);
    note.append(maybe(30, "lyric", "lyric"));
    note.append(maybe(20, "play", "play"));
    note.append(maybe(20, "listen", "listen"));
    out.append(note).append("</note>\n");
    return head.contains("diamond") || head.contains("Diamond") || marks.indexOf("<harmonic") >= 0;
  }
}
