package io.github.brinewright.internal.visit;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Short names of what must not be told, and of states of files: beginnings of SHA-256. */
final class Digest {
  private static final int NAME = 16;

  private Digest() {}

  /** Stands for a home in a link, which has no name in it. */
  static String nameOf(String siteId) {
    return of(siteId.getBytes(StandardCharsets.UTF_8)).substring(0, NAME);
  }

  /** Differs whenever the bytes do. */
  static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
