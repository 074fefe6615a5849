package io.github.brinewright.job;

/**
 * Something wrong in a job folder.
 *
 * @param file name of the file within the folder
 * @param row line of the file, counted from 1; 0 when it concerns the file as a whole
 * @param column name of the column; empty when it concerns the row or the file
 * @param value what was written there, shortened; may be empty
 * @param advice what is wrong, the limit, and what to do
 */
public record Problem(String file, int row, String column, String value, String advice) {
  private static final int LONGEST_VALUE = 40;

  /** Shortens {@code value} so that a message stays readable. */
  public Problem {
    if (value.length() > LONGEST_VALUE) {
      value = value.substring(0, LONGEST_VALUE) + "… (" + value.length() + " characters)";
    }
    value = value.replaceAll("\\p{Cntrl}", "·");
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (row > 0) {
      text.append(", row ").append(row);
    }
    if (!column.isEmpty()) {
      text.append(", column ").append(column);
    }
    text.append(": ");
    if (!value.isEmpty()) {
      text.append('"').append(value).append("\" ");
    }
    return text.append(advice).toString();
  }
}
