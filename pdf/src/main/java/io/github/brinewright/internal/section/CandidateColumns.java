package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import java.util.Arrays;
import java.util.List;

/**
 * Candidates as the columns of tables, the recommended one marked.
 *
 * @param comparison they belong to
 * @param candidates from left to right
 */
record CandidateColumns(Comparison comparison, List<Candidate> candidates) {
  /** The candidates by what they are compared by. */
  Table compared(CandidateRow... rows) {
    return table(
        "compare",
        Phrase.text("compare.row"),
        Arrays.stream(rows).map(row -> row.line(candidates)).toList());
  }

  Table table(String key, Phrase corner, List<Table.Line> lines) {
    return new Table(key, corner, candidates.stream().map(this::column).toList(), lines);
  }

  private Table.Column column(Candidate candidate) {
    Phrase name = Phrase.plain(candidate.softener().name());
    return comparison.recommends(candidate)
        ? new Table.Column(
            candidate.softener().id(), Phrase.text("compare.recommended", name), Table.Kind.CHOSEN)
        : new Table.Column(candidate.softener().id(), name, Table.Kind.VALUES);
  }
}
