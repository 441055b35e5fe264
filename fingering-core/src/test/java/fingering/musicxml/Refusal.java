package fingering.musicxml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** A refusal as a user sees it. */
public final class Refusal {
  private static final int LONGEST = 300;

  private Refusal() {}

  /** The message of a refusal, checked to be one short, complete line without Java terms. */
  public static String of(ThrowingCallable action) {
    Throwable thrown = catchThrowable(action);
    assertThat(thrown)
        .isInstanceOfAny(
            UnreadableScoreException.class,
            UnwritableScoreException.class,
            SelectionException.class);
    String says = thrown.getMessage();
    assertThat(says.lines()).hasSize(1);
    assertThat(says).endsWith(".").hasSizeLessThanOrEqualTo(LONGEST);
    assertThat(says).doesNotContain("null", "Exception", "java.");
    return says;
  }
}
