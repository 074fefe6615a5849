package io.github.brinewright.internal.screen;

import io.github.brinewright.model.Element;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Together;
import io.github.brinewright.words.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The fields of the sections of a form. */
final class FormFields {
  private static final String NOT_TESTED = "not tested";

  private FormFields() {}

  private static Stream<Field> in(List<Section> sections) {
    return sections.stream().flatMap(section -> of(section.elements()));
  }

  private static Stream<Field> of(List<Element> elements) {
    return elements.stream()
        .flatMap(
            element -> {
              if (element instanceof Together together) {
                return of(together.elements());
              }
              return element instanceof Fields fields
                  ? fields.entries().stream().map(Fields.Entry::field)
                  : Stream.empty();
            });
  }

  /** What stands in them, by name. */
  static Map<String, String> values(List<Section> sections) {
    Map<String, String> values = new LinkedHashMap<>();
    in(sections).forEach(field -> values.put(field.name(), shown(field.value())));
    return values;
  }

  /** What the page shows of a value: what was not tested is blank, with its box ticked. */
  static String shown(String value) {
    return value.equalsIgnoreCase(NOT_TESTED) ? "" : value;
  }

  /** Their labels, by name. */
  static Map<String, String> labels(List<Section> sections, Wording words) {
    Map<String, String> labels = new LinkedHashMap<>();
    in(sections).forEach(field -> labels.put(field.name(), field.label().in(words)));
    return labels;
  }
}
