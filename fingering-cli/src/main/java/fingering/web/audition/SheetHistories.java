package fingering.web.audition;

import com.google.common.cache.Cache;
import com.google.common.cache.CacheBuilder;
import com.google.common.collect.ImmutableList;
import fingering.sheet.SheetContent;
import java.util.Optional;

/**
 * What sheets said before their last changes, as long as the program runs. A sheet that has been
 * changed elsewhere since has no history any more. Thread-safe.
 */
public final class SheetHistories {
  /** The sheets that are remembered. */
  private static final int MOST = 32;

  /** The changes of each. */
  private static final int DEEP = 200;

  private record History(ImmutableList<SheetContent> past, SheetContent present) {}

  private final Cache<String, History> histories =
      CacheBuilder.newBuilder().maximumSize(MOST).build();

  private Optional<History> of(String id, SheetContent now) {
    return Optional.ofNullable(histories.getIfPresent(id))
        .filter(history -> history.present().equals(now) && !history.past().isEmpty());
  }

  /** Whether there is a change to undo. */
  public boolean undoes(String id, SheetContent now) {
    return of(id, now).isPresent();
  }

  /** Remembers a change. */
  public void add(String id, SheetContent before, SheetContent after) {
    if (!before.equals(after)) {
      ImmutableList<SheetContent> past =
          of(id, before).map(History::past).orElse(ImmutableList.of());
      histories.put(
          id,
          new History(
              ImmutableList.<SheetContent>builder()
                  .addAll(past.subList(Math.max(0, past.size() + 1 - DEEP), past.size()))
                  .add(before)
                  .build(),
              after));
    }
  }

  /** The sheet before its last change, which is then forgotten; empty if there is none. */
  public Optional<SheetContent> before(String id, SheetContent now) {
    return of(id, now)
        .map(
            history -> {
              SheetContent before = history.past().get(history.past().size() - 1);
              histories.put(
                  id, new History(history.past().subList(0, history.past().size() - 1), before));
              return before;
            });
  }
}
