package io.github.brinewright.exchange;

import com.fasterxml.jackson.jr.ob.JSON;
import com.fasterxml.jackson.jr.ob.JSON.Feature;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** JSON as it is written, and the schemas that are published with it. */
final class JsonTexts {
  private static final JSON WRITER =
      JSON.std.with(Feature.PRETTY_PRINT_OUTPUT, Feature.WRITE_NULL_PROPERTIES);

  private JsonTexts() {}

  /** Maps, lists, texts, numbers and nulls as JSON, over several lines. */
  static String write(Object value) {
    try {
      return WRITER.asString(value);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** A schema that lies beside this class. */
  static String schema(String file) {
    try (InputStream in = Objects.requireNonNull(JsonTexts.class.getResourceAsStream(file), file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
