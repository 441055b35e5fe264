package fingering.cli;

import com.google.common.collect.ImmutableList;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Pages to look at: the demo, and music of many kinds in each of the four clefs. */
public enum Pages {
  /** The demo with three plans. */
  DEMO(ImmutableList.of("compare", Session.DEMO.toString(), "--with-second")),
  /** Four measures in the treble clef, with double stops, triplets, ornaments and long words. */
  TREBLE(
      tune(
          "violin",
          "K:A clef=treble\\nQ:1/4=120\\n\"^molto espressivo e sempre piano\"!pp!A2 (3Bcd e2 [Ae]2|"
              + "!ff!{b}a4- a2 [ec']2|[G,D]4 !p!(e/f/g/a/ b/a/g/f/)|!trill!e6 z2|]")),
  /** Tenor and bass clef of a cello, with many flats and a change of key. */
  TENOR(
      tune(
          "cello",
          "M:3/4\\nL:1/8\\nK:Db clef=bass\\nD,2 F,2 A,2|D2 z2 [D,A,]2|[K:E clef=tenor]"
              + "(GA Bc de)|f4 \"^pizz.\"e2|[K:C clef=bass]!sfz!C,2 \"^arco\"G,2 C2|E6|]")),
  /** Sixteen measures of running thirty-seconds in the alto clef. */
  ALTO(tune("viola", "M:4/4\\nL:1/32\\nK:Gm clef=alto\\n" + running(16) + "|]")),
  /** Tremolos, endings, a cue, changes of key and clef within measures. */
  NOTATION(
      ImmutableList.of(
          "compare",
          Path.of("src", "test", "resources", "fingering", "page", "notation.musicxml")
              .toString())),
  /** Low notes of the double bass, and one plan alone. */
  BASS(
      ImmutableList.of(
          "plan",
          "--instrument",
          "bass",
          "--abc",
          "M:6/8\\nL:1/8\\nK:D clef=bass\\nD,,2 E,, F,,2 G,,|A,,3 D,3|(D,E,F,) G,2 A,|D6|]"));

  private final ImmutableList<String> command;

  Pages(ImmutableList<String> command) {
    this.command = command;
  }

  private static ImmutableList<String> tune(String instrument, String abc) {
    return ImmutableList.of("compare", "--instrument", instrument, "--abc", abc);
  }

  /** Measures of running notes, invented for this. */
  private static String running(int measures) {
    String[] groups = {"DEFG AGFE ", "GABA GFED ", "Bcde dcBA ", "defe dcBA "};
    return IntStream.range(0, measures)
        .mapToObj(
            m ->
                IntStream.range(0, 8)
                    .mapToObj(g -> groups[(m * 3 + g) % groups.length])
                    .collect(Collectors.joining()))
        .collect(Collectors.joining("|"));
  }

  /** The HTML page that the command prints. */
  public String html() {
    return printed("html");
  }

  /** The strip alone, as SVG that the command prints. */
  public String svg() {
    return printed("svg");
  }

  private String printed(String format) {
    Object[] words =
        Stream.concat(command.stream(), Stream.of("--format", format)).toArray(Object[]::new);
    return Session.of(words).succeeded().out();
  }

  /** The page as a file. */
  public Path in(Path folder) throws IOException {
    Path file = folder.resolve(name().toLowerCase(Locale.ROOT) + ".html");
    return Files.exists(file) ? file : Files.writeString(file, html());
  }

  /** The page of the practice of the demo, with a journal of some days, as a file. */
  public static Path practice(Path folder) throws IOException {
    Path file = folder.resolve("practice.html");
    if (!Files.exists(file)) {
      Path journal =
          Files.writeString(
              folder.resolve("some.journal"),
              """
              2026-11-21 18:30 | quarter=63 | all | read through
              2026-11-25 18:50 | quarter=76 | 13-14 | open strings helped
              2026-11-30 | a line that is none
              2026-12-02 18:30 | - | all | tired
              2026-12-03 18:30 | half=40 | all | counted in halves
              """);
      Files.writeString(file, practised("--journal", journal).succeeded().out());
    }
    return file;
  }

  /** The practice of the demo as a page, from 4 to 12 December 2026. */
  static Session practised(Object... more) {
    return practisedAsText(Stream.concat(Stream.of("--format", "html"), Stream.of(more)).toArray());
  }

  /** The same practice as text. */
  static Session practisedAsText(Object... more) {
    return Session.of(
        Stream.concat(
                Stream.of(
                    "practice",
                    Session.DEMO,
                    "--choose",
                    "third",
                    "--to",
                    "quarter=96",
                    "--by",
                    "2026-12-12",
                    "--today",
                    "2026-12-04",
                    "--rest-days",
                    "sun"),
                Stream.of(more))
            .toArray());
  }
}
