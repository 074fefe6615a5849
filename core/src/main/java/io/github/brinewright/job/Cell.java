package io.github.brinewright.job;

import java.util.Optional;

/**
 * A filled cell.
 *
 * @param row it stands in
 * @param column it stands under
 * @param text of it, without blanks around it
 */
record Cell(Row row, Column column, String text) {
  /** A part of a cell that lists several things. */
  Cell part(String part) {
    return new Cell(row, column, part);
  }

  /** Notes what is wrong; there is no value then. */
  <T> Optional<T> refuse(ProblemCode code, Problem.Argument... arguments) {
    row.note(column.name(), text, code, arguments);
    return Optional.empty();
  }

  /** Notes a problem whose arguments are the lowest and the highest of the column. */
  <T> Optional<T> refuseWithBounds(ProblemCode code) {
    return refuse(
        code,
        Problem.Argument.Number.of(column.bounds().low()),
        Problem.Argument.Number.of(column.bounds().high()));
  }
}
