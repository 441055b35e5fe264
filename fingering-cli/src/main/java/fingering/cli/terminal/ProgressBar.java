package fingering.cli.terminal;

import java.io.PrintWriter;

/** A progress bar on the last line of a terminal. Thread-safe. */
public final class ProgressBar {
  private static final int CELLS = 24;
  private static final char LINE_START = '\r';

  private final PrintWriter terminal;
  private final int total;
  private final boolean shown;
  private int done;
  private int width;

  /**
   * An empty bar.
   *
   * @param terminal the terminal to draw on
   * @param total the number of steps
   * @param shown whether to draw it; false if the output is not a terminal
   */
  public ProgressBar(PrintWriter terminal, int total, boolean shown) {
    this.terminal = terminal;
    this.total = total;
    this.shown = shown;
  }

  /** Counts one more step. */
  public synchronized void step() {
    done++;
    draw();
  }

  /** Prints something while the bar is hidden. */
  public synchronized void around(Runnable printing) {
    clear();
    printing.run();
    draw();
  }

  /** Erases the bar. */
  public synchronized void clear() {
    if (width > 0) {
      terminal.print(LINE_START + " ".repeat(width) + LINE_START);
      terminal.flush();
      width = 0;
    }
  }

  private void draw() {
    if (!shown || done >= total) {
      return;
    }
    int full = (int) ((long) CELLS * done / total);
    String bar = "[" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + done + " of " + total;
    terminal.print(LINE_START + bar);
    terminal.flush();
    width = bar.length();
  }
}
