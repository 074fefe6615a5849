package io.github.brinewright.cli;

import io.github.brinewright.job.Column;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Options that fill the cells of a row. Each is named after its column, with hyphens, and without
 * the unit of a substance, a pressure, a flow or a temperature.
 */
final class ColumnOptions {
  private static final Pattern UNIT = Pattern.compile("_(mg_per_l|psi|gpm|f)$");

  /** Kinds of which a cell holds several: their name says so. */
  private static final Set<Column.Kind> LISTS = Set.of(Column.Kind.COUNTS, Column.Kind.READINGS);

  private final Map<String, OptionSpec> byColumn = new LinkedHashMap<>();

  /** The usual name of the option of a column. */
  static String nameOf(Column column) {
    return "--" + UNIT.matcher(column.name()).replaceFirst("").replace('_', '-');
  }

  /** Adds an option for a column. */
  OptionSpec add(String name, Column column) {
    OptionSpec option =
        OptionSpec.builder(name)
            .type(List.class)
            .auxiliaryTypes(String.class)
            .paramLabel(label(column))
            .description(description(column))
            .build();
    byColumn.put(column.name(), option);
    return option;
  }

  /** A group of options that belong together. */
  static ArgGroupSpec.Builder group(String heading) {
    return ArgGroupSpec.builder().exclusive(false).validate(false).heading(heading);
  }

  private static String label(Column column) {
    if (LISTS.contains(column.kind())) {
      return column.kind().name();
    }
    if (!column.constants().isEmpty()) {
      return "WORD";
    }
    return column.unit().isEmpty() ? "VALUE" : column.unit().replace(' ', '_');
  }

  private static String description(Column column) {
    String meaning = column.meaning(Locale.US);
    List<String> words = column.choices();
    String values = words.isEmpty() ? range(column) : ": " + String.join(", ", words);
    String usual = column.usual().isEmpty() ? "" : " (default: " + column.usual() + ")";
    return (meaning + values + usual + ".").replace("%", "%%");
  }

  private static String range(Column column) {
    return column
        .range()
        .map(range -> ", " + plain(range.low()) + " to " + plain(range.high()))
        .orElse("");
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Whether any of them is given. */
  boolean given() {
    return byColumn.values().stream().anyMatch(option -> option.getValue() != null);
  }

  /** What is given, by column. */
  Map<String, String> cells() {
    Map<String, String> cells = new LinkedHashMap<>();
    byColumn.forEach(
        (column, option) ->
            ColumnOptions.<String>single(option).ifPresent(text -> cells.put(column, text)));
    return cells;
  }

  /** What an option is given; the option takes a list, so that a second value is not lost. */
  static <T> Optional<T> single(OptionSpec option) {
    List<T> values = Objects.requireNonNullElse(option.getValue(), List.of());
    if (values.size() > 1) {
      throw new UsageException(option.longestName() + " is given more than once");
    }
    return values.stream().findFirst();
  }

  /** Names of the options by column. */
  Map<String, String> names() {
    return byColumn.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, each -> each.getValue().longestName()));
  }
}
