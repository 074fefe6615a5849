package io.github.brinewright.cli;

import io.github.brinewright.job.Column;
import io.github.brinewright.job.SiteColumns;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Options that describe a home without a job folder: its water, its people, its supply. */
final class HomeOptions {
  private static final String HARDNESS = "--hardness";
  private static final String PLAIN_HARDNESS = "--hardness-gpg";
  private static final String GPG = "hardness_gpg";
  private static final String MG_PER_L = "hardness_mg_per_l";

  private final ColumnOptions home = new ColumnOptions();
  private final OptionSpec hardness =
      OptionSpec.builder(HARDNESS)
          .type(List.class)
          .auxiliaryTypes(HardnessCell.class)
          .converters(new HardnessConverter())
          .paramLabel("HARDNESS")
          .description("Hardness with its unit: 22gpg, 375mg/L, 21dH, 37fH, 26clark or 3.7mmol/L.")
          .build();

  /** Adds the options to a command. */
  void addTo(CommandSpec command) {
    ArgGroupSpec.Builder group =
        ColumnOptions.group("A home without a job folder:%n").addArg(hardness);
    for (Column column : SiteColumns.all()) {
      String name = ColumnOptions.nameOf(column);
      if (!name.equals(HARDNESS)
          && !column.part().isEmpty()
          && !PresentOptions.isOfPresent(column)) {
        group.addArg(home.add(name, column));
      }
    }
    command.addArgGroup(group.build());
    command.usageMessage().abbreviateSynopsis(true);
  }

  boolean given() {
    return hardness.getValue() != null || home.given();
  }

  /** What is given, by column, with what a home must have. */
  Map<String, String> cells() {
    Map<String, String> cells = new LinkedHashMap<>(Map.of("site_id", "home", "people", "3"));
    cells.putAll(home.cells());
    ColumnOptions.<HardnessCell>single(hardness)
        .ifPresent(
            known -> {
              if (cells.containsKey(GPG)) {
                throw new UsageException(
                    HARDNESS + " and " + PLAIN_HARDNESS + " say the same; give one of them");
              }
              cells.put(known.column(), known.text());
            });
    return cells;
  }

  /** Names of the options by column. */
  Map<String, String> names() {
    Map<String, String> names = new HashMap<>(home.names());
    boolean plain = home.cells().containsKey(GPG);
    names.put(GPG, plain ? PLAIN_HARDNESS : HARDNESS);
    names.put(MG_PER_L, hardness.getValue() == null ? PLAIN_HARDNESS : HARDNESS);
    return names;
  }
}
