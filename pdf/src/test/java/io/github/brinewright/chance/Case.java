package io.github.brinewright.chance;

import io.github.brinewright.chance.Chance.Cells;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Margins;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.QuotedHome;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One random home, price list and dealer, as files that may be put into a folder and run again.
 *
 * @param number of the case, which is its seed
 * @param files of the job
 * @param margins of the dealer, which no file states
 */
record Case(int number, Map<String, String> files, Margins margins) {
  static Case of(int number) {
    Chance chance = new Chance(number);
    RandomPrices prices = new RandomPrices(chance);
    Map<String, String> files = new LinkedHashMap<>();
    Cells home = RandomHome.row(chance);
    RandomPresent.add(home, number);
    files.put("sites.csv", Cells.csv(List.of(home)));
    files.put("units.csv", prices.units());
    if (number % 2 == 0) {
      files.put("items.csv", RandomItems.of(number, prices.inYen()));
    }
    files.put("tariffs.csv", prices.tariffs());
    files.put("dealer.properties", prices.dealer() + RandomPresent.prices(number, prices.inYen()));
    return new Case(number, files, prices.margins());
  }

  Job job() {
    JobReading reading = JobFolder.read(JobFiles.of(files));
    Job read =
        reading.job().orElseThrow(() -> new AssertionError("refused: " + reading.problems()));
    return Job.of(read.prices().toBuilder().margins(margins).build())
        .dealer(read.dealer())
        .tariffs(read.tariffs())
        .homes(read.homes())
        .build();
  }

  static QuotedHome home(Job job) {
    return job.homes().get(0);
  }

  static Comparison comparison(Job job) {
    return job.compare(home(job));
  }

  /** All that is needed to see it again. */
  @Override
  public String toString() {
    StringBuilder text =
        new StringBuilder("case ").append(number).append(", alone by -Dcase=").append(number);
    files.forEach(
        (name, content) -> text.append("\n--- ").append(name).append('\n').append(content));
    return text.append("--- ").append(margins).append('\n').toString();
  }
}
