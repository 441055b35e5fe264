package fingering.cli.terminal;

import java.io.PrintWriter;

/** How far a long command has come, on the last line of a terminal. */
public final class ProgressBar {
  private static final int CELLS = 24;
  private static final char BACK = '\r';

  private final PrintWriter terminal;
  private final int total;
  private final boolean shown;
  private int done;
  private int written;

  /**
   * A bar.
   *
   * @param terminal where it is drawn
   * @param total what is to be done
   * @param shown whether it is drawn at all; a file gets none
   */
  public ProgressBar(PrintWriter terminal, int total, boolean shown) {
    this.terminal = terminal;
    this.total = total;
    this.shown = shown;
  }

  /** One more is done. */
  public synchronized void step() {
    done++;
    draw();
  }

  /** Does something that prints, with the bar out of its way. */
  public synchronized void around(Runnable printing) {
    clear();
    printing.run();
    draw();
  }

  /** Takes the bar away. */
  public synchronized void clear() {
    if (written > 0) {
      terminal.print(BACK + " ".repeat(written) + BACK);
      terminal.flush();
      written = 0;
    }
  }

  private void draw() {
    if (!shown || done >= total) {
      return;
    }
    int full = (int) ((long) CELLS * done / total);
    String bar = "[" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + done + " of " + total;
    terminal.print(BACK + bar);
    terminal.flush();
    written = bar.length();
  }
}
