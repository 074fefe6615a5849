package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The ways to go on as the columns of a table, the advised one marked.
 *
 * @param study that they belong to
 */
record ServiceColumns(ServiceStudy study) {
  private static boolean saysSomething(Table.Line line) {
    return !line.cells().stream().allMatch(ServiceRow.NONE::equals);
  }

  private boolean atOtherHours() {
    return study.distinctOptions().stream().map(option -> option.bed().hour()).distinct().count()
        > 1;
  }

  Table table() {
    List<ServiceOption> options = study.distinctOptions();
    List<ServiceRow> rows = new ArrayList<>(Arrays.asList(ServiceRow.values()));
    if (options.stream().noneMatch(option -> option.kind() == Kind.SET_RIGHT)) {
      rows.remove(ServiceRow.PAYBACK);
    }
    if (!atOtherHours()) {
      rows.remove(ServiceRow.HOUR);
    }
    return new Table(
        "service",
        Phrase.text("service.row"),
        options.stream().map(this::column).toList(),
        rows.stream().map(row -> row.line(options)).filter(ServiceColumns::saysSomething).toList());
  }

  private Table.Column column(ServiceOption option) {
    boolean advised = study.advice().way() == option.kind();
    Phrase head = head(option);
    return new Table.Column(
        option.kind().name(),
        advised ? Phrase.text("service.advised", head) : head,
        advised ? Table.Kind.CHOSEN : Table.Kind.VALUES);
  }

  private static Phrase head(ServiceOption option) {
    String key = "service.kind." + option.kind().name();
    return option.kind() == Kind.REPLACED
        ? Phrase.text(key, Phrase.plain(option.candidate().orElseThrow().softener().name()))
        : Phrase.text(key);
  }
}
