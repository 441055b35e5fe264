package fingering.cli.audition;

import com.google.common.collect.ImmutableList;
import fingering.cli.file.WrongLineException;
import fingering.demand.Skill;
import fingering.tables.Instrument;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What an audition asks for, as its sheet has it. Whether the pieces can be read and played is
 * found out later, so that one that cannot does not hinder the others.
 *
 * @param file the sheet, as typed
 * @param title its title
 * @param instrument what is played, as usually strung and built
 * @param asked what the pieces have to show together
 * @param inOnePiece whether each of that has to be shown whole in one piece
 * @param excerptsOnly whether what scales show does not count
 * @param entries the scales and excerpts, in the order of the sheet
 */
public record AuditionSheet(
    String file,
    String title,
    Instrument instrument,
    ImmutableList<Skill> asked,
    boolean inOnePiece,
    boolean excerptsOnly,
    ImmutableList<Entry> entries) {

  /**
   * A key with its value.
   *
   * @param line where the value stands
   */
  record Line(String key, String value, int line) {}

  /**
   * A scale or an excerpt.
   *
   * @param number its number in the sheet, from 1
   * @param scale whether it is a scale
   * @param line where it begins
   * @param lines its keys, in their order; lists taken apart
   */
  record Entry(int number, boolean scale, int line, ImmutableList<Line> lines) {
    /**
     * The line of a key that has one value.
     *
     * @throws WrongLineException if it has several
     */
    Optional<Line> only(String key) {
      ImmutableList<Line> found =
          lines.stream()
              .filter(one -> one.key().equals(key))
              .collect(ImmutableList.toImmutableList());
      if (found.size() > 1) {
        throw new WrongLineException(
            found.get(1).line(), "'" + key + "' is given twice; leave one of them out.");
      }
      return found.stream().findFirst();
    }

    /** The value of such a key. */
    Optional<String> value(String key) {
      return only(key).map(Line::value);
    }

    /** Where the first of these keys stands that is there; else where the entry begins. */
    int lineOf(String... keys) {
      for (String key : keys) {
        Optional<Line> found = lines.stream().filter(one -> one.key().equals(key)).findFirst();
        if (found.isPresent()) {
          return found.get().line();
        }
      }
      return line;
    }
  }

  /** Where the sheet lies: what it names is looked for there. */
  Path folder() {
    Path absolute = Path.of(file).toAbsolutePath();
    return Optional.ofNullable(absolute.getParent()).orElse(absolute);
  }
}
