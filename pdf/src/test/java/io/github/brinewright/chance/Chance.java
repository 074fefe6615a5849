package io.github.brinewright.chance;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** What chance puts into the cells of a job's files; the same seed gives the same. */
final class Chance {
  private final SplittableRandom random;

  Chance(long seed) {
    random = new SplittableRandom(0x5EED_0F_40_11EL * (seed + 1));
  }

  /** Whether something is so that is so in a share of the cases. */
  boolean in(double share) {
    return random.nextDouble() < share;
  }

  /** From low to high, both included. */
  int whole(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  double between(double low, double high) {
    return random.nextDouble(low, high);
  }

  String number(double low, double high, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", between(low, high));
  }

  String pick(String... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** Cells by column, in order; rows may have different columns. */
  static final class Cells {
    private final Map<String, String> cells = new LinkedHashMap<>();

    Cells put(String column, Object cell) {
      cells.put(column, String.valueOf(cell));
      return this;
    }

    private String cell(String column) {
      return cells.getOrDefault(column, "");
    }

    /** A table of rows, with every column that any of them has. */
    static String csv(List<Cells> rows) {
      List<String> columns =
          rows.stream().flatMap(row -> row.cells.keySet().stream()).distinct().toList();
      String body =
          rows.stream()
              .map(row -> columns.stream().map(row::cell).collect(Collectors.joining(",")))
              .collect(Collectors.joining("\n"));
      return String.join(",", columns) + "\n" + body + "\n";
    }

    /** A file of keys and values. */
    String properties() {
      return cells.entrySet().stream()
          .map(cell -> cell.getKey() + "=" + cell.getValue() + "\n")
          .collect(Collectors.joining());
    }
  }
}
