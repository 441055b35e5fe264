package fingering.plan.marks;

import com.google.common.collect.ImmutableList;
import fingering.music.Note;
import fingering.music.NoteAddress;
import fingering.musicxml.marking.NoteMarks;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The marks that a teacher would write into the part: the finger at every note, the string where it
 * changes, and the position at every shift.
 */
public final class PlanMarks {
  private PlanMarks() {}

  /** The marks of a plan, in the order of its notes. */
  public static ImmutableList<NoteMarks> of(Plan plan) {
    ImmutableList.Builder<NoteMarks> marks = ImmutableList.builder();
    int string = 0;
    boolean first = true;
    for (PlannedNote note : plan.notes()) {
      OptionalInt printed = note.note().marks().string();
      boolean contradicted = printed.isPresent() && printed.getAsInt() != note.placement().string();
      boolean stringChanges = contradicted || note.placement().string() != string;
      string = note.placement().string();
      boolean showPosition = note.shift() || first;
      first = false;
      marks.add(
          new NoteMarks(
              note.note().address(),
              Optional.of(note.finger()),
              stringChanges ? OptionalInt.of(string) : OptionalInt.empty(),
              showPosition ? Optional.of(position(plan, note)) : Optional.empty()));
    }
    return marks.build();
  }

  /**
   * The marks needed by a player who keeps the hand in place unless a mark says otherwise: shifts,
   * a fourth finger in place of an open string, stretches, slides and double stops. The list has no
   * entry for a note without a mark.
   */
  public static ImmutableList<NoteMarks> sparing(Plan plan) {
    return SparingMarks.of(plan, of(plan));
  }

  /**
   * The marks of a plan, in the order of its notes.
   *
   * @param sparing whether to write only the {@linkplain #sparing marks that a player needs}
   * @param signs how the strings are written. Numerals are only written where a player needs the
   *     string. A printed string number that contradicts the plan is replaced in any case.
   */
  public static ImmutableList<NoteMarks> of(Plan plan, boolean sparing, StringSigns signs) {
    ImmutableList<NoteMarks> few = sparing(plan);
    // In a double stop the pitches and fingers show the strings.
    Set<NoteAddress> single =
        plan.notes().stream()
            .filter(note -> plan.grips().get(note.moment()).placements().size() == 1)
            .map(note -> note.note().address())
            .collect(Collectors.toSet());
    Map<NoteAddress, OptionalInt> needed =
        few.stream()
            .filter(marks -> single.contains(marks.note()))
            .collect(Collectors.toMap(NoteMarks::note, NoteMarks::string));
    Map<NoteAddress, OptionalInt> printed =
        plan.notes().stream()
            .map(PlannedNote::note)
            .collect(Collectors.toMap(Note::address, note -> note.marks().string()));
    return (sparing ? few : of(plan))
        .stream()
            .map(
                marks -> {
                  boolean replaces =
                      printed.getOrDefault(marks.note(), OptionalInt.empty()).isPresent();
                  return new NoteMarks(
                      marks.note(),
                      marks.finger(),
                      signs.elements() || replaces ? marks.string() : OptionalInt.empty(),
                      signs.words()
                          ? needed.getOrDefault(marks.note(), OptionalInt.empty())
                          : OptionalInt.empty(),
                      marks.words());
                })
            .filter(marks -> !marks.isEmpty())
            .collect(ImmutableList.toImmutableList());
  }

  /** {@code 3rd pos.}, or in thumb position {@code thumb on D}. */
  private static String position(Plan plan, PlannedNote note) {
    return note.thumb(plan.passage().instrument())
        .map(pitch -> "thumb on " + pitch.letterName())
        .orElseGet(() -> note.placement().frame().position().display() + " pos.");
  }
}
