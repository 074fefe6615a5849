package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Column;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.UnitCells;
import io.github.brinewright.job.UnitColumns;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A home and a unit described by options alone, for a first look without a job folder. They are
 * read as the rows of a job's files would be.
 */
final class QuickHome {
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

  private final HomeOptions home = new HomeOptions();
  private final ColumnOptions unit = new ColumnOptions();

  /** Adds the options to a command. */
  void addTo(CommandSpec command) {
    home.addTo(command);
    ArgGroupSpec.Builder units = ColumnOptions.group("One unit to look at:%n");
    for (Column column : UnitColumns.all()) {
      String name = UNIT.get(column.name());
      if (name != null) {
        units.addArg(unit.add(name, column));
      }
    }
    command.addArgGroup(units.build());
  }

  boolean given() {
    return home.given() || unit.given();
  }

  /** Whether anything is given beside options of some columns of the unit. */
  boolean givenBeside(Set<String> columns) {
    return home.given() || !columns.containsAll(unit.cells().keySet());
  }

  /** What is given of the unit, by column. */
  Map<String, String> unit() {
    return unit.cells();
  }

  Comparison compare() {
    if (!given()) {
      throw new UsageException("name a JOBFOLDER, or describe a home with --hardness and --people");
    }
    Job job = job();
    return job.compare(job.homes().get(0));
  }

  /** The home and, where one is described, the unit as a job. */
  Job job() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(SiteCells.FILE, SiteCells.csv(home.cells()));
    if (unit.given()) {
      files.put(UnitCells.FILE, UnitCells.csv(unitCells()));
    }
    Map<String, String> names = new HashMap<>(home.names());
    names.putAll(unit.names());
    return QuickJob.read(files, names);
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
}
