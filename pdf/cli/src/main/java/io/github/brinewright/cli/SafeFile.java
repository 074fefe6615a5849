package io.github.brinewright.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all. */
final class SafeFile {
  private SafeFile() {}

  /**
   * Writes beside the target under a temporary name, then moves it into place. Others may read it
   * as any file of this folder; a temporary file of the library would be closed to them.
   */
  static void write(Path target, byte[] content) throws IOException {
    if (Files.isDirectory(target)) {
      throw new UsageException(target + " is a folder; name a file in it");
    }
    Path folder = target.toAbsolutePath().getParent();
    Path temporary = folder.resolve(".brinewright-" + UUID.randomUUID() + ".tmp");
    try {
      Files.write(temporary, content, StandardOpenOption.CREATE_NEW);
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
