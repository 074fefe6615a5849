package io.github.brinewright.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.jr.ob.JSON;
import com.fasterxml.jackson.jr.ob.JSON.Feature;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
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

  /** What writes JSON piece by piece, laid out in the same way. */
  static JsonGenerator generator(Writer out) throws IOException {
    return WRITER.getStreamingFactory().createGenerator(out).useDefaultPrettyPrinter();
  }

  /** The same as a piece of what is being written. */
  static void write(Object value, JsonGenerator to) throws IOException {
    WRITER.write(value, to);
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
