package io.github.brinewright.cli;

import java.time.Duration;

/** A progress bar on a terminal, with the time left; silent where there is none. */
final class Progress {
  private static final int WIDTH = 30;

  /** Of what lasts shorter, nobody asks how long it takes. */
  private static final Duration SHORT = Duration.ofSeconds(4);

  private final int total;
  private final boolean shown;
  private final long start = System.nanoTime();
  private int done;

  Progress(int total, boolean wanted) {
    this.total = total;
    shown = wanted && total > 1 && System.console() != null;
  }

  synchronized void step() {
    done++;
    if (shown) {
      System.err.print("\r" + line(done, total, Duration.ofNanos(System.nanoTime() - start)));
    }
  }

  /** The bar, as wide from step to step. */
  static String line(int done, int total, Duration taken) {
    int filled = WIDTH * done / total;
    String bar = "#".repeat(filled) + " ".repeat(WIDTH - filled);
    Duration left = taken.multipliedBy(total - done).dividedBy(done);
    boolean brief = taken.plus(left).compareTo(SHORT) < 0;
    String time = brief ? "" : left.toMinutes() + ":%02d left".formatted(left.toSecondsPart());
    return "[%s] %d/%d %-12s".formatted(bar, done, total, time);
  }

  void done() {
    if (shown) {
      System.err.print("\r" + " ".repeat(WIDTH + 36) + "\r");
    }
  }
}
