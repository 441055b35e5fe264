package fingering.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Handouts to look at. */
public enum Handouts {
  /** The demo, with a ladder of two weeks. */
  DEMO,
  /** Eight measures, with a plan that is kept open and a ladder to fill in. */
  SHORT,
  /** Forty measures of sixteenths, with a ladder of five weeks. */
  DENSE;

  /** Measures of running sixteenths for the viola, invented for this. */
  static String sixteenths(int measures) {
    String[] groups = {
      "DEFG AGFE ", "GABA GFED ", "Bcde dcBA ", "defe dcBA ", "(CDEF) G2 A2 ", "B4 A2 G2 "
    };
    return "T:Rain\nM:4/4\nL:1/16\nQ:1/4=88\nK:Gm clef=alto\n"
        + IntStream.range(0, measures)
            .mapToObj(m -> groups[m * 3 % 6] + groups[(m + m / 5) % 6])
            .collect(Collectors.joining("|\n"))
        + "|]\n";
  }

  private Object[] words() {
    return switch (this) {
      case DEMO ->
          new Object[] {
            Session.DEMO,
            "--choose",
            "partly",
            "--from",
            "quarter=60",
            "--to",
            "quarter=96",
            "--by",
            "2026-12-12",
            "--today",
            "2026-11-30"
          };
      case SHORT ->
          new Object[] {Session.DEMO, "--measures", "1-8", "--choose", "third", "--keep-open"};
      case DENSE ->
          new Object[] {
            "--abc",
            sixteenths(40),
            "--instrument",
            "viola",
            "--from",
            "60",
            "--to",
            "88",
            "--by",
            "2026-12-30",
            "--today",
            "2026-11-25",
            "--preset",
            "beginner",
            "--rest-days",
            "sun"
          };
    };
  }

  /** The page that the command prints. */
  Session on(String paper) {
    return Session.of(
        Stream.of(Stream.of("handout"), Stream.of(words()), Stream.of("--paper", paper))
            .flatMap(each -> each)
            .toArray());
  }

  /** The page as a file, for a size of paper. */
  public Path in(Path folder, String paper) throws IOException {
    Path file = folder.resolve("handout-" + name().toLowerCase(Locale.ROOT) + paper + ".html");
    return Files.exists(file) ? file : Files.writeString(file, on(paper).succeeded().out());
  }
}
