package fingering.cli.help;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Streams;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;

/** Describes the value of an option, with an example, for messages about missing values. */
final class OptionValue {
  /** Descriptions by the name of the option or by its label in the help. */
  private static final ImmutableMap<String, Description> DESCRIPTIONS =
      ImmutableMap.<String, Description>builder()
          .put("--briefs", new Description("the name of a file of briefs", "plans.yaml"))
          .put("--brief", new Description("the name of a file", "audition.yaml"))
          .put("--calendar", new Description("the name of a new file", "practice.ics"))
          .put("--hand", new Description("a size or a reach", "small"))
          .put("--journal", new Description("the name of a journal", "my.journal"))
          .put("--output", new Description("the name of a new file", "plans.html"))
          .put("--start", new Description("the name of a file of weights", "my-weights.yaml"))
          .put("--weights", new Description("the name of a file of weights", "my-weights.yaml"))
          .put("DATE", new Description("a date", "2026-12-12"))
          .put("DAYS", new Description("days of the week", "sat,sun"))
          .put("FILE", new Description("the name of a file", "imke.yaml"))
          .put("FILE@MEASURES", new Description("a plan saved as JSON", "plan.json@9-16"))
          .put("FOLDER", new Description("the name of a folder", "exercises"))
          .put("FORCES", new Description("who plays it", "section"))
          .put("INSTRUMENT", new Description("an instrument", "viola"))
          .put("KEY", new Description("a key", "D-major"))
          .put("KIND=TIMES", new Description("shifts and how many", "up=2"))
          .put("LANGUAGE", new Description("a language", "de"))
          .put("LEVEL", new Description("the name of a level", "beginner"))
          .put("M.BEAT", new Description("measure and beat", "17.2"))
          .put("M.BEAT=STRING/FINGER", new Description("a note and its fingering", "12.3=III/4"))
          .put("MARK", new Description("a tempo", "quarter=96"))
          .put("MARKED", new Description("the name of a new file", "marked.musicxml"))
          .put("MEASURES", new Description("measures as printed", "17-18"))
          .put("N", new Description("a number", "2"))
          .put("NAME", new Description("a name", "intermediate"))
          .put("NAME=DEMANDS", new Description("a name and demands", "'high=show 3=8'"))
          .put("NAME=NUMBER", new Description("a name and a number", "measures=20000"))
          .put("NAME|FILE", new Description("a name or a file", "five-string"))
          .put("NUMBER", new Description("a number", "30"))
          .put("PART", new Description("the number or the name of a part", "Viola"))
          .put("PLAN", new Description("a plan", "third"))
          .put("POSITION", new Description("a position", "3"))
          .put("POSITION=MEASURES", new Description("a position and how many measures", "3=2"))
          .put("POSITION=NOTES", new Description("a position and how many notes", "3=8"))
          .put("POSITION@MEASURES", new Description("a position and measures", "3@17-20"))
          .put("POSITIONS", new Description("positions", "1,half"))
          .put("PRESET", new Description("a preset", "beginner"))
          .put("RANGE", new Description("measures as printed", "9-24"))
          .put("SEMITONES", new Description("a number of semitones", "5"))
          .put("SIZE", new Description("a size", "3/4"))
          .put("START", new Description("an octave or a pitch", "D4"))
          .put("STRING", new Description("a string", "C"))
          .put("STRINGS", new Description("strings", "III,IV@9-16"))
          .put("TEXT", new Description("words in quotes", "'open strings helped'"))
          .put("THING", new Description("something to show", "fourth-finger"))
          .put("THINGS", new Description("things to avoid", "open-strings"))
          .put("TIME", new Description("a time", "2026-11-21T18:30"))
          .put("TUNE", new Description("a tune", "'K:G clef=alto\\nD2 GA B4|'"))
          .put("VOICE", new Description("the name of a voice", "1"))
          .put("X", new Description("the number of a tune", "3"))
          .buildOrThrow();

  private OptionValue() {}

  private record Description(String what, String example) {}

  /** Describes what to type after the option: {@code a date after it, such as 2026-12-12}. */
  static String phrase(OptionSpec option) {
    return description(option)
        .map(value -> value.what() + " after it, such as " + value.example())
        .orElseGet(() -> "a " + option.paramLabel() + " after it");
  }

  /** An example of the option with a value: {@code --by 2026-12-12}. */
  static String example(OptionSpec option) {
    return option.longestName()
        + " "
        + description(option).map(Description::example).orElseGet(option::paramLabel);
  }

  /** The description for the option, else for its label, else its list of constants. */
  private static Optional<Description> description(OptionSpec option) {
    return Optional.ofNullable(DESCRIPTIONS.get(option.longestName()))
        .or(() -> Optional.ofNullable(DESCRIPTIONS.get(option.paramLabel())))
        .or(() -> constants(option));
  }

  private static Optional<Description> constants(OptionSpec option) {
    return Optional.ofNullable(option.completionCandidates())
        .map(
            all ->
                Streams.stream(all)
                    .map(each -> Ascii.toLowerCase(each).replace('_', '-'))
                    .collect(ImmutableList.toImmutableList()))
        .filter(all -> !all.isEmpty())
        .map(all -> new Description("one of " + String.join(", ", all), all.get(0)));
  }
}
