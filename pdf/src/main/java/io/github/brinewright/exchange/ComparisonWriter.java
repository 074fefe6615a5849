package io.github.brinewright.exchange;

/**
 * Writes comparisons one by one, so that none need be kept: a file of a million homes is written as
 * one of ten. What it writes to stays open.
 *
 * <pre>{@code
 * try (ComparisonWriter csv = ComparisonCsv.to(out)) {
 *   open.each(row -> csv.add(Simulated.none(shared.compare(row.home()))), System.err::println);
 * }
 * }</pre>
 */
public interface ComparisonWriter extends AutoCloseable {
  /**
   * Writes one more home.
   *
   * @param comparison of the home, simulated as those before it
   * @throws java.io.UncheckedIOException when it cannot be written
   */
  void add(Simulated comparison);

  /**
   * Writes what ends the whole.
   *
   * @throws java.io.UncheckedIOException when it cannot be written
   */
  @Override
  void close();
}
