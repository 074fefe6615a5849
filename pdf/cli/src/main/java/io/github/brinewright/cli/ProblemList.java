package io.github.brinewright.cli;

import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemCode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Problems as lines: of each kind in a file the first ones, and how many more there are.
 *
 * @param problems in the order in which they were found
 * @param words of a problem
 */
record ProblemList(List<Problem> problems, Function<Problem, String> words) {
  /** As many as a person reads and mends in one go. */
  static final int MOST_OF_A_KIND = 20;

  /** Problems of a file that are mended alike. */
  private record Kind(String file, ProblemCode code, String column) {}

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    Map<Kind, Integer> counts = new LinkedHashMap<>();
    for (Problem problem : problems) {
      if (counts.merge(kind(problem), 1, Integer::sum) <= MOST_OF_A_KIND) {
        lines.add(words.apply(problem));
      }
    }
    counts.forEach(
        (kind, count) -> {
          if (count > MOST_OF_A_KIND) {
            lines.add(more(kind, count - MOST_OF_A_KIND));
          }
        });
    return lines;
  }

  private static Kind kind(Problem problem) {
    return new Kind(problem.file(), problem.code(), problem.column());
  }

  private static String more(Kind kind, int count) {
    String where =
        kind.column().isEmpty() ? kind.file() : kind.file() + ", column " + kind.column();
    return where + ": and " + count + " more of this kind";
  }
}
