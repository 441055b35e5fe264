package fingering.engraving;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.abc.TuneScore;
import fingering.abc.Tunebook;
import fingering.engraving.drawing.Lane;
import fingering.engraving.drawing.Lane.Mark;
import fingering.music.NoteAddress;
import fingering.music.Passage;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.musicxml.reading.ScoreReader;
import java.nio.file.Path;
import java.util.Optional;

/** Music typed in ABC or read from files, with fingers of no plan at all notes. */
final class Engraved {
  private static final String[] NUMERALS = {"I", "II", "III", "IV"};

  private Engraved() {}

  static Engraver tune(String abc) {
    TuneScore written = Tunebook.parse("study", abc).choose(Optional.empty());
    Score score = ScoreReader.read(ScoreFile.of(written.musicXml(), written.remarks()));
    return engraver(score, PassageRequest.WHOLE);
  }

  static Engraver file(Path file) {
    return engraver(ScoreReader.read(ScoreFile.read(file)), PassageRequest.WHOLE);
  }

  static Engraver engraver(Score score, PassageRequest request) {
    Passage passage = score.passage(request);
    return Engraver.of(passage, score.printed(passage, Optional.empty()));
  }

  /** The same with a finger at every note, above and at every second one also below. */
  static Engraver fingered(Engraver bare) {
    return bare.withAbove(lane(bare.part(), 1)).withBelow(ImmutableList.of(lane(bare.part(), 2)));
  }

  private static Lane lane(PrintedPart part, int every) {
    ImmutableMap.Builder<NoteAddress, Mark> marks = ImmutableMap.builder();
    int count = 0;
    for (PrintedMeasure measure : part.measures()) {
      for (PrintedNote note : measure.notes()) {
        if (!note.rest() && count++ % every == 0) {
          boolean third = count / 8 % 2 == 1;
          marks.put(
              note.address(),
              new Mark(
                  Integer.toString(count % 5),
                  NUMERALS[count % 4],
                  count % 3 == 0,
                  third ? "3rd" : "1st",
                  !third));
        }
      }
    }
    return new Lane("of no plan", marks.buildOrThrow());
  }
}
