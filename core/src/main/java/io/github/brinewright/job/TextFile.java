package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;

/** Opens a file as text, up to the size that its kind may have. */
final class TextFile {
  /** What a file may have that is held whole. */
  static final int LARGEST_MB = 20;

  /** What a file may have that is read row by row. */
  static final int LARGEST_OF_HOMES_MB = 2_000;

  private static final long MB = 1_000_000;

  private TextFile() {}

  /** The text, or empty after noting what is wrong. */
  static Optional<String> read(JobFiles files, String name, List<Problem> problems) {
    try (Reader text = open(files, name)) {
      StringWriter whole = new StringWriter();
      text.transferTo(whole);
      return Optional.of(whole.toString());
    } catch (IOException failure) {
      problems.add(problem(name, failure));
      return Optional.empty();
    }
  }

  /** The characters of a file, to be closed by the caller. */
  static Reader open(JobFiles files, String name) throws IOException {
    int most = name.equals(SiteCells.FILE) ? LARGEST_OF_HOMES_MB : LARGEST_MB;
    requireSize(files, name, most);
    return new TextReader(files.open(name));
  }

  /** Refuses a file that is larger than so many megabytes. */
  static void requireSize(JobFiles files, String name, int mostMb) throws IOException {
    if (files.size(name) > mostMb * MB) {
      throw new TextException(ProblemCode.FILE_TOO_LARGE, 0, mostMb);
    }
  }

  /** What kept a file from being read. */
  static Problem problem(String name, IOException failure) {
    return failure instanceof TextException text
        ? text.in(name)
        : Problem.whole(name, ProblemCode.FILE_UNREADABLE, new Argument.Text(said(failure)));
  }

  /** What an exception says, for a problem. */
  static String said(Exception failure) {
    return String.valueOf(failure.getMessage());
  }
}
