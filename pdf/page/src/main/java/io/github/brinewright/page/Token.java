package io.github.brinewright.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;

/** A secret of one run, which only a page of this server can show. */
final class Token {
  private static final int BYTES = 24;

  private Token() {}

  static String next() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return HexFormat.of().formatHex(bytes);
  }

  /** Whether two are the same, in a time that does not tell where they differ. */
  static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
