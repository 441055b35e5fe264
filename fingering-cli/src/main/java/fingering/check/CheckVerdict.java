package fingering.check;

import fingering.playability.CheckLevel;
import fingering.playability.Finding;
import fingering.playability.PartCheck;
import fingering.playability.ScoreCheck;
import fingering.playability.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The result of a check in one sentence that needs no table. */
public final class CheckVerdict {
  /** The number of parts, and of measures in each, that are named. */
  private static final int NAMED = 3;

  private CheckVerdict() {}

  /**
   * The sentence: what cannot be played and where, how much is risky, and the hardest part. {@code
   * Weir: 1 note cannot be played (Viola, m. 12); nothing is risky; difficulty 3 of 10 (Viola).}
   */
  public static String of(CheckedFile file, ScoreCheck check) {
    if (check.parts().isEmpty()) {
      return file.title() + ": no string part was checked.";
    }
    int risky = check.count(Severity.RISKY);
    return Stream.of(
            unplayable(check),
            risky == 0 ? "nothing is risky" : counted(risky, "risky place"),
            hardest(check))
        .collect(Collectors.joining("; ", file.title() + ": ", "."));
  }

  /** The players of a level in words. */
  public static String players(CheckLevel level) {
    return switch (level.name()) {
      case "advanced" -> "professionals";
      case "common-practice" -> "advanced students";
      case "intermediate" -> "students with some years of lessons";
      case "beginner" -> "beginners";
      default -> "your players";
    };
  }

  private static String unplayable(ScoreCheck check) {
    List<Finding> all =
        check.findings().stream()
            .filter(finding -> finding.severity() == Severity.UNPLAYABLE)
            .toList();
    if (all.isEmpty()) {
      return "every note can be played";
    }
    boolean notes = all.stream().allMatch(finding -> finding.notes().size() == 1);
    List<String> where = new ArrayList<>();
    for (PartCheck part : check.parts()) {
      List<String> measures =
          all.stream()
              .filter(finding -> finding.part().equals(part.part()))
              .map(finding -> finding.place().measure())
              .distinct()
              .toList();
      if (!measures.isEmpty()) {
        where.add(part.part().name() + ", m. " + listed(measures, ", "));
      }
    }
    return "%s cannot be played (%s)"
        .formatted(counted(all.size(), notes ? "note" : "place"), listed(where, "; "));
  }

  private static String hardest(ScoreCheck check) {
    return check
        .hardest()
        .map(
            part ->
                "difficulty %d of 10%s (%s)"
                    .formatted(
                        part.difficulty().grade(),
                        check.parts().size() > 1 ? " at most" : "",
                        part.part().name()))
        .orElse("");
  }

  private static String listed(List<String> words, String separator) {
    int more = words.size() - NAMED;
    return String.join(separator, words.subList(0, Math.min(NAMED, words.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }

  private static String counted(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
