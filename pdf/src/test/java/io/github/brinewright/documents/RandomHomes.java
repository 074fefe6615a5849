package io.github.brinewright.documents;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Homes by chance, but the same ones each time, at the prices of the invented town. */
final class RandomHomes {
  private static final int HOMES = 12;
  private static final String COLUMNS =
      "site_id,customer,hardness_gpg,water_source,iron_mg_per_l,dissolved_iron_mg_per_l,"
          + "manganese_mg_per_l,tds_mg_per_l,free_chlorine_mg_per_l,hydrogen_sulfide_mg_per_l,"
          + "ph,temperature_f,bacteria,people,bathrooms,pressure_psi,flow_gpm,fixtures,"
          + "target_hardness_gpg\n";

  static final Job JOB = job();

  private RandomHomes() {}

  static Stream<String> ids() {
    return IntStream.range(0, HOMES).mapToObj(i -> "R" + i);
  }

  private static Job job() {
    Random chance = new Random(20260501);
    StringBuilder sites = new StringBuilder(COLUMNS);
    ids().forEach(id -> sites.append(home(id, chance)).append('\n'));
    try {
      Map<String, String> files = new HashMap<>();
      for (String name : List.of("units.csv", "resins.csv", "tariffs.csv", "dealer.properties")) {
        files.put(name, Files.readString(DemoTown.FOLDER.resolve(name)));
      }
      files.put("sites.csv", sites.toString());
      JobReading reading = JobFolder.read(JobFiles.of(files));
      return reading
          .job()
          .orElseThrow(() -> new AssertionError(String.valueOf(reading.problems())));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static String home(String id, Random chance) {
    double iron = chance.nextDouble() * (chance.nextBoolean() ? 7 : 0.5);
    return String.join(
        ",",
        id,
        "household " + id,
        number(3 + chance.nextDouble() * 40),
        pick(chance, "public_supply", "private_well"),
        maybe(chance, iron),
        maybe(chance, iron * chance.nextDouble()),
        maybe(chance, chance.nextDouble() * 0.4),
        maybe(chance, 100 + chance.nextDouble() * 900),
        maybe(chance, chance.nextDouble() * 2),
        maybe(chance, chance.nextDouble() * 0.5),
        maybe(chance, 6 + chance.nextDouble() * 3),
        maybe(chance, 42 + chance.nextDouble() * 30),
        pick(chance, "found", "none_found", "not_done"),
        String.valueOf(1 + chance.nextInt(8)),
        pick(chance, "1", "1.5", "2", "3"),
        maybe(chance, 25 + chance.nextDouble() * 60),
        maybe(chance, 5 + chance.nextDouble() * 15),
        pick(chance, "", "", "2 shower 3 lavatory 2 water_closet 1 dishwasher"),
        pick(chance, "", "", "2"));
  }

  private static String pick(Random chance, String... choices) {
    return choices[chance.nextInt(choices.length)];
  }

  private static String maybe(Random chance, double value) {
    return chance.nextInt(4) == 0 ? "" : number(value);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
