package io.github.brinewright.area;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** The sums of every district, and the first rows that could not be read. */
public final class Town implements Serializable {
  private static final long serialVersionUID = 1;

  /** More would be no help. */
  static final int MOST_PROBLEMS = 20;

  private final int draws;
  private final TreeMap<String, Totals> districts = new TreeMap<>();
  private final ArrayList<String> problems = new ArrayList<>();

  /**
   * No district yet.
   *
   * @param draws of what is not known
   */
  public Town(int draws) {
    this.draws = draws;
  }

  Totals district(String name) {
    return districts.computeIfAbsent(name, any -> new Totals(draws));
  }

  void problem(String text) {
    problems.add(text);
    keepFirst();
  }

  /** Adds those of other homes. */
  Town add(Town other) {
    other.districts.forEach((name, totals) -> district(name).add(totals));
    problems.addAll(other.problems);
    keepFirst();
    return this;
  }

  /** In an order of their own, so that it does not matter who found them first. */
  private void keepFirst() {
    problems.sort(null);
    while (problems.size() > MOST_PROBLEMS) {
      problems.remove(problems.size() - 1);
    }
  }

  /** {@return the names of the districts, in order} */
  public List<String> names() {
    return List.copyOf(districts.keySet());
  }

  /**
   * {@return the sums of a district}
   *
   * @param name one of {@link #names}
   */
  public Totals of(String name) {
    return districts.get(name);
  }

  /** {@return the sums of all districts} */
  public Totals all() {
    Totals all = new Totals(draws);
    districts.values().forEach(all::add);
    return all;
  }

  /** {@return what is wrong with rows, at most 20 of it} */
  public List<String> problems() {
    return List.copyOf(problems);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Town town
        && districts.equals(town.districts)
        && problems.equals(town.problems);
  }

  @Override
  public int hashCode() {
    return 31 * districts.hashCode() + problems.hashCode();
  }

  @Override
  public String toString() {
    return districts + ", " + problems.size() + " problems";
  }
}
