package io.github.brinewright.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes a file whole or not at all, as a program does that must not lose what stands there. */
public final class SafeFile {
  private static final String MARK = ".brinewright-";
  private static final Pattern WRITER = Pattern.compile("(\\d{1,18})-[0-9a-f-]{36}");

  private SafeFile() {}

  /**
   * Writes beside the target under a temporary name, then moves it into place. Others may read it
   * as any file of this folder; a temporary file of the library would be closed to them.
   *
   * @param target to write or replace
   * @param content all of it
   * @throws IOException when it cannot be written, or is a folder; then it is as it was
   */
  public static void write(Path target, byte[] content) throws IOException {
    write(target, content, SafeFile::move);
  }

  private static void write(Path target, byte[] content, Moving moving) throws IOException {
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "it is a folder; name a file in it");
    }
    Path folder = target.toAbsolutePath().getParent();
    Path temporary = folder.resolve(MARK + ProcessHandle.current().pid() + "-" + UUID.randomUUID());
    try {
      write(temporary, ByteBuffer.wrap(content));
      moving.move(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /**
   * Writes all of it to the disk itself, so that no loss of power leaves a name without content.
   */
  private static void write(Path temporary, ByteBuffer content) throws IOException {
    try (FileChannel file =
        FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      while (content.hasRemaining()) {
        file.write(content);
      }
      file.force(true);
    }
  }

  /**
   * Removes what runs that were killed left behind in a folder; those of living runs stay.
   *
   * @param folder to look through
   * @throws IOException when it cannot be read
   */
  public static void sweep(Path folder) throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, MARK + "*")) {
      for (Path each : left) {
        if (isDead(each.getFileName().toString().substring(MARK.length()))) {
          Files.deleteIfExists(each);
        }
      }
    }
  }

  private static boolean isDead(String rest) {
    Matcher writer = WRITER.matcher(rest);
    return writer.matches() && ProcessHandle.of(Long.parseLong(writer.group(1))).isEmpty();
  }

  /**
   * Writes a file that is not there yet in the same way.
   *
   * @param target to write
   * @param content all of it
   * @throws IOException when it cannot be written
   * @throws java.nio.file.FileAlreadyExistsException when it is there; it is left as it is
   */
  public static void writeNew(Path target, byte[] content) throws IOException {
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
