package io.github.brinewright.internal.screen;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Table;
import io.github.brinewright.words.Wording;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tables of documents as HTML. Each is within a region of its own that a narrow screen scrolls.
 *
 * @param words in the reader's language
 */
record Tables(Wording words) {
  Html table(Table table) {
    Html html = begin(table.corner().in(words)).open("thead").open("tr");
    html.element("td", table.corner().in(words));
    for (Table.Column column : table.columns()) {
      html.element("th", column.head().in(words), "scope", "col", "class", style(column.kind()));
    }
    html.close("tr").close("thead").open("tbody");
    table.lines().forEach(line -> html.add(line(table, line)));
    return end(html);
  }

  private Html line(Table table, Table.Line line) {
    Html html = new Html().open("tr", "class", line.total() ? "total" : "line");
    html.element("th", line.label().in(words), "scope", "row");
    for (int i = 0; i < line.cells().size(); i++) {
      String marked = line.marked().contains(i) ? " marked" : "";
      String style = style(table.columns().get(i).kind()) + marked;
      html.element("td", line.cells().get(i).in(words), "class", style);
    }
    return html.close("tr");
  }

  Html rows(Rows rows) {
    Html html = begin(rows.heads().get(0).in(words)).open("thead").open("tr");
    rows.heads().forEach(head -> html.element("th", head.in(words), "scope", "col"));
    html.close("tr").close("thead").open("tbody");
    rows.rows().forEach(row -> html.add(row(rows, row)));
    return end(html);
  }

  private Html row(Rows rows, Row row) {
    Html html = new Html().open("tr", "class", row.total() ? "total" : "line");
    html.element("th", row.label().in(words), "scope", "row");
    Stream.of(row.value(), row.note())
        .limit(rows.heads().size() - 1)
        .forEach(cell -> html.element("td", cell.in(words)));
    return html.close("tr");
  }

  /** The data of a chart. */
  Html data(List<Phrase> heads, List<List<Phrase>> lines) {
    Html html = begin(heads.get(0).in(words)).open("thead").open("tr");
    heads.forEach(head -> html.element("th", head.in(words), "scope", "col"));
    html.close("tr").close("thead").open("tbody");
    for (List<Phrase> line : lines) {
      html.open("tr").element("th", line.get(0).in(words), "scope", "row");
      line.stream().skip(1).forEach(cell -> html.element("td", cell.in(words)));
      html.close("tr");
    }
    return end(html);
  }

  private Html begin(String name) {
    String label = name.isBlank() ? words.text("page.row") : name;
    return new Html()
        .open("div", "class", "scroll", "role", "group", "tabindex", "0", "aria-label", label)
        .open("table");
  }

  private static Html end(Html html) {
    return html.close("tbody").close("table").close("div");
  }

  private static String style(Table.Kind kind) {
    return switch (kind) {
      case TEXT -> "say";
      case VALUES, MAIN -> "value";
      case CHOSEN -> "value chosen";
    };
  }
}
