package fingering.bench;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.engraving.EngravedSystem;
import fingering.engraving.Engraver;
import fingering.engraving.drawing.Lane;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import fingering.plan.Brief;
import fingering.plan.PlannedNote;
import fingering.plan.Planner;
import fingering.scoring.rules.StandardRules;
import fingering.tables.Position;
import fingering.tables.RomanNumeral;
import java.util.List;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A long viola part drawn as lines of music, with the fingers of a plan. */
@State(Scope.Benchmark)
public class Drawing {
  /** Eight measures with a bit of everything, as in a quartet. */
  private static final String EIGHT =
      """
      !mf!(G2A2) (B>c)d2|!<(!(g/f/e/d/ c/B/A/G/) F2 _E2!<)!|"^pizz."!f!.D.F.A.d [DA]2 z2|"^arco"(g4 ^f2) z2|
      !p!(3(GAB) (3(cde) {/g}f2 e2|!>(!d4- d2 c2!>)!|!accent!G/A/B/c/ d/e/f/g/ a2 g2|!trill!A6 z2|
      """;

  /** Measures of the part, a multiple of eight. */
  @Param({"400"})
  public int measures;

  private Engraver engraver = engraver(1);

  /** Writes and plans the part. */
  @Setup
  public void write() {
    engraver = engraver(measures / 8);
  }

  private static Engraver engraver(int times) {
    String abc = "X:1\nM:4/4\nL:1/8\nK:F clef=alto\n" + EIGHT.repeat(times);
    TuneScore tune = Tunebook.parse("part", abc).choose(Optional.empty());
    Score score = ScoreReader.read(ScoreFile.of(tune.musicXml(), tune.remarks()));
    Passage passage = score.passage(PassageRequest.WHOLE);
    return Engraver.of(passage, score.printed(passage, Optional.empty())).withAbove(lane(passage));
  }

  private static Lane lane(Passage passage) {
    ImmutableMap.Builder<NoteAddress, Lane.Mark> marks = ImmutableMap.builder();
    int string = 0;
    List<PlannedNote> notes =
        Planner.of(passage, StandardRules.commonPractice()).plan(Brief.free("free")).notes();
    for (PlannedNote note : notes) {
      int now = note.placement().string();
      Position position = note.placement().frame().position();
      boolean first = position.equals(Position.FIRST);
      marks.put(
          note.note().address(),
          new Lane.Mark(
              note.placement().finger().symbol(),
              RomanNumeral.of(now),
              now != string && !first,
              position.display(),
              first));
      string = now;
    }
    return new Lane("free", marks.buildKeepingLast());
  }

  /** Lays out and draws all lines of the part. */
  @Benchmark
  public ImmutableList<EngravedSystem> drawing() {
    return engraver.draw(128);
  }
}
