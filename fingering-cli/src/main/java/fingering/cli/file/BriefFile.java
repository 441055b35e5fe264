package fingering.cli.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.demand.Demand;
import fingering.demand.DemandParser;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.tables.FingeringException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * Briefs from a file in YAML, or in JSON, which is YAML too: one brief, or a list under {@code
 * plans}. A brief has a name and the keys of {@link DemandParser}, each with one value or a list.
 */
public final class BriefFile {
  private static final Splitter PARTS = Splitter.on(';').trimResults().omitEmptyStrings();

  private final String file;
  private final DemandParser demands;
  private final JsonParser parser;

  private BriefFile(String file, DemandParser demands, JsonParser parser) {
    this.file = file;
    this.demands = demands;
    this.parser = parser;
  }

  /**
   * Every brief of a file.
   *
   * @throws FingeringException if the file is none; the message is one sentence and names file and
   *     line
   */
  public static ImmutableList<Brief> read(Path file, Passage passage) {
    // A plan to keep is looked for beside the brief that names it.
    DemandParser demands = PlanFile.demands(passage, file.toAbsolutePath().getParent());
    return KeyedFile.read(
        file, "briefs", parser -> new BriefFile(file.toString(), demands, parser).file());
  }

  /**
   * The only brief of a file.
   *
   * @throws FingeringException if the file is none, or has several
   */
  public static Brief readOne(Path file, Passage passage) {
    ImmutableList<Brief> all = read(file, passage);
    if (all.size() != 1) {
      throw new FingeringException(
          file + " has " + all.size() + " briefs; 'compare --briefs' shows them side by side.");
    }
    return all.get(0);
  }

  /**
   * A brief as typed: {@code up early=show 3=8; avoid open-strings}.
   *
   * @throws FingeringException if the text is none
   */
  public static Brief typed(String text, Passage passage) {
    List<String> halves = Splitter.on('=').limit(2).trimResults().splitToList(text);
    if (halves.size() < 2 || halves.get(0).isEmpty()) {
      throw new FingeringException(
          "'"
              + text
              + "' is no plan to compare; write a name and what the plan must meet:"
              + " 'up early=show 3=8; avoid open-strings'.");
    }
    Brief.Builder brief = Brief.builder(halves.get(0));
    DemandParser demands = PlanFile.demands(passage, Path.of(""));
    for (String part : PARTS.split(halves.get(1))) {
      List<String> words = Splitter.on(' ').limit(2).trimResults().splitToList(part);
      String value = words.size() == 2 ? words.get(1) : "";
      demands.read(words.get(0), value).forEach(brief::addDemand);
    }
    return brief.build();
  }

  private ImmutableList<Brief> file() throws IOException {
    if (parser.nextToken() != JsonToken.START_OBJECT) {
      throw wrong("a file of briefs has keys and values: name: ..., show: ...");
    }
    ImmutableList.Builder<Brief> all = ImmutableList.builder();
    Brief.Builder alone = Brief.builder(bare());
    boolean any = false;
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      if (key.equals("plans")) {
        parser.nextToken();
        plans(all);
      } else {
        any = true;
        values(key, alone);
      }
    }
    ImmutableList<Brief> listed = all.build();
    if (any && !listed.isEmpty()) {
      throw wrong("a brief stands either by itself or in the list 'plans', not both");
    }
    return any ? ImmutableList.of(alone.build()) : listed;
  }

  private String bare() {
    String name = Path.of(file).getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private void plans(ImmutableList.Builder<Brief> all) throws IOException {
    if (parser.currentToken() != JsonToken.START_ARRAY) {
      throw wrong("'plans' is a list of briefs, each with '- name: ...'");
    }
    int number = 0;
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      if (parser.currentToken() != JsonToken.START_OBJECT) {
        throw wrong("a brief has keys and values: name: ..., show: ...");
      }
      number++;
      Brief.Builder brief = Brief.builder("plan " + number);
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        values(parser.currentName(), brief);
      }
      all.add(brief.build());
    }
    if (number == 0) {
      throw wrong("'plans' lists no brief");
    }
  }

  private void values(String key, Brief.Builder brief) throws IOException {
    KeyedFile.values(parser, key, value -> single(key, value, brief));
  }

  private void single(String key, String value, Brief.Builder brief) {
    if (key.equals("name")) {
      brief.withName(value);
      return;
    }
    try {
      for (Demand demand : demands.read(key, value)) {
        brief.addDemand(demand);
      }
    } catch (FingeringException e) {
      throw wrong(e.getMessage());
    }
  }

  private WrongLineException wrong(String what) {
    return KeyedFile.wrong(parser, what);
  }
}
