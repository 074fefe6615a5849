package io.github.brinewright.internal.visit;

import io.github.brinewright.words.UnitSystem;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * What a page asks with: the answers on it, what is ticked, what is tried.
 *
 * @param values by name: {@code field.people}, {@code extra.leak-alarm}, {@code try.years} …
 */
public record Asked(Map<String, String> values) {
  private static final String FIELD = "field.";
  private static final String EXTRA = "extra.";

  /**
   * Keeps its own copy.
   *
   * @param values by name
   */
  public Asked {
    values = Map.copyOf(values);
  }

  /** One value; empty where there is none. */
  public String value(String name) {
    return values.getOrDefault(name, "").strip();
  }

  /** The language of the page, as a code of ISO 639; empty for the dealer's. */
  public String language() {
    return value("language");
  }

  /** The units of the page. */
  public UnitSystem units(UnitSystem otherwise) {
    return switch (value("units")) {
      case "us" -> UnitSystem.US;
      case "metric" -> UnitSystem.METRIC;
      default -> otherwise;
    };
  }

  /**
   * Which home of the folder it is about, as {@link Folder#named} knows it; empty for a new one.
   */
  public String home() {
    return value("home");
  }

  /** The same about another home. */
  public Asked at(String home) {
    Map<String, String> others = new LinkedHashMap<>(values);
    others.put("home", home);
    return new Asked(others);
  }

  /** What stands in the fields that are not as in the folder. */
  Map<String, String> fields() {
    return beginning(FIELD);
  }

  /** The items that are ticked. */
  public Set<String> extras() {
    return new LinkedHashSet<>(beginning(EXTRA).keySet());
  }

  private Map<String, String> beginning(String prefix) {
    Map<String, String> found = new LinkedHashMap<>();
    values.forEach(
        (name, value) -> {
          if (name.startsWith(prefix)) {
            found.put(name.substring(prefix.length()), value);
          }
        });
    return found;
  }
}
