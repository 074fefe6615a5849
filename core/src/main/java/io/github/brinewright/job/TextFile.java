package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Reads a file as strict UTF-8; a byte order mark of UTF-8 is passed over. */
final class TextFile {
  static final long LARGEST = 20_000_000;
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TextFile() {}

  /** The text, or empty after noting what is wrong. */
  static Optional<String> read(JobFiles files, String name, List<Problem> problems) {
    try {
      if (files.size(name) > LARGEST) {
        problems.add(Problem.whole(name, ProblemCode.FILE_TOO_LARGE));
        return Optional.empty();
      }
      return decode(files.read(name), name, problems);
    } catch (IOException failure) {
      problems.add(
          Problem.whole(name, ProblemCode.FILE_UNREADABLE, new Argument.Text(said(failure))));
      return Optional.empty();
    }
  }

  private static Optional<String> decode(byte[] bytes, String name, List<Problem> problems) {
    if (bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF) {
      problems.add(Problem.whole(name, ProblemCode.UTF_16));
      return Optional.empty();
    }
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
      boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
      return Optional.of(marked ? text.substring(1) : text);
    } catch (CharacterCodingException notUtf8) {
      Problem.Place place = new Problem.Place(name, lineAt(bytes, buffer.position()), "");
      problems.add(new Problem(place, "", ProblemCode.NOT_UTF_8, List.of()));
      return Optional.empty();
    }
  }

  private static int lineAt(byte[] bytes, int end) {
    int line = 1;
    for (int i = 0; i < end; i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return line;
  }

  /** What an exception says, for a problem. */
  static String said(Exception failure) {
    return String.valueOf(failure.getMessage());
  }
}
