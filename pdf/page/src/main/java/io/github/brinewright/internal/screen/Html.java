package io.github.brinewright.internal.screen;

/** Writes HTML: tags are ours, all text is escaped. */
public final class Html {
  private final StringBuilder out = new StringBuilder();

  /**
   * Opens an element.
   *
   * @param tag its name
   * @param attributes names and values in turn; of a value that is empty only the name is written
   * @return this
   */
  Html open(String tag, String... attributes) {
    out.append('<').append(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]);
      if (!attributes[i + 1].isEmpty()) {
        out.append("=\"").append(escaped(attributes[i + 1])).append('"');
      }
    }
    out.append('>');
    return this;
  }

  /** Closes an element. */
  Html close(String tag) {
    out.append("</").append(tag).append('>');
    return this;
  }

  /** Writes text. */
  Html text(String text) {
    out.append(escaped(text));
    return this;
  }

  /** Writes an element that holds text alone. */
  Html element(String tag, String text, String... attributes) {
    return open(tag, attributes).text(text).close(tag);
  }

  /** Writes what is HTML already. */
  Html add(Html other) {
    out.append(other.out);
    return this;
  }

  /** Writes a picture of our own. */
  Html svg(String svg) {
    out.append(svg);
    return this;
  }

  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      switch (letter) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(letter);
      }
    }
    return safe.toString();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
