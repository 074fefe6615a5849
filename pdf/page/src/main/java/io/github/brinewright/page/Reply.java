package io.github.brinewright.page;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * What is answered.
 *
 * @param status of HTTP
 * @param type of the content
 * @param content its bytes
 * @param fileName of a document to keep; empty for what is shown
 */
record Reply(int status, String type, byte[] content, String fileName) {
  static final int OK = 200;
  static final int BAD = 400;
  static final int FORBIDDEN = 403;
  static final int NOT_FOUND = 404;
  static final int WRONG_METHOD = 405;
  static final int CONFLICT = 409;
  static final int TOO_LARGE = 413;
  static final int UNPROCESSABLE = 422;
  static final int FAULT = 500;

  static Reply text(int status, String said) {
    return new Reply(status, "text/plain; charset=utf-8", utf8(said), "");
  }

  static Reply of(String type, String text) {
    return new Reply(OK, type + "; charset=utf-8", utf8(text), "");
  }

  static Reply json(int status, Map<String, ?> fields) throws IOException {
    return new Reply(status, "application/json", JSON.std.asBytes(fields), "");
  }

  static Reply pdf(byte[] content, String fileName) {
    return new Reply(OK, "application/pdf", content, fileName);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
