package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The invented town as a whole. */
class TownTest {
  private static final JobReading READING = JobFolder.read(Path.of("job"));
  private static final Job JOB = READING.job().orElseThrow();

  @Test
  void theTownIsWellFormedAndVaried() {
    assertThat(READING.problems()).isEmpty();
    assertThat(JOB.homes()).hasSizeGreaterThanOrEqualTo(12);
    assertThat(JOB.prices().offers()).hasSizeGreaterThanOrEqualTo(8);
    List<Comparison> all = JOB.homes().stream().map(JOB::compare).toList();
    assertThat(all.stream().filter(c -> c.recommended().isEmpty()))
        .as("one home that no unit can serve")
        .hasSize(1);
    assertThat(
            all.stream()
                .flatMap(c -> c.recommended().stream())
                .map(candidate -> candidate.softener().id())
                .distinct())
        .as("different homes get different units")
        .hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void theTableOfClockAgainstMeterIsKept() throws IOException {
    Path page = Path.of("CLOCK-AGAINST-METER.md");
    String text =
        "# Clock against meter in the invented town\n\nWritten by the test run; simulated, mean and"
            + " (nine years of ten). Use varies as in DAIAD open meter data.\n\n"
            + ClockAgainstMeter.table(JOB);
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(page, text);
    }
    assertThat(page).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(text);
    assertThat(text).as("homes where a meter is not worth its price").contains("**no**");
  }
}
