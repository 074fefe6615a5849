package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.CSVWriter;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The cells of one home in sites.csv, as they are written there and not yet understood. */
public final class SiteCells {
  /** Name of the file. */
  public static final String FILE = SiteReader.SHAPE.file();

  private static final String ID = "site_id";

  private SiteCells() {}

  /** How a constant is written in a cell. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** Columns that sites.csv may have, those it must have first. */
  public static List<String> columns() {
    return SiteReader.SHAPE.known();
  }

  /**
   * The filled cells of a home by column; empty when no row has its id.
   *
   * @throws IOException when sites.csv is not there, or is no CSV
   */
  public static Optional<Map<String, String>> of(JobFiles files, String siteId) throws IOException {
    List<Problem> problems = new ArrayList<>();
    Optional<String> text = TextFile.read(files, FILE, problems);
    if (text.isEmpty()) {
      throw new IOException(problems.get(0).toString());
    }
    try (CSVReader in = Table.reader(text.get())) {
      List<String[]> rows = in.readAll();
      List<String> header =
          rows.isEmpty() ? List.of() : Arrays.stream(rows.get(0)).map(String::strip).toList();
      return rows.stream()
          .skip(1)
          .map(row -> filled(header, row))
          .filter(cells -> siteId.equals(cells.get(ID)))
          .findFirst();
    } catch (CsvException malformed) {
      throw new IOException(FILE + " cannot be read: " + malformed.getMessage(), malformed);
    }
  }

  private static Map<String, String> filled(List<String> header, String[] row) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(header.size(), row.length); i++) {
      if (!row[i].isBlank()) {
        cells.put(header.get(i), row[i].strip());
      }
    }
    return cells;
  }

  /** The text of a sites.csv with one home: a column for each filled cell, in a fixed order. */
  public static String csv(Map<String, String> cells) {
    List<String> header =
        columns().stream()
            .filter(
                column ->
                    SiteReader.SHAPE.required().contains(column)
                        || !cells.getOrDefault(column, "").isBlank())
            .toList();
    StringWriter out = new StringWriter();
    try (CSVWriter csv = new CSVWriter(out)) {
      csv.writeNext(header.toArray(String[]::new), false);
      csv.writeNext(
          header.stream().map(column -> cells.getOrDefault(column, "")).toArray(String[]::new),
          false);
    } catch (IOException impossible) {
      throw new IllegalStateException("a text in memory cannot fail", impossible);
    }
    return out.toString();
  }
}
