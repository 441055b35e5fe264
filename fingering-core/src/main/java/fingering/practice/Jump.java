package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Passage;
import fingering.music.print.JumpMark.Kind;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedPart;
import java.util.Optional;

/**
 * A da capo or dal segno. Measures are named by their index in the part.
 *
 * @param after the measure after which to go back
 * @param target the measure to go back to
 * @param until the measure after which the music then ends, or goes on at the coda; empty if it is
 *     played on
 * @param coda the first measure of the coda; empty if there is none to go on at
 */
record Jump(int after, int target, Optional<Integer> until, Optional<Integer> coda) {

  /** The jumps of a passage, in order; those whose target is not in the passage are left out. */
  static ImmutableList<Jump> all(Passage passage, PrintedPart printed) {
    ImmutableList.Builder<Jump> jumps = ImmutableList.builder();
    JumpCues cues = JumpCues.of(printed);
    int from = Integer.MIN_VALUE;
    for (JumpCues.Cue cue : cues.jumps()) {
      int start = from;
      Optional<Integer> target =
          cue.kind() == Kind.DAL_SEGNO
              ? cues.segno(cue)
              : beginning(passage, printed, cues.fine(start, cue.measure()).orElse(cue.measure()));
      if (cue.measure() > from && target.isPresent() && target.get() <= cue.measure()) {
        Jump jump = jump(cue, target.get(), cues);
        jumps.add(jump);
        from = jump.coda().orElse(jump.after());
      }
    }
    return jumps.build();
  }

  private static Jump jump(JumpCues.Cue cue, int target, JumpCues cues) {
    int after = cue.measure();
    Optional<JumpCues.Cue> leave = cues.toCoda(target, after);
    Optional<Integer> coda = cues.coda(after);
    return leave.isPresent() && coda.isPresent() && (cue.coda() || leave.get().coda())
        ? new Jump(after, target, leave.map(JumpCues.Cue::measure), coda)
        : new Jump(after, target, cues.fine(target - 1, after), Optional.empty());
  }

  /**
   * The first measure of the movement that has a measure; empty if it is not in the passage. A
   * final bar line before it ends the movement before.
   */
  private static Optional<Integer> beginning(Passage passage, PrintedPart printed, int measure) {
    Optional<Integer> closing =
        printed.measures().stream()
            .filter(one -> one.index() < measure && one.end() == Bar.FINAL)
            .map(PrintedMeasure::index)
            .reduce((one, later) -> later);
    int first = passage.measures().get(0).index();
    return closing
        .map(index -> index + 1)
        .or(() -> first == 0 ? Optional.of(first) : Optional.empty());
  }
}
