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
    write(target, content, SafeFile::move);
  }

  private static void write(Path target, byte[] content, Moving moving) throws IOException {
    if (Files.isDirectory(target)) {
      throw new UsageException(target + " is a folder; name a file in it");
    }
    Path folder = target.toAbsolutePath().getParent();
    Path temporary = folder.resolve(".brinewright-" + UUID.randomUUID() + ".tmp");
    try {
      Files.write(temporary, content, StandardOpenOption.CREATE_NEW);
      moving.move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /**
   * Writes a file that is not there yet in the same way.
   *
   * @throws java.nio.file.FileAlreadyExistsException when it is there; it is left as it is
   */
  static void writeNew(Path target, byte[] content) throws IOException {
    write(target, content, Files::move);
  }

  private interface Moving {
    void move(Path from, Path to) throws IOException;
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException notHere) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
