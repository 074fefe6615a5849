package io.github.brinewright.internal.layout;

import io.github.brinewright.model.Table;
import java.util.ArrayList;
import java.util.List;

/**
 * Shares of a table's width for its columns, the labels first: values take what they need within
 * bounds; where there is text, it takes what is left.
 *
 * @param kinds of the columns after the labels
 * @param rows all cells, the header among them
 * @param width of the table, in points
 */
record ColumnShares(List<Table.Kind> kinds, List<List<Cell>> rows, double width) {
  /** Least share of a column of text; values break their lines rather. */
  private static final double LEAST_TEXT = 0.22;

  /** Least share of the labels where figures need their room. */
  private static final double LEAST_LABELS = 0.14;

  List<Double> shares() {
    return kinds.contains(Table.Kind.TEXT) ? withText() : valuesOnly();
  }

  private List<Double> valuesOnly() {
    double labels =
        switch (kinds.size()) {
          case 1 -> 1 - within(natural(1), 0.28, 0.38);
          case 2 -> 0.46;
          case 3, 4, 5, 6 -> 0.26;
          default -> 0.19;
        };
    double narrowest = within(1 - kinds.size() * unbroken(), LEAST_LABELS, 1);
    double first = Math.min(labels, narrowest);
    List<Double> shares = new ArrayList<>(List.of(first));
    kinds.forEach(kind -> shares.add((1 - first) / kinds.size()));
    return shares;
  }

  /** Share of a column in which no figure is broken, such as an amount with its currency. */
  private double unbroken() {
    return share(
        rows.stream()
            .skip(1)
            .flatMap(row -> row.stream().skip(1))
            .mapToDouble(Cell::longestWord)
            .max()
            .orElse(0));
  }

  private List<Double> withText() {
    List<Double> shares = new ArrayList<>(List.of(within(natural(0), 0.14, 0.46)));
    for (int i = 0; i < kinds.size(); i++) {
      boolean text = kinds.get(i) == Table.Kind.TEXT;
      shares.add(text ? 0 : within(figures(i + 1), 0.06, 0.18));
    }
    long texts = kinds.stream().filter(kind -> kind == Table.Kind.TEXT).count();
    double values = shares.stream().skip(1).mapToDouble(Double::doubleValue).sum();
    double left = 1 - shares.get(0) - texts * LEAST_TEXT;
    double narrower = Math.min(1, left / Math.max(values, LEAST_TEXT));
    double text = (1 - shares.get(0) - narrower * values) / texts;
    for (int i = 1; i < shares.size(); i++) {
      boolean takesRest = kinds.get(i - 1) == Table.Kind.TEXT;
      shares.set(i, takesRest ? text : narrower * shares.get(i));
    }
    return shares;
  }

  /** Share that a column would take without breaking a line. */
  private double natural(int column) {
    double widest =
        rows.stream().mapToDouble(row -> row.get(column).naturalWidth()).max().orElse(0);
    return share(widest);
  }

  /** Share of a column whose figures stay on one line; the words of its header may not. */
  private double figures(int column) {
    double widest =
        rows.stream().skip(1).mapToDouble(row -> row.get(column).naturalWidth()).max().orElse(0);
    return share(Math.max(widest, rows.get(0).get(column).longestWord()));
  }

  private double share(double points) {
    return (points + TableBlock.GUTTER + 1) / width;
  }

  private static double within(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }
}
