package io.github.brinewright.cli;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.SiteCells;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A home and the softener that is already in it, described by options alone. They are read as a row
 * of sites.csv would be.
 */
final class QuickVisit {
  private final HomeOptions home = new HomeOptions();
  private final PresentOptions present = new PresentOptions();

  /** Adds the options to a command. */
  void addTo(CommandSpec command) {
    home.addTo(command);
    present.addTo(command);
  }

  boolean given() {
    return home.given() || present.given();
  }

  /**
   * A job with the one home.
   *
   * @param others other files of the job, by their name
   * @param othersNames options that those files were made from, by key or column
   * @throws UsageException with all that is wrong, each named by its option
   */
  Job job(Map<String, String> others, Map<String, String> othersNames) {
    if (!given()) {
      throw new UsageException(
          "name a JOBFOLDER, or describe a home with --hardness and --people,"
              + " and the softener in it with --control and --rated-grains");
    }
    Map<String, String> cells = new LinkedHashMap<>(home.cells());
    cells.putAll(present.cells());
    Map<String, String> files = new LinkedHashMap<>(others);
    files.put(SiteCells.FILE, SiteCells.csv(cells));
    Map<String, String> names = new HashMap<>(othersNames);
    names.putAll(home.names());
    names.putAll(present.names());
    return QuickJob.read(files, names);
  }
}
