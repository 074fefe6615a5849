package io.github.brinewright.cli;

import io.github.brinewright.comparison.HomeOutcome;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The rows that no home came of, each with the first that is wrong with it. */
final class Refusals {
  private final List<Problem> first = new ArrayList<>();

  /** Takes what is found, row by row. */
  void add(Problem problem) {
    boolean sameRow = !first.isEmpty() && first.get(first.size() - 1).row() == problem.row();
    if (problem.row() > 0 && !sameRow) {
      first.add(problem);
    }
  }

  /** They as outcomes, in the dealer's language. */
  Stream<HomeOutcome> outcomes(Dealer dealer) {
    ProblemWords words = new ProblemWords(dealer.locale());
    return first.stream()
        .map(each -> HomeOutcome.failed(each.file() + ":" + each.row(), words.say(each)));
  }
}
