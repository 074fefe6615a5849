package io.github.brinewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The documents that stand in a folder before others are written to it, looked for once.
 *
 * @param folder that they stand in
 * @param revisions the highest revision by the name of the first, 1 for a file without one
 */
record EarlierFiles(Path folder, Map<String, Integer> revisions) {
  private static final Pattern NAME = Pattern.compile("(.*?)(?:-r([1-9]\\d{0,2}))?\\.pdf");

  static EarlierFiles in(Path folder) throws IOException {
    Map<String, Integer> revisions = new HashMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      files
          .filter(Files::isRegularFile)
          .map(file -> NAME.matcher(String.valueOf(file.getFileName())))
          .filter(Matcher::matches)
          .forEach(
              name -> {
                int number = name.group(2) == null ? 1 : Integer.parseInt(name.group(2));
                revisions.merge(name.group(1) + ".pdf", number, Math::max);
                // A home whose id ends like a revision has a first file of its own.
                revisions.merge(name.group(), 1, Math::max);
              });
    }
    return new EarlierFiles(folder, revisions);
  }

  /** The highest revision of a document; 0 where there is none. */
  int highest(String first) {
    return revisions.getOrDefault(first, 0);
  }
}
