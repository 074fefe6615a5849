package io.github.brinewright.cli;

import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemCode;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Problems said as they are found: of each kind in a file the first ones, the others counted. */
final class ProblemList {
  /** As many as a person reads and mends in one go. */
  static final int MOST_OF_A_KIND = 20;

  private final Function<Problem, String> words;
  private final PrintWriter err;
  private final Map<Kind, Integer> counts = new LinkedHashMap<>();
  private int count;

  /** Problems of a file that are mended alike. */
  private record Kind(String file, ProblemCode code, String column) {}

  ProblemList(Function<Problem, String> words, PrintWriter err) {
    this.words = words;
    this.err = err;
  }

  /** Says all that is wrong with what was read whole. */
  static void say(List<Problem> all, PrintWriter err) {
    ProblemList problems = new ProblemList(Problem::toString, err);
    all.forEach(problems::add);
    problems.end();
  }

  void add(Problem problem) {
    count++;
    if (counts.merge(kind(problem), 1, Integer::sum) <= MOST_OF_A_KIND) {
      err.println(words.apply(problem));
    }
  }

  /** Says how many more there were of each kind. */
  void end() {
    counts.forEach(
        (kind, all) -> {
          if (all > MOST_OF_A_KIND) {
            err.println(more(kind, all - MOST_OF_A_KIND));
          }
        });
  }

  /** How many there were, said or not. */
  int count() {
    return count;
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
