package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.finding.VerdictKind;
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
    assertThat(all)
        .filteredOn(comparison -> comparison.recommended().isEmpty())
        .as("one that is soft enough")
        .extracting(comparison -> comparison.verdict().kind())
        .containsExactly(VerdictKind.SOFT_ENOUGH);
    assertThat(all)
        .filteredOn(comparison -> comparison.verdict().kind() == VerdictKind.TREAT_FIRST)
        .as("one to treat first, by what the dealer sells")
        .singleElement()
        .matches(comparison -> comparison.treatment().orElseThrow().stages().size() == 2);
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
        """
        # Clock against meter in the invented town

        Written by the test run; both controls on the same bed and the same 400 simulated years, whose \
        use varies as in DAIAD open meter data. Salt: mean and (nine years of ten). Hard water: mean of \
        a year from all causes, running out and drawn while it regenerates, in gallons and in days of \
        mean use. *Weighed* puts salt beside hard water: salt within 2 % and hard water within half a \
        day count as level; where one saves salt and the other hard water, the one with less salt is better \
        as long as its hard water keeps the dealer's margin (1 % of the year's use).

        """
            + ClockAgainstMeter.table(JOB);
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(page, text);
    }
    assertThat(page).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(text);
  }

  @Test
  void aClockAndAMeterAreWeighedBySaltAndByHardWater() {
    assertThat(weighed(400, 280, 5, 2).verdict())
        .isEqualTo("**the meter** saves 120 lb of salt and spares 3.0 days of hard water");
    assertThat(weighed(400, 280, 2, 2.4).verdict())
        .isEqualTo("**the meter** saves 120 lb of salt; hard water is level");
    assertThat(weighed(400, 404, 5, 2).verdict())
        .isEqualTo("**the meter** spares 3.0 days of hard water; salt is level");
    assertThat(weighed(400, 404, 2, 2.4).verdict()).isEqualTo("**the clock is as good**");
    assertThat(weighed(400, 280, 2, 5).verdict())
        .isEqualTo(
            "**the clock**: the meter saves 120 lb of salt and lets 3.0 days more hard water pass; the"
                + " meter's is beyond the margin of 3.7 days");
    assertThat(weighed(400, 280, 2, 3).verdict())
        .isEqualTo(
            "**the meter** saves 120 lb of salt and lets 1.0 days more hard water pass; the"
                + " meter's is within the margin of 3.7 days");
    assertThat(weighed(400, 450, 4, 2).verdict())
        .isEqualTo(
            "**the meter** takes 50 lb more salt and spares 2.0 days of hard water; the clock's"
                + " is beyond the margin of 3.7 days");
    assertThat(weighed(400, 430, 2, 5).verdict())
        .isEqualTo(
            "**the clock**: the meter takes 30 lb more salt and lets 3.0 days more hard water pass");
  }

  private static AgainstClock weighed(double clockLb, double meterLb, double clock, double meter) {
    return new AgainstClock(clockLb, meterLb, clock, meter, 3.65);
  }
}
