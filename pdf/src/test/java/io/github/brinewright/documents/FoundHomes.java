package io.github.brinewright.documents;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Homes by chance that have a softener already, at the prices of the invented town. */
final class FoundHomes {
  private static final int HOMES = 12;
  private static final int TOO_MANY_PEOPLE = 20;
  private static final List<String> HOME =
      List.of(
          "site_id", "customer", "hardness_gpg", "people", "bathrooms", "bill_gal", "bill_days");
  private static final List<String> SOFTENER =
      List.of(
          "present_control",
          "present_days",
          "present_weekdays",
          "present_volume_gal",
          "present_set_hardness_gpg",
          "present_set_capacity_grains",
          "present_rated_grains",
          "present_resin_ft3",
          "present_age_years",
          "present_dosage_lb_per_ft3",
          "present_salt_lb",
          "present_refill_min",
          "present_salt_bought_lb_per_year",
          "present_regeneration_hour",
          "present_regenerant");

  static final Job JOB = job();

  private FoundHomes() {}

  static Stream<String> ids() {
    return IntStream.range(0, HOMES).mapToObj(i -> "P" + i);
  }

  private static Job job() {
    Random chance = new Random(20261101);
    StringBuilder sites = new StringBuilder(row(HOME, SOFTENER));
    ids().forEach(id -> sites.append(row(home(id, chance), softener(chance))));
    return JobFolder.read(JobFiles.in(DemoTown.FOLDER).with("sites.csv", sites.toString()))
        .job()
        .orElseThrow();
  }

  private static String row(List<String> home, List<String> softener) {
    return String.join(",", home) + "," + String.join(",", softener) + "\n";
  }

  /** The last one has more people than any unit of the town serves. */
  private static List<String> home(String id, Random chance) {
    boolean last = id.equals("P" + (HOMES - 1));
    int people = last ? TOO_MANY_PEOPLE : 1 + chance.nextInt(7);
    boolean billed = chance.nextInt(3) == 0;
    return List.of(
        id,
        "household " + id,
        String.valueOf(last ? 100 : 8 + chance.nextInt(30)),
        String.valueOf(people),
        "2",
        billed ? String.valueOf(people * (2_000 + chance.nextInt(3_000))) : "",
        billed ? "61" : "");
  }

  private static List<String> softener(Random chance) {
    String[] cells = new String[SOFTENER.size()];
    Arrays.fill(cells, "");
    control(chance, cells);
    double bed = 0.5 + chance.nextInt(6) * 0.5;
    if (chance.nextBoolean()) {
      cells[6] = String.valueOf(Math.round(bed * 32_000));
    } else {
      cells[7] = String.valueOf(bed);
    }
    cells[8] = chance.nextInt(3) == 0 ? "" : String.valueOf(chance.nextInt(20));
    switch (chance.nextInt(5)) {
      case 0 -> cells[9] = String.valueOf(4 + chance.nextInt(12));
      case 1 -> cells[10] = String.valueOf(Math.round(bed * (4 + chance.nextInt(12))));
      case 2 -> cells[11] = String.valueOf(4 + chance.nextInt(15));
      case 3 -> cells[12] = String.valueOf(100 + chance.nextInt(1_200));
      default -> {}
    }
    cells[13] = chance.nextInt(3) == 0 ? String.valueOf(chance.nextInt(24)) : "";
    cells[14] = chance.nextInt(5) == 0 ? "potassium_chloride" : "";
    return List.of(cells);
  }

  private static void control(Random chance, String[] cells) {
    switch (chance.nextInt(4)) {
      case 0 -> {
        cells[0] = "clock";
        cells[1] = String.valueOf(1 + chance.nextInt(12));
      }
      case 1 -> {
        cells[0] = "weekdays";
        cells[2] = chance.nextBoolean() ? "mon thu" : "tue";
      }
      case 2 -> {
        cells[0] = chance.nextBoolean() ? "metered_at_night" : "metered_at_once";
        cells[3] = String.valueOf(300 + chance.nextInt(1_500));
      }
      default -> {
        cells[0] = "metered_at_night";
        cells[4] = String.valueOf(5 + chance.nextInt(30));
        cells[5] = chance.nextBoolean() ? "" : String.valueOf(15_000 + chance.nextInt(30_000));
      }
    }
  }
}
