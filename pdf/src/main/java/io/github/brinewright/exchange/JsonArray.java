package io.github.brinewright.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import org.jspecify.annotations.Nullable;

/** An array in JSON that is written element by element; nothing is written where there is none. */
final class JsonArray implements AutoCloseable {
  private final Writer out;
  private @Nullable JsonGenerator json;

  /** What it writes to stays open. */
  JsonArray(Writer out) {
    this.out = out;
  }

  void add(Object element) {
    try {
      if (json == null) {
        json = JsonTexts.generator(out);
        json.writeStartArray();
      }
      JsonTexts.write(element, json);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @Override
  public void close() {
    try {
      if (json != null) {
        json.writeEndArray();
        json.flush();
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
