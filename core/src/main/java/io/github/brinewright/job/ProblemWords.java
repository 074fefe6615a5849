package io.github.brinewright.job;

import io.github.brinewright.job.Problem.Argument;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * Writes problems and notes in a language. What came from outside is cleaned here: control
 * characters and those that turn the direction of writing become dots, and long values are
 * shortened. Numbers are written as they are to be typed, with a point. Not for use by several
 * threads at once.
 *
 * <pre>{@code
 * ProblemWords words = new ProblemWords(Locale.US);
 * reading.problems().stream().map(words::say).forEach(System.err::println);
 * // sites.csv, row 3, column people: "0" must be from 1 to 40
 * }</pre>
 */
public final class ProblemWords {
  private static final int LONGEST_VALUE = 40;
  private static final int LONGEST_TEXT = 300;

  /** As many names as help to choose. */
  private static final int MOST_NAMES = 5;

  /** Controls, invisible marks, line separators, halves of characters, and those of nobody. */
  private static final Pattern UNPRINTABLE =
      Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Cs}\\p{Co}]");

  private final JobTexts texts;

  /**
   * Words in the language of a locale; English where there are none of its own.
   *
   * @param locale of the words
   */
  public ProblemWords(Locale locale) {
    texts = new JobTexts(locale);
  }

  /**
   * {@return where it is, what stands there, what is wrong, and what to do}
   *
   * @param problem of reading a job
   */
  public String say(Problem problem) {
    return place(problem) + advice(problem, UnaryOperator.identity());
  }

  /**
   * {@return the same for a form: fields are named by their labels}
   *
   * @param problem with a cell of sites.csv that was filled in as a field
   * @param form name of the form
   * @param labels of its fields by column
   */
  public String sayOfForm(Problem problem, String form, Map<String, String> labels) {
    UnaryOperator<String> label =
        column ->
            Optional.ofNullable(labels.get(column)).map(text -> "\"" + text + "\"").orElse(column);
    String field =
        problem.column().isEmpty()
            ? texts.get("problem.in.file", clean(form))
            : texts.get("problem.in.field", clean(form), clean(label.apply(problem.column())));
    return field + advice(problem, label);
  }

  /**
   * {@return the same for a command: cells are named by the options that fill them}
   *
   * @param problem with a cell that was given as an option
   * @param options of the command by column
   */
  public String sayOfOption(Problem problem, Map<String, String> options) {
    UnaryOperator<String> name = column -> options.getOrDefault(column, column);
    String option =
        problem.column().isEmpty()
            ? ""
            : texts.get("problem.in.option", clean(name.apply(problem.column())));
    return option + advice(problem, name);
  }

  /**
   * {@return the same beside the field itself: without the place}
   *
   * @param problem with a cell of sites.csv that was filled in as a field
   * @param labels of the fields by column
   */
  public String sayBeside(Problem problem, Map<String, String> labels) {
    return advice(problem, column -> labels.getOrDefault(column, column));
  }

  /**
   * {@return what is needed before anything can be read from a blank form}
   *
   * @param form name of the form
   * @param needed labels of the fields that are needed
   */
  public String nothingFilled(String form, String needed) {
    return texts.get("problem.nothing_filled", clean(form), clean(needed));
  }

  /**
   * {@return a note as a sentence}
   *
   * @param note of reading a job
   */
  public String say(Note note) {
    return texts.get(note.key());
  }

  private String place(Problem problem) {
    String file = clean(problem.file());
    String row = String.valueOf(problem.row());
    String column = clean(problem.column());
    if (problem.column().isEmpty()) {
      return problem.row() == 0
          ? texts.get("problem.in.file", file)
          : texts.get("problem.in.row", file, row);
    }
    return problem.row() == 0
        ? texts.get("problem.in.key", file, column)
        : texts.get("problem.in.cell", file, row, column);
  }

  private String advice(Problem problem, UnaryOperator<String> columnNames) {
    String[] arguments =
        problem.arguments().stream()
            .map(argument -> argument(argument, columnNames))
            .toArray(String[]::new);
    return value(problem.value()) + texts.get(problem.code().key(), arguments);
  }

  private String value(String value) {
    return value.isEmpty() ? "" : "\"" + shortened(value, LONGEST_VALUE) + "\" ";
  }

  private String argument(Argument argument, UnaryOperator<String> columnNames) {
    if (argument instanceof Argument.ColumnName column) {
      return clean(columnNames.apply(column.name()));
    }
    if (argument instanceof Argument.Number number) {
      return number.value().toPlainString();
    }
    if (argument instanceof Argument.Words words) {
      return clean(String.join(", ", words.words()));
    }
    if (argument instanceof Argument.Meant meant) {
      return meant(meant);
    }
    return shortened(((Argument.Text) argument).text(), LONGEST_TEXT);
  }

  private String meant(Argument.Meant meant) {
    return Nearest.to(meant.written(), meant.known())
        .map(name -> texts.get("problem.meant.one", clean(name)))
        .orElseGet(() -> known(meant));
  }

  /** All known names, or of many those that are nearest. */
  private String known(Argument.Meant meant) {
    int all = meant.known().size();
    return all <= MOST_NAMES
        ? texts.get("problem.meant.any", clean(String.join(", ", meant.known())))
        : texts.get(
            "problem.meant.some",
            clean(String.join(", ", Nearest.first(MOST_NAMES, meant.written(), meant.known()))),
            String.valueOf(all));
  }

  private String shortened(String text, int longest) {
    if (text.length() <= longest) {
      return clean(text);
    }
    String length = String.valueOf(text.length());
    return clean(text.substring(0, longest)) + texts.get("problem.shortened", length);
  }

  private static String clean(String text) {
    return UNPRINTABLE.matcher(text).replaceAll("·");
  }
}
