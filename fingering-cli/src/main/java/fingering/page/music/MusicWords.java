package fingering.page.music;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import fingering.engraving.EngravedSystem;
import fingering.engraving.EngravedSystem.MeasureSpan;
import fingering.engraving.drawing.Lane;
import fingering.engraving.drawing.Lane.Mark;
import fingering.music.Passage;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedNote;
import fingering.music.print.PrintedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lines of music in words, for screen readers: notes and fingers, measure by measure. */
public final class MusicWords {
  private final Passage passage;
  private final Lanes lanes;
  private final ImmutableListMultimap<Integer, PrintedMeasure> measures;

  public MusicWords(Passage passage, PrintedPart part, Lanes lanes) {
    this(passage, lanes, Multimaps.index(part.measures(), PrintedMeasure::index));
  }

  private MusicWords(
      Passage passage, Lanes lanes, ImmutableListMultimap<Integer, PrintedMeasure> measures) {
    this.passage = passage;
    this.lanes = lanes;
    this.measures = measures;
  }

  /** The same music with other fingers. */
  MusicWords with(Lanes other) {
    return new MusicWords(passage, other, measures);
  }

  /** A line in words. */
  public String of(EngravedSystem line) {
    List<String> all = new ArrayList<>();
    for (MeasureSpan span : line.measures()) {
      if (span.begins()) {
        measures.get(span.index()).forEach(measure -> all.add(measure(measure)));
      }
    }
    return all.isEmpty() ? text("words.continued") : String.join(" ", all);
  }

  private String measure(PrintedMeasure measure) {
    List<String> notes = new ArrayList<>();
    boolean rest = false;
    for (PrintedNote note : measure.notes()) {
      // Several rests in a row are said once.
      if (note.rest() && !rest) {
        notes.add(text("words.rest"));
      } else if (!note.rest()) {
        notes.add(note(note));
      }
      rest = note.rest();
    }
    String number = passage.measure(measure.index()).map(m -> m.number()).orElse("");
    return text("words.measure", number, String.join(", ", notes));
  }

  private String note(PrintedNote note) {
    StringBuilder words = new StringBuilder(note.pitch().orElseThrow().display());
    for (Lane lane : lanes.above()) {
      mark(lane, note).ifPresent(mark -> words.append(' ').append(mark));
    }
    for (Lane lane : lanes.below()) {
      mark(lane, note)
          .ifPresent(mark -> words.append(' ').append(text("words.other", lane.name(), mark)));
    }
    return words.toString();
  }

  private static Optional<String> mark(Lane lane, PrintedNote note) {
    return Optional.ofNullable(lane.marks().get(note.address())).map(MusicWords::mark);
  }

  private static String mark(Mark mark) {
    return (mark.first() ? "" : mark.position() + " ")
        + (mark.showString() ? mark.string() + " " : "")
        + mark.finger();
  }
}
