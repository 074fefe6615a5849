package io.github.brinewright.job;

import java.io.IOException;

/**
 * Another form in which a table of a job may stand, such as a spreadsheet. Found by {@link
 * java.util.ServiceLoader}; what it gives is the text of the CSV file that it stands for, with the
 * same rows, so that there is one reader and one set of messages for all forms.
 */
public interface TableFormat {
  /** {@return the ending of its files, without the point, as in "xlsx"} */
  String extension();

  /**
   * {@return the text of the CSV file that the content stands for: a line for each row, empty ones
   * too, cells as they are to be typed}
   *
   * @param content of the file
   * @throws TableFormatException when something in it has no such text
   * @throws IOException when it is no such file, or larger than it may be
   */
  String toCsv(byte[] content) throws IOException, TableFormatException;

  /**
   * {@return the content of a file that stands for a CSV file}
   *
   * @param csv text of a table, its names in the first line
   * @param name of the table, as in "units"
   * @throws IOException when the text is no CSV
   */
  byte[] fromCsv(String csv, String name) throws IOException;
}
