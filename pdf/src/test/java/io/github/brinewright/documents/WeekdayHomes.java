package io.github.brinewright.documents;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.stream.Stream;

/** Homes quoted with the units of the invented town, whose clocks here are set to weekdays. */
final class WeekdayHomes {
  private static final String SITES =
      "site_id,customer,hardness_gpg,people,bathrooms,iron_mg_per_l\n"
          + "WD1,household one,18,3,2,\nWD2,household two,31,6,3,1.2\nWD3,household three,5,1,1,\n";

  static final Job JOB = job();

  private WeekdayHomes() {}

  static Stream<String> ids() {
    return Stream.of("WD1", "WD2", "WD3");
  }

  private static Job job() {
    try {
      String units = Files.readString(DemoTown.FOLDER.resolve("units.csv"));
      return JobFolder.read(
              JobFiles.in(DemoTown.FOLDER)
                  .with("sites.csv", SITES)
                  .with(
                      "units.csv",
                      units
                          .replace(",clock,", ",weekdays,")
                          .replace(",clock metered_at_night,", ",weekdays,")))
          .job()
          .orElseThrow();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
