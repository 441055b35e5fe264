package fingering.cli.file;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import fingering.demand.DemandKeys;
import fingering.demand.DemandParser;
import fingering.lesson.LessonPlan;
import fingering.music.Passage;
import fingering.plan.Brief;
import fingering.tables.FingeringException;
import fingering.userfile.KnownKeys;
import fingering.userfile.UserFields;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Reads briefs, from a file or as typed. A file has one brief, or a list of briefs under {@code
 * plans}. A brief has a name and the keys of {@link DemandParser}, each with one value or a list.
 */
public final class BriefFile {
  private static final KnownKeys BRIEF = KnownKeys.of("a brief", "name: low").and(DemandKeys.ALL);
  private static final KnownKeys FILE =
      BRIEF.in("a file of briefs").and(KnownKeys.of("", "plans: [{name: low, allow: 1}]"));

  private static final Splitter PARTS = Splitter.on(';').trimResults().omitEmptyStrings();

  private BriefFile() {}

  /**
   * Reads every brief of a file.
   *
   * @throws FingeringException if the file cannot be read; the message is one sentence with file
   *     and line
   */
  public static ImmutableList<Brief> read(Path file, Passage passage) {
    UserFields fields = UserFields.read(file, FILE);
    // A plan to keep is looked up in the folder of the brief that names it.
    DemandParser demands = PlanFile.demands(passage, file.toAbsolutePath().resolveSibling(""));
    Optional<ImmutableList<UserFields>> plans = fields.parts("plans", BRIEF);
    if (plans.isEmpty()) {
      return ImmutableList.of(brief(fields, bareName(file), demands));
    }
    if (fields.keys().size() > 1) {
      throw fields.refusal(
          "a file has one brief, or several in the list 'plans', not both; move the first into the"
              + " list");
    }
    ImmutableList.Builder<Brief> briefs = ImmutableList.builder();
    int number = 0;
    for (UserFields plan : plans.get()) {
      number++;
      briefs.add(brief(plan, "plan " + number, demands));
    }
    return briefs.build();
  }

  private static Brief brief(UserFields fields, String defaultName, DemandParser demands) {
    Brief.Builder brief = Brief.builder(fields.text("name").orElse(defaultName));
    for (String key : fields.keys()) {
      if (!key.equals("name")) {
        fields
            .values(key, value -> demands.read(key, value))
            .ifPresent(all -> all.forEach(each -> each.forEach(brief::addDemand)));
      }
    }
    return brief.build();
  }

  private static String bareName(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /**
   * Reads the only brief of a file.
   *
   * @throws FingeringException if the file cannot be read, or has several briefs
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
   * Reads a brief as typed: {@code up early=show 3=8; avoid open-strings}.
   *
   * @throws FingeringException if the text is not a brief
   */
  public static Brief typed(String text, Passage passage) {
    Brief.Builder brief = Brief.builder(halves(text).get(0));
    DemandParser demands = PlanFile.demands(passage, Path.of(""));
    typedDemands(text).forEach((key, value) -> demands.read(key, value).forEach(brief::addDemand));
    return brief.build();
  }

  /**
   * A brief as typed, as a plan of a lesson.
   *
   * @throws FingeringException if the text is not a brief, or asks for nothing
   */
  public static LessonPlan typedPlan(String text) {
    return new LessonPlan(halves(text).get(0), Optional.empty(), typedDemands(text));
  }

  private static ImmutableListMultimap<String, String> typedDemands(String text) {
    ImmutableListMultimap.Builder<String, String> demands = ImmutableListMultimap.builder();
    for (String part : PARTS.split(halves(text).get(1))) {
      List<String> words = Splitter.on(' ').limit(2).trimResults().splitToList(part);
      demands.put(words.get(0), words.size() == 2 ? words.get(1) : "");
    }
    return demands.build();
  }

  /** The name, and the demands. */
  private static List<String> halves(String text) {
    List<String> halves = Splitter.on('=').limit(2).trimResults().splitToList(text);
    if (halves.size() < 2 || halves.get(0).isEmpty()) {
      throw new FingeringException(
          "'"
              + text
              + "' is not a plan to compare; write a name and what the plan must meet:"
              + " 'up early=show 3=8; avoid open-strings'.");
    }
    return halves;
  }
}
