package io.github.brinewright.cli;

/** A progress bar on a terminal; silent where there is none. */
final class Progress {
  private static final int WIDTH = 30;

  private final int total;
  private final boolean shown;
  private int done;

  Progress(int total, boolean wanted) {
    this.total = total;
    shown = wanted && total > 1 && System.console() != null;
  }

  void step() {
    done++;
    if (shown) {
      int filled = WIDTH * done / total;
      System.err.print(
          "\r[" + "#".repeat(filled) + " ".repeat(WIDTH - filled) + "] " + done + "/" + total);
    }
  }

  void done() {
    if (shown) {
      System.err.print("\r" + " ".repeat(WIDTH + 16) + "\r");
    }
  }
}
