package fingering.abc.syntax;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What could not be read as typed, and what was done instead. One wrong sign must not cost the
 * player the whole tune: it is left out or read as the most likely one, and listed here. Not
 * thread-safe.
 */
public final class Repairs {
  /** More sentences would hide the plan. */
  private static final int MOST_LISTED = 20;

  private record Found(int line, int column, int count) {
    Found again() {
      return new Found(line, column, count + 1);
    }
  }

  /** Enough for a page that shows the text; a text that is no tune has a fault at every sign. */
  private static final int MOST_PLACES = 200;

  private final Map<String, Found> all = new LinkedHashMap<>();
  private final List<TuneFault> places = new ArrayList<>();

  /** Begins without repairs. */
  public Repairs() {}

  /**
   * Adds a repair.
   *
   * @param place the sign that cannot be read
   * @param what what is wrong and what was done, without full stop
   */
  public void add(LineCursor place, String what) {
    add(place.line(), place.at(), what);
  }

  /**
   * Adds a repair.
   *
   * @param index the position of the sign in the line, from 0
   * @param what what is wrong and what was done, without full stop
   */
  public void add(SourceLine line, int index, String what) {
    Found here = new Found(line.number(), line.column(index), 1);
    all.merge(what, here, (first, again) -> first.again());
    TuneFault fault = new TuneFault(here.line, here.column, what);
    // Several voices share the header, and read it once each.
    if (places.size() < MOST_PLACES && !places.contains(fault)) {
      places.add(fault);
    }
  }

  /** Returns the repairs one by one, in the order in which they were made; the first 200. */
  public ImmutableList<TuneFault> places() {
    return ImmutableList.copyOf(places);
  }

  /** Returns one sentence for each kind of repair, by line and column, without full stop. */
  public ImmutableList<String> sentences() {
    ImmutableList.Builder<String> sentences = ImmutableList.builder();
    all.entrySet().stream()
        .sorted(
            Map.Entry.comparingByValue(
                Comparator.comparingInt(Found::line).thenComparingInt(Found::column)))
        .limit(MOST_LISTED)
        .forEach(repair -> sentences.add(sentence(repair.getKey(), repair.getValue())));
    int more = all.size() - MOST_LISTED;
    if (more > 0) {
      sentences.add("%d more kinds of signs could not be read as typed".formatted(more));
    }
    return sentences.build();
  }

  private static String sentence(String what, Found found) {
    String more = found.count > 1 ? " (and %d more like it)".formatted(found.count - 1) : "";
    return "line %d, column %d: %s%s".formatted(found.line, found.column, what, more);
  }
}
