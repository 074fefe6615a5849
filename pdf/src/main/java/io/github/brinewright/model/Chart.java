package io.github.brinewright.model;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Vessel;
import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** A chart as data, with a text that says the same. */
public sealed interface Chart extends Element {
  /** {@return what the chart shows, in words, for those who do not see it} */
  Phrase alternative();

  /**
   * A scale of hardness in classes, with the mark of one water.
   *
   * @param alternative in words
   * @param classes names from soft to hard
   * @param limits between the classes, one fewer than there are
   * @param hardness of the water
   * @param own number of the class it lies in, from 0
   * @param highest end of the scale; not below the hardness
   */
  record HardnessScale(
      Phrase alternative,
      List<Phrase> classes,
      List<Hardness> limits,
      Hardness hardness,
      int own,
      Hardness highest)
      implements Chart {
    /**
     * Keeps its own copies of the lists.
     *
     * @param alternative in words
     * @param classes names from soft to hard
     * @param limits between the classes, one fewer than there are
     * @param hardness of the water
     * @param own number of the class it lies in, from 0
     * @param highest end of the scale; not below the hardness
     */
    public HardnessScale {
      classes = List.copyOf(classes);
      limits = List.copyOf(limits);
    }
  }

  /**
   * Sums that grow year by year.
   *
   * @param alternative in words
   * @param series one line each, the chosen one first; three at most are told apart
   * @param axis what the years are called
   */
  record RunningTotal(Phrase alternative, List<Series> series, Phrase axis) implements Chart {
    /**
     * Keeps its own copy of {@code series}.
     *
     * @param alternative in words
     * @param series one line each, the chosen one first; three at most are told apart
     * @param axis what the years are called
     */
    public RunningTotal {
      series = List.copyOf(series);
    }
  }

  /**
   * One line of a running total.
   *
   * @param key by which it is known in every language
   * @param name of it
   * @param totals after each year, from year 0
   */
  record Series(String key, Phrase name, List<Money> totals) {
    /**
     * Keeps its own copy of {@code totals}.
     *
     * @param key by which it is known in every language
     * @param name of it
     * @param totals after each year, from year 0
     */
    public Series {
      totals = List.copyOf(totals);
    }
  }

  /**
   * Bars whose parts add up.
   *
   * @param alternative in words
   * @param parts names of the parts, in the order of each bar; five at most are told apart
   * @param bars from top to bottom
   */
  record StackedBars(Phrase alternative, List<Phrase> parts, List<Bar> bars) implements Chart {
    /**
     * Keeps its own copies of the lists.
     *
     * @param alternative in words
     * @param parts names of the parts, in the order of each bar; five at most are told apart
     * @param bars from top to bottom
     */
    public StackedBars {
      parts = List.copyOf(parts);
      bars = List.copyOf(bars);
    }
  }

  /**
   * One bar.
   *
   * @param key by which it is known in every language
   * @param name of it
   * @param values of its parts
   * @param total of them, as it is printed
   * @param chosen whether it is the recommended one
   */
  record Bar(String key, Phrase name, List<Money> values, Phrase total, boolean chosen) {
    /**
     * Keeps its own copy of {@code values}.
     *
     * @param key by which it is known in every language
     * @param name of it
     * @param values of its parts
     * @param total of them, as it is printed
     * @param chosen whether it is the recommended one
     */
    public Bar {
      values = List.copyOf(values);
    }
  }

  /**
   * The days of a year as rows of marks.
   *
   * @param alternative in words
   * @param days one row each, all of as many days
   * @param axis what the twelfths of the year are called
   */
  record DayMarks(Phrase alternative, List<Days> days, Phrase axis) implements Chart {
    /**
     * Keeps its own copy of {@code days}.
     *
     * @param alternative in words
     * @param days one row each, all of as many days
     * @param axis what the twelfths of the year are called
     */
    public DayMarks {
      days = List.copyOf(days);
    }
  }

  /**
   * One row of days.
   *
   * @param key by which it is known in every language
   * @param name of it
   * @param events how many there are on each day
   * @param total of them, as it is printed
   * @param chosen whether it is the recommended one
   */
  record Days(String key, Phrase name, List<Integer> events, Phrase total, boolean chosen) {
    /**
     * Keeps its own copy of {@code events}.
     *
     * @param key by which it is known in every language
     * @param name of it
     * @param events how many there are on each day
     * @param total of them, as it is printed
     * @param chosen whether it is the recommended one
     */
    public Days {
      events = List.copyOf(events);
    }
  }

  /**
   * The capacity of a resin against salt, with the settings in stock.
   *
   * @param alternative in words
   * @param curve by rising dosage
   * @param stocked settings in stock
   */
  record Curve(Phrase alternative, List<Point> curve, List<Stocked> stocked) implements Chart {
    /**
     * Keeps its own copies of the lists.
     *
     * @param alternative in words
     * @param curve by rising dosage
     * @param stocked settings in stock
     */
    public Curve {
      curve = List.copyOf(curve);
      stocked = List.copyOf(stocked);
    }
  }

  /**
   * A point of a curve.
   *
   * @param dosage of salt
   * @param capacity that it gives
   */
  record Point(SaltDosage dosage, ResinCapacity capacity) {}

  /**
   * A setting in stock.
   *
   * @param at its point of the curve
   * @param chosen whether it is the one set
   */
  record Stocked(Point at, boolean chosen) {}

  /**
   * A softener drawn to scale beside a door.
   *
   * @param alternative what it shows, in words
   * @param vessels how many vessels stand side by side; 1 or more
   * @param vessel of each
   * @param brineTank beside them; null where its size is not known
   * @param height how high it stands, as written beside it
   * @param width how much room it takes, as written below it
   */
  record UnitDrawing(
      Phrase alternative,
      int vessels,
      Vessel vessel,
      @Nullable BrineTank brineTank,
      Phrase height,
      Phrase width)
      implements Chart {}

  /**
   * Bars of one amount, each with its name and its figure.
   *
   * @param alternative what it shows, in words
   * @param bars from top to bottom
   */
  record Levels(Phrase alternative, List<Level> bars) implements Chart {
    /**
     * Keeps its own copy of {@code bars}.
     *
     * @param alternative what it shows, in words
     * @param bars from top to bottom
     */
    public Levels {
      bars = List.copyOf(bars);
    }
  }

  /**
   * A bar of one amount.
   *
   * @param key by which it is known in every language; unique within the chart
   * @param name of it
   * @param share of the longest bar; 0 to 1
   * @param label the amount
   * @param chosen whether it stands out
   */
  record Level(String key, Phrase name, double share, Phrase label, boolean chosen) {}
}
