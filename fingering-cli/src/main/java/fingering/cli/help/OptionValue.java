package fingering.cli.help;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Streams;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;

/** What is typed after an option, by the word that stands for it in the help, with an example. */
final class OptionValue {
  private static final ImmutableMap<String, Words> WORDS =
      ImmutableMap.<String, Words>builder()
          .put("--briefs", new Words("the name of a file of briefs", "plans.yaml"))
          .put("--brief", new Words("the name of a file", "audition.yaml"))
          .put("--calendar", new Words("the name of a new file", "practice.ics"))
          .put("--hand", new Words("a size or a reach", "small"))
          .put("--journal", new Words("the name of a journal", "my.journal"))
          .put("--output", new Words("the name of a new file", "plans.html"))
          .put("--start", new Words("the name of a file of weights", "my-weights.yaml"))
          .put("--weights", new Words("the name of a file of weights", "my-weights.yaml"))
          .put("DATE", new Words("a date", "2026-12-12"))
          .put("DAYS", new Words("days of the week", "sat,sun"))
          .put("FILE", new Words("the name of a file", "imke.yaml"))
          .put("FILE@MEASURES", new Words("a plan kept as JSON", "plan.json@9-16"))
          .put("FOLDER", new Words("the name of a folder", "exercises"))
          .put("FORCES", new Words("who plays it", "section"))
          .put("INSTRUMENT", new Words("an instrument", "viola"))
          .put("KEY", new Words("a key", "D-major"))
          .put("KIND=TIMES", new Words("shifts and how many", "up=2"))
          .put("LANGUAGE", new Words("a language", "de"))
          .put("LEVEL", new Words("the name of a level", "beginner"))
          .put("M.BEAT", new Words("measure and beat", "17.2"))
          .put("M.BEAT=STRING/FINGER", new Words("a note and how it is taken", "12.3=III/4"))
          .put("MARK", new Words("a tempo", "quarter=96"))
          .put("MARKED", new Words("the name of a new file", "marked.musicxml"))
          .put("MEASURES", new Words("measures as printed", "17-18"))
          .put("N", new Words("a number", "2"))
          .put("NAME", new Words("a name", "intermediate"))
          .put("NAME=DEMANDS", new Words("a name and demands", "'high=show 3=8'"))
          .put("NAME=NUMBER", new Words("a name and a number", "measures=20000"))
          .put("NAME|FILE", new Words("the name or the file of a tuning", "five-string"))
          .put("NUMBER", new Words("a number", "30"))
          .put("PART", new Words("the number or the name of a part", "Viola"))
          .put("PLAN", new Words("a plan", "third"))
          .put("POSITION", new Words("a position", "3"))
          .put("POSITION=MEASURES", new Words("a position and how many measures", "3=2"))
          .put("POSITION=NOTES", new Words("a position and how many notes", "3=8"))
          .put("POSITION@MEASURES", new Words("a position and measures", "3@17-20"))
          .put("POSITIONS", new Words("positions", "1,half"))
          .put("PRESET", new Words("a preset", "beginner"))
          .put("RANGE", new Words("measures as printed", "9-24"))
          .put("SEMITONES", new Words("a number of semitones", "5"))
          .put("SIZE", new Words("a size", "3/4"))
          .put("START", new Words("an octave or a pitch", "D4"))
          .put("STRING", new Words("a string", "C"))
          .put("STRINGS", new Words("strings", "III,IV@9-16"))
          .put("TEXT", new Words("words between quotes", "'open strings helped'"))
          .put("THING", new Words("something to show", "fourth-finger"))
          .put("THINGS", new Words("what to do without", "open-strings"))
          .put("TIME", new Words("a time", "2026-11-21T18:30"))
          .put("TUNE", new Words("a tune", "'K:G clef=alto\\nD2 GA B4|'"))
          .put("VOICE", new Words("the name of a voice", "1"))
          .put("X", new Words("the number of a tune", "3"))
          .buildOrThrow();

  private OptionValue() {}

  private record Words(String what, String example) {}

  /** What it is: {@code a date, such as 2026-12-12}; for files by what the option does with one. */
  static String told(OptionSpec option) {
    return words(option)
        .map(words -> words.what() + " after it, such as " + words.example())
        .orElseGet(() -> "a " + option.paramLabel() + " after it");
  }

  /** The option as it may be typed: {@code --by 2026-12-12}. */
  static String example(OptionSpec option) {
    return option.longestName()
        + " "
        + words(option).map(Words::example).orElseGet(option::paramLabel);
  }

  /** Those of the option itself, or else those of its label; a constant is its own example. */
  private static Optional<Words> words(OptionSpec option) {
    return Optional.ofNullable(WORDS.get(option.longestName()))
        .or(() -> Optional.ofNullable(WORDS.get(option.paramLabel())))
        .or(() -> constants(option));
  }

  private static Optional<Words> constants(OptionSpec option) {
    return Optional.ofNullable(option.completionCandidates())
        .map(
            all ->
                Streams.stream(all)
                    .map(each -> Ascii.toLowerCase(each).replace('_', '-'))
                    .collect(ImmutableList.toImmutableList()))
        .filter(all -> !all.isEmpty())
        .map(all -> new Words("one of " + String.join(", ", all), all.get(0)));
  }
}
