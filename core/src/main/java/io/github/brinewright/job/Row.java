package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;

/**
 * One row of a file. Each reading of a cell that fails notes a problem and gives nothing, so that
 * all problems of a row come out in one pass.
 */
final class Row {
  private static final String NOT_TESTED = "not tested";

  private final String file;
  private final int line;
  private final Consumer<Problem> problems;
  private final Map<String, String> values = new HashMap<>();
  private boolean broken;

  Row(String file, int line, Consumer<Problem> problems) {
    this.file = file;
    this.line = line;
    this.problems = problems;
  }

  Row with(Map<String, String> cells) {
    values.putAll(cells);
    return this;
  }

  /** Whether any reading of this row has failed. */
  boolean broken() {
    return broken;
  }

  /** Whether the row has cells; one with another number of fields than the header has none. */
  boolean isWhole() {
    return !values.isEmpty();
  }

  /** Notes what is wrong with a cell, or with the row when {@code column} is empty. */
  void note(String column, String value, ProblemCode code, Argument... arguments) {
    broken = true;
    problems.accept(
        new Problem(new Problem.Place(file, line, column), value, code, List.of(arguments)));
  }

  /** All filled cells as they stand, by column. */
  Map<String, String> cells() {
    Map<String, String> filled = new HashMap<>(values);
    filled.values().removeIf(String::isEmpty);
    return filled;
  }

  /** The text of a filled cell as it stands. */
  Optional<String> cell(String column) {
    return Optional.ofNullable(values.get(column))
        .filter(value -> !value.isEmpty() && !value.equalsIgnoreCase(NOT_TESTED));
  }

  boolean has(String column) {
    return cell(column).isPresent();
  }

  /** The value of a cell; an empty cell that must be filled is noted. */
  <T> Optional<T> read(Column column, Format<T> format) {
    Optional<String> text = cell(column.name());
    if (text.isEmpty() && column.needed() && isWhole()) {
      return needed(new Cell(this, column, ""));
    }
    return text.flatMap(filled -> format.read(new Cell(this, column, filled)));
  }

  /** Notes a column whose cell must be filled in this row. */
  void needed(Column column) {
    needed(new Cell(this, column, ""));
  }

  private static <T> Optional<T> needed(Cell empty) {
    if (empty.column().kind() == Column.Kind.SHORT_NAME) {
      return empty.refuse(ProblemCode.NOT_A_SHORT_NAME);
    }
    return empty.column().range().isPresent()
        ? empty.refuseWithBounds(ProblemCode.NUMBER_NEEDED)
        : empty.refuse(ProblemCode.TEXT_NEEDED);
  }

  /** Notes the emptier of two columns of which either both are filled or none. */
  void bothOrNone(Column first, Column second) {
    if (has(first.name()) != has(second.name())) {
      needed(has(first.name()) ? second : first);
    }
  }

  /** Notes money with more decimals than its currency has. */
  void checkMoney(String column, BigDecimal amount, CurrencyUnit currency) {
    if (amount.stripTrailingZeros().scale() > currency.getDecimalPlaces()) {
      note(
          column,
          amount.toPlainString(),
          ProblemCode.TOO_MANY_DECIMALS,
          new Argument.Text(currency.getCode()));
    }
  }

  /** Notes an id that is not known. */
  void unknown(String column, String id, List<String> known) {
    note(column, id, ProblemCode.ID_UNKNOWN, new Argument.Meant(id, known));
  }

  /** What the supplier makes, or empty when this row is broken or the library refuses it. */
  <T> Optional<T> build(Supplier<T> supplier) {
    if (broken) {
      return Optional.empty();
    }
    try {
      return Optional.of(supplier.get());
    } catch (IllegalArgumentException refused) {
      note("", "", ProblemCode.REFUSED, new Argument.Text(String.valueOf(refused.getMessage())));
      return Optional.empty();
    }
  }
}
