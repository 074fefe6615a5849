package io.github.brinewright.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/**
 * The characters of a file as strict UTF-8, a piece at a time; a byte order mark of UTF-8 is passed
 * over. What is wrong is a {@link TextException} that knows its line.
 */
final class TextReader extends Reader {
  /** Longer than any line whose cells keep their own limit. */
  static final int LONGEST_LINE = 1_500_000;

  private static final int PIECE = 16_384;
  private static final int UTF_16_MARK = 0xFE + 0xFF;
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final InputStream in;
  private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
  private final ByteBuffer bytes = ByteBuffer.allocate(PIECE).limit(0);
  private final CharBuffer chars = CharBuffer.allocate(PIECE).limit(0);
  private boolean ended;
  private int line = 1;
  private int inLine;

  TextReader(InputStream in) throws IOException {
    this.in = in;
    readOn();
    if (bytes.limit() > 1 && (bytes.get(0) & 0xFF) + (bytes.get(1) & 0xFF) == UTF_16_MARK) {
      throw new TextException(ProblemCode.UTF_16, 0);
    }
    if (decode() && chars.get(chars.position()) == BYTE_ORDER_MARK) {
      chars.get();
    }
  }

  @Override
  public int read(char[] to, int from, int count) throws IOException {
    if (!chars.hasRemaining() && !decode()) {
      return -1;
    }
    int given = Math.min(count, chars.remaining());
    chars.get(to, from, given);
    return given;
  }

  /** Makes further characters of the bytes; false at the end. */
  private boolean decode() throws IOException {
    chars.clear();
    CoderResult result = decoder.decode(bytes, chars, ended);
    while (chars.position() == 0 && !result.isError() && !ended) {
      readOn();
      result = decoder.decode(bytes, chars, ended);
    }
    chars.flip();
    if (!chars.hasRemaining() && result.isError()) {
      throw new TextException(ProblemCode.NOT_UTF_8, line);
    }
    count();
    return chars.hasRemaining();
  }

  private void readOn() throws IOException {
    bytes.compact();
    int wanted = bytes.remaining();
    int read = in.readNBytes(bytes.array(), bytes.position(), wanted);
    ended = read < wanted;
    bytes.position(bytes.position() + read).flip();
  }

  private void count() throws TextException {
    for (int i = 0; i < chars.limit(); i++) {
      char each = chars.get(i);
      line += each == '\n' ? 1 : 0;
      inLine = each == '\n' || each == '\r' ? 0 : inLine + 1;
      if (inLine > LONGEST_LINE) {
        throw new TextException(ProblemCode.LINE_TOO_LONG, line, LONGEST_LINE);
      }
    }
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
