package fingering.web.lesson;

import com.google.common.collect.ImmutableList;
import fingering.lesson.Lesson;

/**
 * What a lesson said before its changes, and what it said before they were undone.
 *
 * @param past the earlier states, the oldest first; at most {@value #MOST}
 * @param future the states that were undone, the next one first
 */
public record History(ImmutableList<Lesson> past, ImmutableList<Lesson> future) {
  public static final History NONE = new History(ImmutableList.of(), ImmutableList.of());

  public static final int MOST = 200;

  /** The history after a change. What was undone before is forgotten. */
  public History after(Lesson before) {
    ImmutableList.Builder<Lesson> states = ImmutableList.builder();
    states.addAll(past.subList(Math.max(0, past.size() - MOST + 1), past.size()));
    return new History(states.add(before).build(), ImmutableList.of());
  }

  /** The history after the last change was undone. */
  public History undone(Lesson now) {
    return new History(
        past.subList(0, past.size() - 1),
        ImmutableList.<Lesson>builder().add(now).addAll(future).build());
  }

  /** The history after a change was made again. */
  public History redone(Lesson now) {
    return new History(
        ImmutableList.<Lesson>builder().addAll(past).add(now).build(),
        future.subList(1, future.size()));
  }
}
