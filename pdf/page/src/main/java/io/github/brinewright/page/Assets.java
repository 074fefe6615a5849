package io.github.brinewright.page;

import io.github.brinewright.proposal.DocumentFont;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Script, style and fonts of the page, which come with it. */
final class Assets {
  private Assets() {}

  static Reply text(String file, String type) throws IOException {
    try (InputStream in = Assets.class.getResourceAsStream(file)) {
      byte[] content = Objects.requireNonNull(in, file).readAllBytes();
      return Reply.of(type, new String(content, StandardCharsets.UTF_8));
    }
  }

  static Reply font(DocumentFont font) {
    return new Reply(Reply.OK, "font/ttf", font.trueType(), "");
  }
}
