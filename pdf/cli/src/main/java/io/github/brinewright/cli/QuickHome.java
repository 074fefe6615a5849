package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.job.UnitCells;
import io.github.brinewright.job.UnitColumns;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * A home and a unit described by options alone, for a first look without a job folder. They are
 * read as the rows of a job's files would be.
 */
final class QuickHome {
  private static final String HARDNESS = "--hardness";
  private static final String PLAIN_HARDNESS = "--hardness-gpg";
  private static final String GPG = "hardness_gpg";
  private static final String MG_PER_L = "hardness_mg_per_l";

  /** Options that describe the one unit to look at, by column. */
  private static final Map<String, String> UNIT =
      Map.of(
          "rated_grains", "--rated-grains",
          "resin_ft3", "--resin-ft3",
          "dosages_lb_per_ft3", "--dosage",
          "controls", "--control",
          "refill_gpm", "--refill-gpm",
          "arrangement", "--arrangement",
          "tanks", "--tanks");

  private final ColumnOptions home = new ColumnOptions();
  private final ColumnOptions unit = new ColumnOptions();
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
    ArgGroupSpec.Builder homes = group("A home without a job folder:%n").addArg(hardness);
    for (Column column : SiteColumns.all()) {
      String name = ColumnOptions.nameOf(column);
      if (!name.equals(HARDNESS)) {
        homes.addArg(home.add(name, column));
      }
    }
    ArgGroupSpec.Builder units = group("One unit to look at:%n");
    for (Column column : UnitColumns.all()) {
      String name = UNIT.get(column.name());
      if (name != null) {
        units.addArg(unit.add(name, column));
      }
    }
    command.addArgGroup(homes.build()).addArgGroup(units.build());
    command.usageMessage().abbreviateSynopsis(true);
  }

  private static ArgGroupSpec.Builder group(String heading) {
    return ArgGroupSpec.builder().exclusive(false).validate(false).heading(heading);
  }

  boolean given() {
    return hardness.getValue() != null || home.given() || unit.given();
  }

  Comparison compare() {
    if (!given()) {
      throw new UsageException("name a JOBFOLDER, or describe a home with --hardness and --people");
    }
    Job job = read();
    return job.compare(job.homes().get(0));
  }

  private Job read() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(SiteCells.FILE, SiteCells.csv(homeCells()));
    if (unit.given()) {
      texts.put(UnitCells.FILE, UnitCells.csv(unitCells()));
    }
    JobReading reading = JobFolder.read(JobFiles.of(texts));
    if (!reading.problems().isEmpty()) {
      throw new UsageException(
          reading.problems().stream()
              .map(this::describe)
              .collect(Collectors.joining(System.lineSeparator())));
    }
    return reading.job().orElseThrow();
  }

  private Map<String, String> homeCells() {
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

  private Map<String, String> unitCells() {
    Map<String, String> cells = new LinkedHashMap<>(Map.of("unit_id", "unit", "price", "0"));
    cells.putAll(unit.cells());
    if (!cells.containsKey("rated_grains")) {
      if (!cells.containsKey("resin_ft3")) {
        throw new UsageException(
            "--control, --dosage and the like describe one unit;"
                + " give its --rated-grains or --resin-ft3 too");
      }
      cells.putIfAbsent("dosages_lb_per_ft3", "6");
    }
    return cells;
  }

  private String describe(Problem problem) {
    Map<String, String> flags = new HashMap<>(home.names());
    flags.putAll(unit.names());
    boolean plain = home.cells().containsKey(GPG);
    flags.put(GPG, plain ? PLAIN_HARDNESS : HARDNESS);
    flags.put(MG_PER_L, hardness.getValue() == null ? PLAIN_HARDNESS : HARDNESS);
    return new ProblemWords(Locale.ENGLISH).sayOfOption(problem, flags);
  }
}
