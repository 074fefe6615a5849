package io.github.brinewright.job;

import com.opencsv.CSVReader;
import com.opencsv.exceptions.CsvException;
import com.opencsv.exceptions.CsvMalformedLineException;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Finds ids that stand twice among more rows than may be kept. A first reading of the file keeps a
 * hash of each id; in the second, only ids whose hash several rows have are kept and compared.
 */
final class IdHashes {
  /** As many rows as a file may have. */
  static final int MOST_ROWS = 5_000_000;

  private long[] hashes = new long[1_024];
  private int rows;
  private final Set<String> seen = new HashSet<>();

  private IdHashes() {}

  /**
   * Reads a file through; so it is known to be text to its end before anything is made of it.
   *
   * @throws TextException when it is none, or has too many rows
   */
  static IdHashes of(JobFiles files, String file, String column) throws IOException {
    IdHashes ids = new IdHashes();
    try (CSVReader in = Csv.reader(TextFile.open(files, file))) {
      ids.readAll(in, column);
    } catch (CsvMalformedLineException | CsvException malformed) {
      // Said where the rows are read.
    }
    ids.keepRepeated();
    return ids;
  }

  private void readAll(CSVReader in, String column) throws IOException, CsvException {
    String[] header = in.readNext();
    int at =
        header == null ? -1 : Arrays.stream(header).map(String::strip).toList().indexOf(column);
    for (String[] row = in.readNext(); row != null; row = in.readNext()) {
      add(at >= 0 && at < row.length ? hash(known(row[at].strip())) : 0);
    }
  }

  private void add(long hash) throws TextException {
    if (rows == MOST_ROWS) {
      throw new TextException(ProblemCode.TOO_MANY_ROWS, 0, MOST_ROWS);
    }
    if (rows == hashes.length) {
      hashes = Arrays.copyOf(hashes, Math.min(2 * rows, MOST_ROWS));
    }
    hashes[rows++] = hash;
  }

  /** Leaves, in their order, the hashes that several rows have. */
  private void keepRepeated() {
    Arrays.sort(hashes, 0, rows);
    int kept = 0;
    for (int i = 1; i < rows; i++) {
      boolean repeated = hashes[i] == hashes[i - 1];
      if (repeated && (kept == 0 || hashes[kept - 1] != hashes[i])) {
        hashes[kept++] = hashes[i];
      }
    }
    hashes = Arrays.copyOf(hashes, kept);
  }

  /** How many rows stand below the header. */
  int rows() {
    return rows;
  }

  /** Whether an earlier row of the second reading had the same id, in small or capital letters. */
  boolean repeats(String id) {
    String known = known(id);
    return Arrays.binarySearch(hashes, hash(known)) >= 0 && !seen.add(known);
  }

  private static String known(String id) {
    return id.toLowerCase(Locale.ROOT);
  }

  /** FNV-1a of 64 bits over the characters. */
  private static long hash(String text) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < text.length(); i++) {
      hash = (hash ^ text.charAt(i)) * 0x100000001b3L;
    }
    return hash;
  }
}
