package io.github.brinewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

/** Sees now and then that what is printed reaches its reader, so that nobody works for nothing. */
final class Printed {
  private static final int BETWEEN = 64;

  private final PrintWriter out;
  private int since;

  Printed(PrintWriter out) {
    this.out = out;
  }

  /** One more is printed. */
  void one() {
    since = (since + 1) % BETWEEN;
    if (since == 0) {
      end();
    }
  }

  /** All is printed. */
  void end() {
    if (out.checkError()) {
      throw new UncheckedIOException(new IOException("what is printed finds no reader"));
    }
  }
}
