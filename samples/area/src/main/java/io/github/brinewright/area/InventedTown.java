package io.github.brinewright.area;

import java.io.Serializable;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;

/**
 * Homes of a town that does not exist, in districts of different hardness: row by row from a seed,
 * the same on every machine. Shares of controls, ages and settings are invented, and say nothing
 * about any real place.
 *
 * @param seed of the town
 */
public record InventedTown(long seed) implements Serializable {
  /** Seed used unless another one is wanted. */
  public static final long USUAL_SEED = 20_260_801L;

  /** The columns of a row, in their order. */
  public static final List<String> COLUMNS =
      List.of(
          "site_id",
          "district",
          "people",
          "hardness_gpg",
          "hardness_method",
          "water_source",
          "iron_mg_per_l",
          "bill_gal",
          "bill_days",
          "present_control",
          "present_days",
          "present_volume_gal",
          "present_set_hardness_gpg",
          "present_rated_grains",
          "present_age_years",
          "present_salt_lb",
          "present_refill_min",
          "present_refill_gpm",
          "present_regenerant");

  private static final List<District> DISTRICTS =
      List.of(
          new District("Nether Noughtmarl (invented)", 11, false),
          new District("Noughtmarl Harbor (invented)", 17, false),
          new District("Noughtmarl Heath (invented)", 24, false),
          new District("Over Noughtmarl (invented)", 31, true));

  private static final int[] RATINGS = {24_000, 32_000, 32_000, 40_000, 48_000};
  private static final int[] POUNDS = {6, 8, 8, 10, 12, 15};
  private static final double GALLONS_A_PERSON = 55;
  private static final int BILL_DAYS = 60;

  private record District(String name, double gpg, boolean wells) {}

  /**
   * {@return a row}
   *
   * @param index of the home, from 0
   */
  public Map<String, String> row(long index) {
    SplittableRandom random = new SplittableRandom(seed * 0x9e3779b97f4a7c15L + index);
    random.nextLong();
    District district = DISTRICTS.get(random.nextInt(DISTRICTS.size()));
    int people = 1 + Math.min(random.nextInt(6), random.nextInt(6));
    double gpg = tenths(district.gpg * (0.9 + 0.2 * random.nextDouble()));
    Map<String, String> row = new LinkedHashMap<>();
    row.put("site_id", "I" + index);
    row.put("district", district.name);
    row.put("people", Integer.toString(people));
    row.put("hardness_gpg", Double.toString(gpg));
    boolean measured = random.nextInt(3) == 0;
    row.put("hardness_method", measured ? "drop_test" : "utility_average");
    boolean well = district.wells && random.nextInt(2) == 0;
    row.put("water_source", well ? "private_well" : "public_supply");
    if (well && random.nextBoolean()) {
      row.put("iron_mg_per_l", Double.toString(tenths(0.1 + random.nextDouble())));
    }
    if (random.nextInt(10) < 6) {
      bill(row, random, people);
    }
    if (random.nextInt(10) < 8) {
      softener(row, random, people, gpg);
    }
    return row;
  }

  private static void bill(Map<String, String> row, SplittableRandom random, int people) {
    double daily = people * GALLONS_A_PERSON * (0.6 + 0.8 * random.nextDouble());
    row.put("bill_gal", Long.toString(Math.round(daily * BILL_DAYS)));
    row.put("bill_days", Integer.toString(BILL_DAYS));
  }

  private static void softener(
      Map<String, String> row, SplittableRandom random, int people, double gpg) {
    int rated = RATINGS[random.nextInt(RATINGS.length)];
    int control = random.nextInt(10);
    row.put("present_rated_grains", Integer.toString(rated));
    if (control < 5) {
      row.put("present_control", "clock");
      row.put("present_days", Integer.toString(days(random, people, gpg, rated)));
    } else if (control < 8) {
      row.put("present_control", "metered_at_night");
      row.put("present_set_hardness_gpg", Long.toString(told(random, gpg)));
    } else {
      row.put("present_control", "metered_at_night");
      row.put("present_volume_gal", volume(random, gpg, rated));
    }
    if (random.nextInt(4) > 0) {
      row.put("present_age_years", Integer.toString(random.nextInt(21)));
    }
    salt(row, random);
    if (random.nextInt(25) == 0) {
      row.put("present_regenerant", "potassium_chloride");
    }
  }

  /** A guess of the days that the rating lasts, out by some. */
  private static int days(SplittableRandom random, int people, double gpg, int rated) {
    double lasts = rated / (people * GALLONS_A_PERSON * gpg);
    return (int) Math.max(1, Math.min(14, lasts * (0.25 + 0.6 * random.nextDouble())));
  }

  private static long told(SplittableRandom random, double gpg) {
    return Math.max(1, Math.round(gpg * (0.9 + 0.6 * random.nextDouble())));
  }

  private static String volume(SplittableRandom random, double gpg, int rated) {
    double set = rated * (0.4 + 0.5 * random.nextDouble()) / gpg;
    return Long.toString(Math.round(Math.max(50, set)));
  }

  private static void salt(Map<String, String> row, SplittableRandom random) {
    int how = random.nextInt(5);
    int pounds = POUNDS[random.nextInt(POUNDS.length)];
    if (how < 3) {
      row.put("present_salt_lb", Integer.toString(pounds));
    } else if (how == 3) {
      row.put("present_refill_min", Double.toString(pounds / 1.5));
      row.put("present_refill_gpm", "0.5");
    }
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }

  /**
   * {@return rows one after another}
   *
   * @param from index of the first
   * @param to index behind the last
   */
  public Iterator<Map<String, String>> rows(long from, long to) {
    return LongStream.range(from, to).mapToObj(this::row).iterator();
  }
}
