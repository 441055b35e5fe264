package fingering.web.typed;

import com.google.common.collect.ImmutableList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The texts that are being typed, those used last. Thread-safe. */
public final class Drafts {
  /** More are forgotten, the one not used for longest first. */
  private static final int MOST = 50;

  private final Map<String, Draft> drafts = new LinkedHashMap<>(MOST, 0.75f, true);

  /** The draft with an id. */
  public synchronized Optional<Draft> get(String id) {
    return Optional.ofNullable(drafts.get(id));
  }

  /** Keeps the present state of a draft. */
  public synchronized void put(Draft draft) {
    drafts.put(draft.id(), draft);
    if (drafts.size() > MOST) {
      drafts.remove(drafts.keySet().iterator().next());
    }
  }

  /** Those that are not saved, the one used last at the end. */
  public synchronized ImmutableList<Draft> unsaved() {
    return drafts.values().stream().filter(Draft::unsaved).collect(ImmutableList.toImmutableList());
  }
}
