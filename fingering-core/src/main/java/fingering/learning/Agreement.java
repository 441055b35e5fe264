package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.music.Marks;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.util.OptionalDouble;

/**
 * The agreement of plans with printed fingerings, as fractions from 0 to 1.
 *
 * @param string of the notes with a printed string, the fraction that is on that string in the
 *     plan; empty if no string is printed
 * @param stringAndFinger of the notes with a printed finger, the fraction that has that finger in
 *     the plan, and that string if one is printed
 */
public record Agreement(OptionalDouble string, double stringAndFinger) {

  /**
   * The agreement of a plan with the marks of a passage.
   *
   * @param plan a plan of the same music; the marks of its own passage are ignored
   * @param printed the passage with the marks
   * @throws IllegalArgumentException if the plan and the passage have different numbers of notes
   * @throws FingeringException if no finger is printed in the passage
   */
  public static Agreement of(Plan plan, Passage printed) {
    ImmutableList<Note> notes = printed.notes();
    if (notes.size() != plan.notes().size()) {
      throw new IllegalArgumentException(
          "a plan of "
              + plan.notes().size()
              + " notes cannot be compared with a passage of "
              + notes.size()
              + " notes; compare a plan of the same music");
    }
    int strings = 0;
    int sameString = 0;
    int fingers = 0;
    int sameBoth = 0;
    for (int i = 0; i < notes.size(); i++) {
      Marks marks = notes.get(i).marks();
      if (marks.string().isPresent()) {
        strings++;
        sameString += plan.notes().get(i).placement().string() == marks.string().getAsInt() ? 1 : 0;
      }
      if (marks.finger().isPresent()) {
        fingers++;
        sameBoth += plan.notes().get(i).placement().matchesPrinted(marks) ? 1 : 0;
      }
    }
    if (fingers == 0) {
      throw new FingeringException(
          "no finger is printed in " + printed.partName() + "; compare with a fingered part");
    }
    return new Agreement(
        strings == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) sameString / strings),
        (double) sameBoth / fingers);
  }

  /**
   * The unweighted mean of some agreements. For strings it is the mean of those that have one.
   *
   * @throws IllegalArgumentException if there are none
   */
  public static Agreement mean(ImmutableList<Agreement> agreements) {
    return new Agreement(
        agreements.stream()
            .map(Agreement::string)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .average(),
        agreements.stream()
            .mapToDouble(Agreement::stringAndFinger)
            .average()
            .orElseThrow(
                () -> new IllegalArgumentException("no agreements given; give at least one")));
  }
}
