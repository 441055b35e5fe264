package fingering.web;

import java.io.IOException;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The time that an answer may take to be received. A receiver that stops reading would keep a
 * thread of the server forever: interrupting the thread closes the connection.
 */
final class SendLimit {
  private final Thread sender = Thread.currentThread();
  private boolean over;

  private SendLimit() {}

  /** Something that is sent. */
  @FunctionalInterface
  interface Sending {
    void run() throws IOException;
  }

  /**
   * Sends something.
   *
   * @param watch runs the alarm
   * @param seconds the time
   * @throws IOException if it takes longer, or the receiver has gone
   */
  static void within(ScheduledExecutorService watch, int seconds, Sending sending)
      throws IOException {
    SendLimit limit = new SendLimit();
    Future<?> alarm = watch.schedule(limit::strike, seconds, TimeUnit.SECONDS);
    try {
      sending.run();
    } finally {
      limit.end();
      alarm.cancel(false);
    }
  }

  private synchronized void strike() {
    if (!over) {
      sender.interrupt();
    }
  }

  private synchronized void end() {
    over = true;
  }
}
