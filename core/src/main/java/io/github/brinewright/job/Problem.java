package io.github.brinewright.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/**
 * Something wrong in a job, not yet in words: {@link ProblemWords} writes it in a language. What
 * the file said is kept as it stood, to be cleaned and shortened when it is written.
 *
 * @param place where it is
 * @param value what was written there; may be empty
 * @param code what is wrong
 * @param arguments limits and names that belong to the code
 */
public record Problem(Place place, String value, ProblemCode code, List<Argument> arguments) {
  /**
   * A place in a job.
   *
   * @param file name of the file
   * @param row line of the file, counted from 1; 0 when it concerns the file as a whole
   * @param column name of the column or key; empty when it concerns the row or the file
   */
  public record Place(String file, int row, String column) {
    /**
     * {@return the file as a whole}
     *
     * @param file name of the file
     */
    public static Place whole(String file) {
      return new Place(file, 0, "");
    }
  }

  /** A part of a message that differs from case to case. */
  public sealed interface Argument {
    /**
     * The name of a column; a form writes the label of its field instead.
     *
     * @param name as in the header
     */
    record ColumnName(String name) implements Argument {}

    /**
     * A limit or a count.
     *
     * @param value in the unit of the column
     */
    record Number(BigDecimal value) implements Argument {
      static Number of(double value) {
        return new Number(BigDecimal.valueOf(value).stripTrailingZeros());
      }
    }

    /**
     * A text from outside: of a file, or of the machine.
     *
     * @param text as it came
     */
    record Text(String text) implements Argument {}

    /**
     * Words that may be written in the cell.
     *
     * @param words in the order in which they are told
     */
    record Words(List<String> words) implements Argument {
      /**
       * Keeps its own copy.
       *
       * @param words in the order in which they are told
       */
      public Words {
        words = List.copyOf(words);
      }
    }

    /**
     * What may have been meant.
     *
     * @param written what is not known
     * @param known names to choose from
     */
    record Meant(String written, List<String> known) implements Argument {
      /**
       * Keeps its own copy.
       *
       * @param written what is not known
       * @param known names to choose from
       */
      public Meant {
        known = List.copyOf(known);
      }
    }
  }

  /**
   * Keeps its own copy of the list.
   *
   * @param place where it is
   * @param value what was written there; may be empty
   * @param code what is wrong
   * @param arguments limits and names that belong to the code
   */
  public Problem {
    arguments = List.copyOf(arguments);
  }

  static Problem whole(String file, ProblemCode code, Argument... arguments) {
    return new Problem(Place.whole(file), "", code, List.of(arguments));
  }

  /** The same in a file of another name. */
  Problem in(String file) {
    return new Problem(new Place(file, row(), column()), value, code, arguments);
  }

  /** {@return the name of the file} */
  public String file() {
    return place.file();
  }

  /** {@return the line of the file, counted from 1; 0 when it concerns the file as a whole} */
  public int row() {
    return place.row();
  }

  /** {@return the name of the column or key; empty when it concerns the row or the file} */
  public String column() {
    return place.column();
  }

  /** The problem in English, for developers. */
  @Override
  public String toString() {
    return new ProblemWords(Locale.ENGLISH).say(this);
  }
}
