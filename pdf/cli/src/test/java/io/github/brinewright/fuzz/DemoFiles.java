package io.github.brinewright.fuzz;

import io.github.brinewright.job.JobFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The files of the demo town, of its homes the first ones. */
final class DemoFiles {
  static final Path FOLDER = Path.of("../../samples/job");
  private static final int HOMES = 5;

  private DemoFiles() {}

  static Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name : JobFiles.NAMES) {
      texts.put(name, text(name));
    }
    texts.computeIfPresent(
        "sites.csv", (name, all) -> String.join("\n", all.lines().limit(HOMES + 1).toList()));
    return texts;
  }

  private static String text(String name) {
    try {
      return Files.readString(FOLDER.resolve(name));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The same files, one of them of other bytes. */
  static JobFiles with(String changed, byte[] content) {
    JobFiles others = JobFiles.of(texts());
    return new JobFiles() {
      @Override
      public String place() {
        return others.place();
      }

      @Override
      public boolean has(String name) {
        return name.equals(changed) || others.has(name);
      }

      @Override
      public long size(String name) throws IOException {
        return read(name).length;
      }

      @Override
      public byte[] read(String name) throws IOException {
        return name.equals(changed) ? content.clone() : others.read(name);
      }
    };
  }
}
