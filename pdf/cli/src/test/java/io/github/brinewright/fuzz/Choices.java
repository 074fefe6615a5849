package io.github.brinewright.fuzz;

/** Decisions taken from bytes, so that the same bytes make the same input; zeros when they end. */
final class Choices {
  private final byte[] bytes;
  private int next;

  Choices(byte[] bytes) {
    this.bytes = bytes;
  }

  boolean left() {
    return next < bytes.length;
  }

  private int octet() {
    return left() ? bytes[next++] & 0xFF : 0;
  }

  /** A number below a bound. */
  int below(int bound) {
    int drawn = octet() << 8 | octet();
    return drawn % bound;
  }

  /** One of some things. */
  @SafeVarargs
  final <T> T of(T... things) {
    return things[below(things.length)];
  }

  /** A text as somebody with bad intent would give it, or a few characters at random. */
  String text() {
    if (below(4) > 0) {
      return of(Nasty.TEXTS);
    }
    StringBuilder text = new StringBuilder();
    for (int i = below(12); i > 0; i--) {
      text.appendCodePoint(below(2) == 0 ? octet() : below(0xFFFF));
    }
    return text.toString();
  }
}
