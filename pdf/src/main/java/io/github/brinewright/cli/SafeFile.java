package io.github.brinewright.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
final class SafeFile {
  private SafeFile() {}

  /** Writes beside the target under a temporary name, then moves it into place. */
  static void write(Path target, byte[] content) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    Path temporary = Files.createTempFile(folder, ".brinewright-", ".tmp");
    try {
      Files.write(temporary, content);
      move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException notHere) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
