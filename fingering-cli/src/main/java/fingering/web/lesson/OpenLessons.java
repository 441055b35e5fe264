package fingering.web.lesson;

import static fingering.page.view.PageText.text;

import com.google.common.util.concurrent.Striped;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.search.Cancellation;
import fingering.tables.FingeringException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.Lock;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The lessons that are open, the ones used last. What is newer on disk wins over what is remembered
 * here. Thread-safe: the changes of one lesson are made one after another.
 */
public final class OpenLessons {
  private static final int LOCKS = 64;

  /** Nobody waits longer for plans. */
  private static final long MOST_NANOS = 10_000_000_000L;

  private final Adviser adviser;
  private final LessonKeeper keeper;
  private final LessonReader reader;
  private final HistoryKeeper histories;
  private final LessonShelf shelf = new LessonShelf();
  private final Striped<Lock> locks = Striped.lock(LOCKS);

  /** The last request for other music, by the id of its lesson. It overtakes earlier ones. */
  private final Map<String, Object> latest = new ConcurrentHashMap<>();

  public OpenLessons(Adviser adviser, LessonKeeper keeper, HistoryKeeper histories) {
    this.adviser = adviser;
    this.keeper = keeper;
    this.histories = histories;
    reader = new LessonReader(adviser, keeper, histories);
  }

  /**
   * The state of a lesson, and what the page that asks must hear.
   *
   * @param open the state
   * @param remark a sentence; empty if all went as asked
   */
  public record State(OpenLesson open, String remark) {}

  /** What a change makes of a lesson. */
  public interface Change {
    /**
     * The lesson and its history after the change.
     *
     * @param plans the plans before the change. A change that does not ask for them is possible
     *     even if there are none, so that a reader whose choice cannot be planned can choose again
     * @throws FingeringException if the change is not possible, or there are no plans and it asks
     *     for them
     */
    Next of(OpenLesson now, Supplier<Planned> plans);
  }

  /**
   * A lesson and its history.
   *
   * @param remark a sentence about the change; empty if there is nothing to say
   */
  public record Next(Lesson lesson, History history, String remark) {
    Next(Lesson lesson, History history) {
      this(lesson, history, "");
    }

    /** The same with a sentence about the change. */
    public Next saying(String sentence) {
      return new Next(lesson, history, sentence);
    }
  }

  /**
   * Opens a score or lesson.
   *
   * @param id the id that it gets
   * @param name the name that messages give the file
   * @param dropped whether the file is only lent, and must be copied before it is used in a lesson
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  public OpenLesson open(String id, Path file, String name, boolean dropped) {
    OpenLesson opened = reader.open(id, file, name, dropped);
    shelf.put(opened);
    return opened;
  }

  /**
   * Opens a new lesson on the score, the music and the demands of another one. It is saved in a
   * file of its own with its first change.
   *
   * @param id the id that it gets
   */
  public OpenLesson copy(OpenLesson open, String id) {
    OpenLesson copied = open.copy(id);
    shelf.put(copied);
    return copied;
  }

  public Optional<OpenLesson> get(String id) {
    return shelf.get(id);
  }

  /**
   * An open lesson, or one that is opened now, perhaps again; empty if there is none of that id.
   *
   * @param files the files of the teacher by their ids
   */
  public Optional<OpenLesson> opened(String id, Function<String, Optional<Path>> files) {
    return get(id)
        .or(() -> shelf.away(id).flatMap(one -> again(id, one)))
        .or(() -> files.apply(id).map(file -> in(file).orElseGet(() -> open(id, file))));
  }

  /** A lesson that was put away; empty if it cannot be the same, as it was never saved. */
  private Optional<OpenLesson> again(String id, LessonShelf.PutAway one) {
    Optional<OpenLesson> elsewhere = one.unsaved().isPresent() ? Optional.empty() : in(one.file());
    if (elsewhere.isPresent()) {
      return elsewhere;
    }
    OpenLesson opened =
        reader.open(id, one.file(), one.name(), one.dropped()).shownAs(one.revision());
    if (one.unsaved().filter(lesson -> !lesson.equals(opened.lesson())).isPresent()) {
      return Optional.empty();
    }
    shelf.put(opened);
    return Optional.of(opened);
  }

  private OpenLesson open(String id, Path file) {
    return open(id, file, String.valueOf(file.getFileName()), false);
  }

  /** The open lesson that is saved in a file; empty if it is not open. */
  public Optional<OpenLesson> in(Path file) {
    return shelf.in(file);
  }

  /**
   * The present state with its plans.
   *
   * @throws FingeringException if there is no plan; the message is one sentence
   */
  public State planned(String id) {
    return locked(
        id,
        Cancellation.NEVER,
        () -> {
          State now = reader.fresh(present(id));
          return new State(planned(now.open()), now.remark());
        });
  }

  /**
   * Changes a lesson, makes its plans and saves it.
   *
   * @param revision the state that the page shows; the change is only made if it is the present one
   * @throws FingeringException if the change is not possible; the message is one sentence, and the
   *     lesson stays as it was
   */
  public State change(String id, int revision, Change change) {
    return change(id, revision, change, Cancellation.NEVER);
  }

  /**
   * Chooses other music or another student. A later choice takes the place of this one while it is
   * planned.
   *
   * @param revision the state that the page shows; the change is only made if it is the present one
   * @throws FingeringException if the change is not possible; the message is one sentence, and the
   *     lesson stays as it was
   */
  public State choose(String id, int revision, Change change) {
    Object request = new Object();
    latest.put(id, request);
    try {
      return change(id, revision, change, () -> latest.get(id) != request);
    } finally {
      latest.remove(id, request);
    }
  }

  private State change(String id, int revision, Change change, Cancellation overtaken) {
    Cancellation cancellation = patience(overtaken);
    return locked(
        id,
        overtaken,
        () -> {
          State now = reader.fresh(present(id));
          OpenLesson before = now.open();
          PlansBefore plans = new PlansBefore(before);
          if (before.revision() != revision) {
            String remark = now.remark().isEmpty() ? text("open.stale") : now.remark();
            return new State(planned(before), remark);
          }
          Next next = change.of(before, plans);
          if (next.lesson().equals(before.lesson()) && next.history().equals(before.history())) {
            return new State(planned(plans.open), "");
          }
          StoredLesson stored =
              new StoredLesson(before.stored().file(), next.lesson(), before.stored().text());
          OpenLesson after =
              before.changed(
                  stored, next.history(), Optional.of(plans(plans.open, stored, cancellation)));
          State state = saved(after, before.stored());
          return state.remark().isEmpty() ? new State(state.open(), next.remark()) : state;
        });
  }

  /**
   * The present state with its plans, saved in a file even if nothing has been changed yet.
   *
   * @throws FingeringException if it cannot be saved; the message is one sentence
   */
  public OpenLesson kept(String id) {
    planned(id);
    State kept =
        locked(
            id,
            Cancellation.NEVER,
            () -> {
              OpenLesson open = present(id);
              return open.saved() ? new State(open, "") : saved(open, open.stored());
            });
    if (!kept.remark().isEmpty()) {
      throw new FingeringException(kept.remark());
    }
    return kept.open();
  }

  /** A change that can be undone. */
  public static Next step(OpenLesson now, Lesson lesson) {
    return new Next(
        lesson, lesson.equals(now.lesson()) ? now.history() : now.history().after(now.lesson()));
  }

  /** The lesson before its last change. */
  public static Next undone(OpenLesson now) {
    List<Lesson> past = now.history().past();
    return past.isEmpty()
        ? new Next(now.lesson(), now.history())
        : new Next(ofTheScore(now, past.get(past.size() - 1)), now.history().undone(now.lesson()));
  }

  /** The lesson after the change that was undone last. */
  public static Next redone(OpenLesson now) {
    List<Lesson> future = now.history().future();
    return future.isEmpty()
        ? new Next(now.lesson(), now.history())
        : new Next(ofTheScore(now, future.get(0)), now.history().redone(now.lesson()));
  }

  /** Which file a lesson is about is nothing to undo: a dropped score moves when it is saved. */
  private static Lesson ofTheScore(OpenLesson now, Lesson lesson) {
    return lesson.withScore(now.lesson().score(), now.lesson().tune());
  }

  private State saved(OpenLesson after, StoredLesson before) {
    try {
      OpenLesson saved = keeper.save(after, before);
      shelf.put(saved);
      histories.keep(saved);
      return new State(saved, "");
    } catch (FingeringException e) {
      // The page keeps the change, and the next one tries again.
      shelf.put(after);
      return new State(after, text("save.failed", e.getMessage()));
    }
  }

  private OpenLesson present(String id) {
    return get(id).orElseThrow(() -> new FingeringException(text("open.closed")));
  }

  /** A request that ends when it is overtaken, or takes too long. */
  private static Cancellation patience(Cancellation overtaken) {
    long start = System.nanoTime();
    return () -> overtaken.requested() || System.nanoTime() - start > MOST_NANOS;
  }

  /** The plans before a change, which are made when the change asks for them. */
  private final class PlansBefore implements Supplier<Planned> {
    private OpenLesson open;

    PlansBefore(OpenLesson open) {
      this.open = open;
    }

    @Override
    public Planned get() {
      open = planned(open);
      return open.planned().orElseThrow();
    }
  }

  private OpenLesson planned(OpenLesson open) {
    OpenLesson planned = open.with(plans(open, open.stored(), patience(Cancellation.NEVER)));
    shelf.put(planned);
    return planned;
  }

  /** The plans of a lesson, from what is known of it where possible. */
  private Planned plans(OpenLesson known, StoredLesson stored, Cancellation cancellation) {
    Setting setting = Setting.of(known.stamp(), stored);
    return known
        .planned()
        .filter(planned -> planned.setting().equals(setting))
        .map(planned -> planned.choosing(stored.lesson(), cancellation))
        .orElseGet(
            () ->
                Planned.of(
                    setting,
                    adviser.advise(known.file(), known.score(), stored, cancellation),
                    stored.lesson(),
                    known.planned(),
                    cancellation));
  }

  private interface Work {
    State done();
  }

  private State locked(String id, Cancellation asked, Work work) {
    Lock lock = locks.get(id);
    lock.lock();
    try {
      return work.done();
    } catch (CancellationException e) {
      boolean overtaken = asked.requested();
      throw new FingeringException(overtaken ? text("open.overtaken") : text("open.slow"), e);
    } finally {
      lock.unlock();
    }
  }
}
