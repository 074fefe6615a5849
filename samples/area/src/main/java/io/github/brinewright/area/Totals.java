package io.github.brinewright.area;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Sums of a district over its homes: what was stated, and the same in each draw of what is not
 * known. Whole numbers throughout, added exactly: the order does not matter, and a sum that would
 * not fit throws.
 */
public final class Totals implements Serializable {
  private static final long serialVersionUID = 1;
  private static final int SCENARIOS = Scenario.values().length;
  private static final int MEASURES = Measure.values().length;

  /** What is counted beside the sums. */
  public enum Count {
    /** Rows of the table. */
    ROWS,
    /** Rows with errors, which count nowhere else. */
    REFUSED,
    /** Homes that have no softener. */
    WITHOUT_SOFTENER,
    /** Homes whose softener was studied. */
    SOFTENERS,
    /** Those of them with a clock. */
    CLOCKS,
    /** Those whose bed no setting makes serve the home; they stay as found. */
    NOT_SERVED,
    /** Those whose supply the treatment of the source reaches. */
    SOURCE_TREATED
  }

  private final int draws;
  private final long[] counts = new long[Count.values().length];
  private final long[] sums;

  /**
   * Nothing yet.
   *
   * @param draws of what is not known; 0 or more
   */
  public Totals(int draws) {
    this.draws = draws;
    sums = new long[(draws + 1) * SCENARIOS * MEASURES];
  }

  /** {@return how many draws there are} */
  public int draws() {
    return draws;
  }

  void count(Count what) {
    counts[what.ordinal()]++;
  }

  /** Draw 0 is as stated. */
  void add(int draw, Scenario scenario, long[] amounts) {
    int first = at(draw, scenario);
    for (int i = 0; i < MEASURES; i++) {
      sums[first + i] = Math.addExact(sums[first + i], amounts[i]);
    }
  }

  /** Adds those of other homes. */
  Totals add(Totals other) {
    addTo(counts, other.counts);
    addTo(sums, other.sums);
    return this;
  }

  private static void addTo(long[] mine, long[] others) {
    if (mine.length != others.length) {
      throw new IllegalArgumentException("sums over different numbers of draws");
    }
    Arrays.setAll(mine, i -> Math.addExact(mine[i], others[i]));
  }

  private static int at(int draw, Scenario scenario) {
    return (draw * SCENARIOS + scenario.ordinal()) * MEASURES;
  }

  /**
   * {@return how many there are}
   *
   * @param what is counted
   */
  public long of(Count what) {
    return counts[what.ordinal()];
  }

  /**
   * {@return a sum over the homes}
   *
   * @param draw 0 for what is stated, else from 1 to {@link #draws}
   * @param scenario of the town
   * @param measure that is summed
   */
  public long sum(int draw, Scenario scenario, Measure measure) {
    return sums[at(draw, scenario) + measure.ordinal()];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Totals totals
        && Arrays.equals(counts, totals.counts)
        && Arrays.equals(sums, totals.sums);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(counts) + Arrays.hashCode(sums);
  }

  @Override
  public String toString() {
    return Arrays.toString(counts) + ", " + sums.length + " sums";
  }
}
