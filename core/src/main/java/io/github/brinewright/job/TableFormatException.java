package io.github.brinewright.job;

/** A cell of a table that has no text in CSV, such as a formula that came to an error. */
public final class TableFormatException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String cell;

  /**
   * Names the cell.
   *
   * @param cell as the program calls it that the table was made with, as in "C7"
   * @param value what stands there
   */
  public TableFormatException(String cell, String value) {
    super(value);
    this.cell = cell;
  }

  /** {@return the cell, as in "C7"} */
  public String cell() {
    return cell;
  }
}
