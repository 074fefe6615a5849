package io.github.brinewright.page;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Names and values as forms send them: application/x-www-form-urlencoded. */
final class FormBody {
  private static final int MOST = 500;
  private static final int LONGEST = 4_000;

  private FormBody() {}

  /** The values by name; empty where it is no form, or more than one has. */
  static Optional<Map<String, String>> read(byte[] body) {
    Map<String, String> values = new LinkedHashMap<>();
    String text = new String(body, StandardCharsets.US_ASCII);
    for (String pair : text.split("&", MOST + 2)) {
      int equals = pair.indexOf('=');
      if (pair.isEmpty()) {
        continue;
      }
      Optional<String> name = decoded(pair.substring(0, Math.max(0, equals)));
      Optional<String> value = decoded(pair.substring(equals + 1));
      if (equals < 1 || name.isEmpty() || value.isEmpty() || values.size() == MOST) {
        return Optional.empty();
      }
      values.put(name.get(), value.get());
    }
    return Optional.of(values);
  }

  private static Optional<String> decoded(String text) {
    try {
      return Optional.of(URLDecoder.decode(text, StandardCharsets.UTF_8))
          .filter(decoded -> decoded.length() <= LONGEST);
    } catch (IllegalArgumentException malformed) {
      return Optional.empty();
    }
  }
}
