package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Range;
import fingering.lesson.Lesson;
import fingering.music.MeasureBeat;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.SlurChanges;
import fingering.music.SlurChanges.Change;
import fingering.page.NoteWays;
import fingering.page.live.SlurView;
import fingering.page.live.SlurView.Chip;
import fingering.page.live.SlurView.End;
import fingering.tables.FingeringException;
import java.util.List;
import java.util.Optional;

/**
 * Changes of the bowings of a lesson.
 *
 * @param lesson the lesson before the change
 * @param passage its music
 */
public record SlurEdit(Lesson lesson, Passage passage) {
  /** The most notes of a slur that is chosen from a list. */
  private static final int MOST_NOTES = 16;

  /**
   * The lesson with a new slur. It takes the place of other changes within it.
   *
   * @param first the index of its first moment in the passage
   * @param last the index of its last moment
   */
  public Lesson slurring(int first, int last) {
    Change slur = new Change(place(first), Optional.of(place(last)));
    return lesson.withSlurs(without(Range.closed(first, last)).with(slur));
  }

  /** The lesson in which a note is under no slur. */
  public Lesson separating(int moment) {
    MeasureBeat place = place(moment);
    SlurChanges left = without(Range.singleton(moment));
    boolean newSlur = !left.equals(lesson.slurs());
    return lesson.withSlurs(
        !newSlur || printed(moment) ? left.with(new Change(place, Optional.empty())) : left);
  }

  /** The lesson in which the bowing at a place is the printed one again. */
  public Lesson asPrinted(String place) {
    return lesson.withSlurs(lesson.slurs().without(MeasureBeat.parse(place)));
  }

  /** The changes without those that concern some moments. */
  private SlurChanges without(Range<Integer> moments) {
    return new SlurChanges(
        lesson.slurs().changes().stream()
            .filter(change -> reach(change).filter(moments::isConnected).isEmpty())
            .collect(ImmutableList.toImmutableList()));
  }

  /** The moments that a change concerns; empty if they are not in the passage. */
  private Optional<Range<Integer>> reach(Change change) {
    try {
      int from = change.from().indexIn(passage);
      return Optional.of(Range.closed(from, change.to().orElse(change.from()).indexIn(passage)));
    } catch (FingeringException e) {
      return Optional.empty();
    }
  }

  /** Whether a printed slur that was taken off covers a note. */
  private boolean printed(int moment) {
    return passage.moments().get(moment).starting().stream()
        .anyMatch(
            note ->
                passage.slurs().removed().stream().anyMatch(slur -> slur.covers(note.address())));
  }

  private MeasureBeat place(int moment) {
    if (moment < 0 || moment >= passage.moments().size()) {
      throw new FingeringException(text("note.none"));
    }
    return LessonEdit.beat(passage, moment)
        .map(MeasureBeat::parse)
        .orElseThrow(() -> new FingeringException(text("slur.unnamed")));
  }

  /** What can be done with the bowing at a note. */
  public static SlurView at(Passage passage, int moment) {
    if (LessonEdit.beat(passage, moment).isEmpty()) {
      return new SlurView(ImmutableList.of(), false);
    }
    List<Moment> moments = passage.moments();
    ImmutableList.Builder<End> ends = ImmutableList.builder();
    int notes = 1;
    for (int m = moment + 1; m < moments.size() && notes < MOST_NOTES; m++) {
      Moment next = moments.get(m);
      if (next.restMicros() > 0 && !next.slurred()) {
        break;
      }
      if (!next.grace()) {
        notes++;
        if (LessonEdit.beat(passage, m).isPresent()) {
          ends.add(new End(m, end(moments, moment, m, notes)));
        }
      }
    }
    return new SlurView(ends.build(), slurred(moments, moment));
  }

  private static String end(List<Moment> moments, int first, int last, int notes) {
    Moment end = moments.get(last);
    int measure = end.place().measureIndex();
    String names = NoteWays.names(end.starting());
    String place =
        measure == moments.get(first).place().measureIndex()
            ? text("slur.beat", end.place().beatText())
            : text("slur.measure", end.place().measure(), end.place().beatText());
    boolean ends =
        last + 1 == moments.size() || moments.get(last + 1).place().measureIndex() != measure;
    return ends
        ? text("slur.end-of-measure", notes, names, place)
        : text("slur.end", notes, names, place);
  }

  /** Whether a note is under a slur other than that from grace notes to it. */
  private static boolean slurred(List<Moment> moments, int moment) {
    if (moment + 1 < moments.size() && moments.get(moment + 1).slurred()) {
      return true;
    }
    int m = moment;
    while (moments.get(m).slurred() && moments.get(m - 1).grace()) {
      m--;
    }
    return moments.get(m).slurred();
  }

  /** The bowings that a lesson changes, in words. */
  public static ImmutableList<Chip> chips(SlurChanges slurs) {
    return slurs.changes().stream()
        .map(
            change ->
                new Chip(
                    change.from().toString(),
                    change
                        .to()
                        .map(to -> text("slur.new", place(change.from()), place(to)))
                        .orElseGet(() -> text("slur.none", place(change.from())))))
        .collect(ImmutableList.toImmutableList());
  }

  private static String place(MeasureBeat when) {
    return text("slur.measure", when.measure(), when.beat().toPlainString());
  }
}
