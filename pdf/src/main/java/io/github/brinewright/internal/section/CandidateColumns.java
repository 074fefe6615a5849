package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Candidates as the columns of tables, the recommended one marked; the softener that is in the
 * house before them.
 *
 * @param subject they belong to
 * @param candidates from left to right
 */
record CandidateColumns(Subject subject, List<Candidate> candidates) {
  /** The candidates by what they are compared by. */
  Table compared(CandidateRow... rows) {
    return table(
        "compare",
        Phrase.text("compare.row"),
        Arrays.stream(rows).map(row -> row.line(subject.present(), candidates)).toList());
  }

  Table table(String key, Phrase corner, List<Table.Line> lines) {
    Stream<Table.Column> now = subject.present().map(PresentColumn::head).stream();
    List<Table.Column> columns = Stream.concat(now, candidates.stream().map(this::column)).toList();
    return new Table(key, corner, columns, lines);
  }

  private Table.Column column(Candidate candidate) {
    Phrase name = Phrase.plain(candidate.softener().name());
    String best = subject.keeps() ? "now.best" : "compare.recommended";
    return subject.comparison().recommends(candidate)
        ? new Table.Column(candidate.softener().id(), Phrase.text(best, name), Table.Kind.CHOSEN)
        : new Table.Column(candidate.softener().id(), name, Table.Kind.VALUES);
  }
}
