package fingering.musicxml.writing;

import fingering.musicxml.writing.MeasureClock.Timed;
import fingering.musicxml.writing.MeasureClock.Timing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Removes repeat signs and endings whose other half is outside the excerpt: nobody can go back to a
 * place that is not on the page.
 */
final class RepeatCuts {
  private record Sign(XmlNode barline, XmlNode sign) {}

  private final Cutter cutter;
  private final boolean fromBeginning;

  /**
   * Prepares the cut.
   *
   * @param fromBeginning whether the excerpt begins with the part, where a repeat needs no sign
   */
  RepeatCuts(Cutter cutter, boolean fromBeginning) {
    this.cutter = cutter;
    this.fromBeginning = fromBeginning;
  }

  /**
   * Removes the signs.
   *
   * @param toEnd whether the excerpt ends with the part
   */
  void cut(List<Timing> measures, boolean toEnd) {
    Optional<Sign> repeat = Optional.empty();
    Optional<Sign> ending = Optional.empty();
    boolean mayGoBack = fromBeginning;
    List<Sign> single = new ArrayList<>();
    for (Timing measure : measures) {
      for (Timed item : measure.items()) {
        if (!item.node().is("barline")) {
          continue;
        }
        for (XmlNode sign : item.node().children()) {
          Sign here = new Sign(item.node(), sign);
          if (sign.is("repeat") && sign.attribute("direction").equals("forward")) {
            repeat = Optional.of(here);
          } else if (sign.is("repeat")) {
            if (repeat.isEmpty() && !mayGoBack) {
              single.add(here);
            }
            mayGoBack |= repeat.isPresent();
            repeat = Optional.empty();
          } else if (sign.is("ending") && sign.attribute("type").equals("start")) {
            ending = Optional.of(here);
          } else if (sign.is("ending")) {
            if (ending.isEmpty()) {
              single.add(here);
            }
            ending = Optional.empty();
          }
        }
      }
    }
    if (!toEnd) {
      repeat.ifPresent(single::add);
      ending.ifPresent(single::add);
    }
    single.forEach(sign -> remove(sign, single));
  }

  private void remove(Sign sign, List<Sign> single) {
    boolean repeat = single.stream().anyMatch(one -> isRepeatOf(one, sign.barline()));
    boolean other =
        sign.barline().children().stream()
            .anyMatch(
                child ->
                    single.stream().noneMatch(one -> one.sign().equals(child))
                        && !(repeat && child.is("bar-style")));
    if (!other) {
      cutter.remove(sign.barline());
      return;
    }
    cutter.remove(sign.sign());
    if (sign.sign().is("repeat")) {
      // The thick line belongs to the repeat.
      sign.barline().first("bar-style").ifPresent(cutter::remove);
    }
  }

  private static boolean isRepeatOf(Sign sign, XmlNode barline) {
    return sign.sign().is("repeat") && sign.barline().equals(barline);
  }
}
