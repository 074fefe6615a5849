package io.github.brinewright.job;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files of a job, from a folder or from memory. */
public interface JobFiles {
  /** Names that a job may have, in the order in which they are read. */
  List<String> NAMES =
      List.of(
          "dealer.properties",
          "resins.csv",
          "units.csv",
          "items.csv",
          "payments.csv",
          "tariffs.csv",
          "sites.csv");

  /** {@return where the files are, for messages} */
  String place();

  /**
   * {@return whether a file is there}
   *
   * @param name of the file, without a folder
   */
  boolean has(String name);

  /**
   * {@return the size of a file in bytes}
   *
   * @param name of a file that is there
   * @throws java.io.IOException when it cannot be read
   */
  long size(String name) throws IOException;

  /**
   * {@return the content of a file}
   *
   * @param name of a file that is there
   * @throws java.io.IOException when it cannot be read
   */
  byte[] read(String name) throws IOException;

  /**
   * {@return the content of a file, to be read bit by bit and closed by the caller}
   *
   * @param name of a file that is there
   * @throws java.io.IOException when it cannot be read
   */
  default InputStream open(String name) throws IOException {
    return new ByteArrayInputStream(read(name));
  }

  /**
   * {@return when a file was last changed; always the same for what cannot change}
   *
   * @param name of a file that is there
   * @throws java.io.IOException when it cannot be read
   */
  default Instant changed(String name) throws IOException {
    return Instant.EPOCH;
  }

  /**
   * {@return the files of a folder}
   *
   * @param folder of the job; its files are read when they are asked for
   */
  static JobFiles in(Path folder) {
    return new JobFiles() {
      @Override
      public String place() {
        return folder.toString();
      }

      @Override
      public boolean has(String name) {
        return Files.isRegularFile(folder.resolve(name));
      }

      @Override
      public long size(String name) throws IOException {
        return Files.size(folder.resolve(name));
      }

      @Override
      public byte[] read(String name) throws IOException {
        return Files.readAllBytes(folder.resolve(name));
      }

      @Override
      public InputStream open(String name) throws IOException {
        return Files.newInputStream(folder.resolve(name));
      }

      @Override
      public Instant changed(String name) throws IOException {
        return Files.getLastModifiedTime(folder.resolve(name)).toInstant();
      }
    };
  }

  /**
   * {@return the same files, one of them replaced by a text}
   *
   * @param name of the file replaced, or added
   * @param text what stands in it
   */
  default JobFiles with(String name, String text) {
    JobFiles others = this;
    JobFiles own = of(Map.of(name, text));
    return new JobFiles() {
      private JobFiles holder(String wanted) {
        return wanted.equals(name) ? own : others;
      }

      @Override
      public String place() {
        return others.place();
      }

      @Override
      public boolean has(String wanted) {
        return holder(wanted).has(wanted);
      }

      @Override
      public long size(String wanted) throws IOException {
        return holder(wanted).size(wanted);
      }

      @Override
      public byte[] read(String wanted) throws IOException {
        return holder(wanted).read(wanted);
      }

      @Override
      public InputStream open(String wanted) throws IOException {
        return holder(wanted).open(wanted);
      }

      @Override
      public Instant changed(String wanted) throws IOException {
        return holder(wanted).changed(wanted);
      }
    };
  }

  /**
   * {@return the same files as they were when each was first read: what is computed and what is
   * passed on with it are of one state, whatever happens to the folder meanwhile} For use by one
   * thread until all are read, then by several.
   */
  default JobFiles asFirstRead() {
    return new FilesOnceRead(this, true);
  }

  /**
   * {@return files held as text; a picture among them as Base64}
   *
   * @param texts by name of the file
   */
  static JobFiles of(Map<String, String> texts) {
    Map<String, String> copy = Map.copyOf(texts);
    return new JobFiles() {
      @Override
      public String place() {
        return "the data that came with the document";
      }

      @Override
      public boolean has(String name) {
        return copy.containsKey(name);
      }

      @Override
      public long size(String name) {
        return read(name).length;
      }

      @Override
      public byte[] read(String name) {
        String text = Optional.ofNullable(copy.get(name)).orElse("");
        return NAMES.contains(name)
            ? text.getBytes(StandardCharsets.UTF_8)
            : Base64.getMimeDecoder().decode(text);
      }
    };
  }
}
