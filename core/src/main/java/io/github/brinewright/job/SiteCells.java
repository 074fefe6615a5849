package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The cells of one home in sites.csv, as they are written there and not yet understood. */
public final class SiteCells {
  /** Name of the file. */
  public static final String FILE = SiteColumns.COLUMNS.file();

  private static final String ID = "site_id";

  private SiteCells() {}

  /**
   * {@return how a constant is written in a cell}
   *
   * @param constant as {@code WaterSource.PRIVATE_WELL}
   */
  public static String word(Enum<?> constant) {
    return Formats.word(constant);
  }

  /**
   * {@return the filled cells of a home by column; empty when no row has its id}
   *
   * @param files of the job
   * @param siteId id of the home
   * @throws IOException when sites.csv is not there, or is no CSV
   */
  public static Optional<Map<String, String>> of(JobFiles files, String siteId) throws IOException {
    if (files instanceof FilesOnceRead once && once.keepsHomes()) {
      return Optional.ofNullable(once.sites().get(siteId));
    }
    List<Map<String, String>> found = new ArrayList<>();
    each(
        files,
        cells -> {
          boolean wanted = cells.getOrDefault(ID, "").equals(siteId);
          return !wanted || !found.add(cells);
        });
    return found.stream().findFirst();
  }

  /**
   * {@return the filled cells of every home by its id, in the order of the file}
   *
   * @param files of the job
   * @throws IOException when sites.csv is not there, or is no CSV
   */
  public static Map<String, Map<String, String>> all(JobFiles files) throws IOException {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    each(
        files,
        cells -> {
          all.putIfAbsent(cells.getOrDefault(ID, ""), cells);
          return true;
        });
    return all;
  }

  /** Reads row by row for as long as more are wanted. */
  private static void each(JobFiles files, Predicate<Map<String, String>> more) throws IOException {
    try (CSVReader in = Csv.reader(TextFile.open(files, FILE))) {
      String[] first = in.readNext();
      List<String> header =
          first == null ? List.of() : Arrays.stream(first).map(String::strip).toList();
      String[] row = in.readNext();
      while (row != null && more.test(filled(header, row))) {
        row = in.readNext();
      }
    } catch (TextException noText) {
      throw new IOException(noText.in(FILE).toString(), noText);
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

  /**
   * {@return the filled cells of a home by column, in the order of {@link SiteColumns#all()}}
   *
   * @param home as it is quoted
   */
  public static Map<String, String> of(QuotedHome home) {
    return SiteColumns.COLUMNS.cells(home);
  }

  /**
   * {@return the text of a sites.csv with one home: a column for each filled cell, in a fixed
   * order}
   *
   * @param cells by column, as they are written
   */
  public static String csv(Map<String, String> cells) {
    return Csv.write(SiteColumns.all(), List.of(cells));
  }
}
