package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A table with a column for each candidate, the recommended one marked in words and by a rule. */
final class CandidateTable {
  private static final double FIRST_SHARE = 0.26;

  private final Kit kit;
  private final List<Candidate> candidates;
  private final List<List<Cell>> rows = new ArrayList<>();

  CandidateTable(Kit kit) {
    this(kit, kit.columns());
  }

  CandidateTable(Kit kit, List<Candidate> candidates) {
    this.kit = kit;
    this.candidates = candidates;
  }

  /** Adds rows. */
  CandidateTable rows(CandidateRow... all) {
    for (CandidateRow row : all) {
      addRow(row.name(kit), candidate -> row.text(kit, candidate), row.total());
    }
    return this;
  }

  /** Adds a row: a name, and a text for each candidate. */
  CandidateTable row(String name, Function<Candidate, String> text) {
    return addRow(name, text, false);
  }

  /** Adds a row that stands out. */
  CandidateTable total(String name, Function<Candidate, String> text) {
    return addRow(name, text, true);
  }

  private CandidateTable addRow(String name, Function<Candidate, String> text, boolean total) {
    List<Cell> row = new ArrayList<>();
    row.add((total ? kit.strong(name) : kit.cell(name)).heading());
    for (Candidate candidate : candidates) {
      boolean bold = total || kit.comparison().recommends(candidate);
      String value = text.apply(candidate);
      row.add((bold ? kit.strong(value) : kit.cell(value)).right());
    }
    rows.add(row);
    return this;
  }

  Block in(Tag section, String firstHeader) {
    List<Cell> header = new ArrayList<>();
    header.add(kit.strong(firstHeader));
    int marked = -1;
    for (Candidate candidate : candidates) {
      String name = candidate.softener().name();
      if (kit.comparison().recommends(candidate)) {
        marked = header.size();
        name = kit.text("compare.recommended", Figure.of(name));
      }
      header.add(kit.strong(name).right());
    }
    List<Double> shares = new ArrayList<>(List.of(FIRST_SHARE));
    candidates.forEach(candidate -> shares.add((1 - FIRST_SHARE) / candidates.size()));
    return new Table(section.child(Tag.Role.TABLE), shares, header, rows, marked);
  }
}
