package io.github.brinewright.internal.document;

import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Semaphore;

/**
 * Parsed fonts, lent to one document at a time. There are as many as documents are drawn at once,
 * at most one for each core; whoever comes later waits for a document to be closed. So a thread
 * must not make a document while it makes another.
 */
final class FontPool {
  /** The one in use. */
  static final FontPool SHARED = new FontPool(Runtime.getRuntime().availableProcessors());

  private final Semaphore free;
  private final Deque<ParsedFonts> resting = new ConcurrentLinkedDeque<>();

  FontPool(int most) {
    free = new Semaphore(most);
  }

  /** Keeps fonts that were parsed for another end; once, at the start. */
  void add(ParsedFonts fonts) {
    resting.addFirst(fonts);
  }

  /** Fonts to be given back by closing. */
  Loan borrow() {
    free.acquireUninterruptibly();
    try {
      ParsedFonts rested = resting.pollFirst();
      return new Loan(rested == null ? new ParsedFonts() : rested);
    } catch (RuntimeException | Error failure) {
      free.release();
      throw failure;
    }
  }

  /** Fonts of one document. */
  final class Loan implements AutoCloseable {
    private final ParsedFonts fonts;
    private boolean open = true;

    private Loan(ParsedFonts fonts) {
      this.fonts = fonts;
    }

    ParsedFonts fonts() {
      return fonts;
    }

    /** Gives them back; a second time nothing happens. */
    @Override
    public void close() {
      if (open) {
        open = false;
        resting.addFirst(fonts);
        free.release();
      }
    }
  }
}
