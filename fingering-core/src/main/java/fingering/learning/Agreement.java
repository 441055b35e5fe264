package fingering.learning;

import com.google.common.collect.ImmutableList;
import fingering.music.Marks;
import fingering.music.Note;
import fingering.music.Passage;
import fingering.plan.Plan;
import fingering.tables.FingeringException;
import java.util.OptionalDouble;

/**
 * How far plans agree with what players printed, in shares from 0 to 1.
 *
 * @param string share of the notes with a printed string that the plan takes on it; empty where no
 *     string is printed
 * @param stringAndFinger share of the notes with a printed finger that the plan takes with it, and
 *     on the printed string where there is one
 */
public record Agreement(OptionalDouble string, double stringAndFinger) {

  /**
   * The agreement of a plan with the marks of a passage.
   *
   * @param plan a plan of the same music; its own marks do not matter
   * @throws IllegalArgumentException if the plan has another number of notes than the passage, or
   *     no finger is printed in the passage
   */
  public static Agreement of(Plan plan, Passage printed) {
    ImmutableList<Note> notes = printed.notes();
    if (notes.size() != plan.notes().size()) {
      throw new IllegalArgumentException(
          "a plan of "
              + plan.notes().size()
              + " notes cannot agree with a passage of "
              + notes.size()
              + "; compare a plan of the same music");
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
        sameBoth += plan.notes().get(i).placement().asPrinted(marks) ? 1 : 0;
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
   * The mean of several, each counting alike; of the strings, of those that have any.
   *
   * @throws IllegalArgumentException if there are none
   */
  public static Agreement mean(ImmutableList<Agreement> several) {
    return new Agreement(
        several.stream()
            .map(Agreement::string)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .average(),
        several.stream()
            .mapToDouble(Agreement::stringAndFinger)
            .average()
            .orElseThrow(
                () -> new IllegalArgumentException("a mean of nothing; give an agreement")));
  }
}
