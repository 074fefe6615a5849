package io.github.brinewright.cli;

import io.github.brinewright.job.Column;
import io.github.brinewright.job.SiteColumns;
import java.util.Map;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Options that describe the softener that is already in the house. Each is named after its column
 * without {@code present_}, with hyphens: {@code --control}, {@code --refill-min}.
 */
final class PresentOptions {
  private static final String PREFIX = "present_";
  private static final String DOSAGE_UNIT = "_lb_per_ft3";

  private final ColumnOptions present = new ColumnOptions();

  /** Whether a column speaks of the softener in the house. */
  static boolean isOfPresent(Column column) {
    return column.name().startsWith(PREFIX);
  }

  private static String nameOf(Column column) {
    return "--"
        + column.name().substring(PREFIX.length()).replace(DOSAGE_UNIT, "").replace('_', '-');
  }

  /** Adds the options to a command. */
  void addTo(CommandSpec command) {
    ArgGroupSpec.Builder group = ColumnOptions.group("The softener in the house:%n");
    SiteColumns.all().stream()
        .filter(PresentOptions::isOfPresent)
        .forEach(column -> group.addArg(present.add(nameOf(column), column)));
    command.addArgGroup(group.build());
  }

  /** Whether any of them is given. */
  boolean given() {
    return present.given();
  }

  /** What is given, by column of sites.csv. */
  Map<String, String> cells() {
    return present.cells();
  }

  /** Names of the options by column of sites.csv. */
  Map<String, String> names() {
    return present.names();
  }
}
