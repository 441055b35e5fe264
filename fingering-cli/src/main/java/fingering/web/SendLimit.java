package fingering.web;

import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The time that an answer may take to be received. A receiver that stops reading would keep a
 * thread of the server for ever: interrupting the thread closes the connection.
 */
final class SendLimit implements AutoCloseable {
  private final Thread sender = Thread.currentThread();
  private boolean over;
  private final Future<?> alarm;

  private SendLimit(ScheduledExecutorService watch, int seconds) {
    alarm = watch.schedule(this::strike, seconds, TimeUnit.SECONDS);
  }

  /** Starts the time for what the current thread sends. */
  static SendLimit start(ScheduledExecutorService watch, int seconds) {
    return new SendLimit(watch, seconds);
  }

  private synchronized void strike() {
    if (!over) {
      sender.interrupt();
    }
  }

  @Override
  public synchronized void close() {
    over = true;
    alarm.cancel(false);
  }
}
