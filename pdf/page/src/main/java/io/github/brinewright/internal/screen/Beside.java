package io.github.brinewright.internal.screen;

import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is wrong with answers: the reader's own words, beside the field that they are about. */
public final class Beside {
  private Beside() {}

  /**
   * What is wrong by the name of the field; under no name what is about the row.
   *
   * @param problems of the row
   * @param labels of the fields by name
   * @param locale of the page
   */
  public static Map<String, String> of(
      List<Problem> problems, Map<String, String> labels, Locale locale) {
    ProblemWords words = new ProblemWords(locale);
    Map<String, String> said = new LinkedHashMap<>();
    for (Problem problem : problems) {
      String field = field(problem.column(), labels);
      String about = field.isEmpty() && !problem.column().isEmpty() ? problem.column() + ": " : "";
      said.merge(
          field, about + words.sayBeside(problem, labels), (one, other) -> one + " · " + other);
    }
    return said;
  }

  private static String field(String column, Map<String, String> labels) {
    return labels.containsKey(column)
        ? column
        : labels.keySet().stream()
            .filter(name -> !column.isEmpty() && name.startsWith(column + "_"))
            .findFirst()
            .orElse("");
  }
}
