package fingering.cli.audition;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.cli.audition.AuditionSheet.Entry;
import fingering.cli.audition.AuditionSheet.Line;
import fingering.cli.file.KeyedFile;
import fingering.cli.file.WrongLineException;
import fingering.demand.DemandParser;
import fingering.demand.Skill;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Reads an audition sheet in YAML, or in JSON, which is YAML too. */
public final class AuditionSheetFile {
  /** Stopped notes of a position where the sheet does not say how many. */
  static final int USUAL_NOTES = 8;

  private static final Splitter LIST = Splitter.on(',').trimResults().omitEmptyStrings();

  private static final ImmutableSet<String> SKILLS =
      ImmutableSet.of("positions", "show-stay", "show-shift", "show-technique");
  private static final ImmutableSet<String> SINGLE =
      ImmutableSet.of("title", "instrument", "counted", "shown-in");
  private static final ImmutableSet<String> SCALE =
      ImmutableSet.of("scale", "octaves", "from", "pattern", "slur", "even", "tempo");
  private static final ImmutableSet<String> EXCERPT =
      ImmutableSet.of("file", "abc", "tune", "name", "part", "voice", "measures", "tempo");

  private final String file;
  private final JsonParser parser;
  private final List<Line> head = new ArrayList<>();
  private int number;
  private final ImmutableList.Builder<Entry> entries = ImmutableList.builder();

  private AuditionSheetFile(String file, JsonParser parser) {
    this.file = file;
    this.parser = parser;
  }

  /**
   * The sheet of a file.
   *
   * @throws FingeringException if the file is none; the message is one sentence and names file and
   *     line
   */
  public static AuditionSheet read(Path file) {
    return KeyedFile.read(
        file,
        "an audition sheet",
        parser -> new AuditionSheetFile(file.toString(), parser).sheet());
  }

  private AuditionSheet sheet() throws IOException {
    if (parser.nextToken() != JsonToken.START_OBJECT) {
      throw wrong("a sheet has keys and values: title: ..., instrument: ..., excerpts: ...");
    }
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      switch (key) {
        case "scales" -> entries(key, true);
        case "excerpts" -> entries(key, false);
        default -> values(known(key, "a sheet", SINGLE, SKILLS), head);
      }
    }
    ImmutableList<Entry> all = entries.build();
    if (all.isEmpty()) {
      throw new WrongLineException(1, "the sheet lists nothing to play; add scales or excerpts.");
    }
    Instrument instrument =
        only("instrument")
            .map(line -> at(line, () -> Instruments.standard().named(line.value())))
            .orElseThrow(
                () ->
                    new WrongLineException(
                        1, "the sheet names no instrument; add one, instrument: viola."));
    return new AuditionSheet(
        file,
        only("title").map(Line::value).orElse("Audition"),
        instrument,
        skills(instrument),
        chosen("counted", "together", "in-one-piece"),
        chosen("shown-in", "all", "excerpts"),
        all);
  }

  private void entries(String key, boolean scale) throws IOException {
    if (parser.nextToken() != JsonToken.START_ARRAY) {
      throw wrong("'" + key + "' is a list, each with '- " + (scale ? "scale" : "file") + ": ...'");
    }
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      int line = line();
      if (parser.currentToken() != JsonToken.START_OBJECT) {
        throw wrong(
            scale
                ? "a scale has keys and values: scale: D major, octaves: 2"
                : "an excerpt has keys and values: file: part.musicxml, measures: 9-24");
      }
      List<Line> lines = new ArrayList<>();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        values(
            known(
                parser.currentName(),
                scale ? "a scale" : "an excerpt",
                scale ? SCALE : EXCERPT,
                ImmutableSet.copyOf(DemandParser.KEYS)),
            lines);
      }
      entries.add(new Entry(++number, scale, line, ImmutableList.copyOf(lines)));
    }
  }

  private String known(
      String key, String what, ImmutableSet<String> some, ImmutableSet<String> others) {
    if (some.contains(key) || others.contains(key)) {
      return key;
    }
    throw wrong(
        "'%s' is no key of %s; choose %s"
            .formatted(
                key,
                what,
                String.join(", ", Stream.concat(some.stream(), others.stream()).toList())));
  }

  private void values(String key, List<Line> lines) throws IOException {
    KeyedFile.values(parser, key, value -> lines.add(single(key, value)));
  }

  private Line single(String key, String value) {
    if (value.isBlank()) {
      throw KeyedFile.oneOrMore(parser, key);
    }
    return new Line(key, value, line());
  }

  private Optional<Line> only(String key) {
    return new Entry(0, false, 1, ImmutableList.copyOf(head)).only(key);
  }

  private boolean chosen(String key, String usual, String other) {
    Optional<Line> line = only(key);
    if (line.isEmpty() || line.get().value().equals(usual)) {
      return false;
    }
    if (line.get().value().equals(other)) {
      return true;
    }
    throw new WrongLineException(
        line.get().line(), "'%s' is %s or %s.".formatted(key, usual, other));
  }

  private ImmutableList<Skill> skills(Instrument instrument) {
    DemandParser text = DemandParser.of(instrument);
    ImmutableList.Builder<Skill> skills = ImmutableList.builder();
    for (Line line : head) {
      if (SKILLS.contains(line.key())) {
        for (String one : LIST.split(line.value())) {
          skills.add(at(line, () -> skill(line.key(), one, text)));
        }
      }
    }
    return skills.build();
  }

  private static Skill skill(String key, String value, DemandParser text) {
    boolean positions = key.equals("positions");
    String counted = positions && value.indexOf('=') < 0 ? value + "=" + USUAL_NOTES : value;
    return (Skill) text.read(positions ? "show" : key, counted).get(0);
  }

  private static <T> T at(Line line, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (FingeringException e) {
      throw new WrongLineException(line.line(), e.getMessage());
    }
  }

  private int line() {
    return KeyedFile.line(parser);
  }

  private WrongLineException wrong(String what) {
    return KeyedFile.wrong(parser, what);
  }
}
