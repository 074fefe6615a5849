package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.LikelyUse;
import io.github.brinewright.demand.UseFromReadings;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.quantity.Bounds;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What a home really uses, by what was read of a meter or bought of salt, and the home of which
 * that is known. The one place in which readings come into the size of a softener. Immutable.
 *
 * <p>What a softener's meter has counted ÷ the share of the use that passes the bed is the use of
 * the home (hot water alone, a blend through a bypass). What a house's meter has counted − the
 * water of the regenerations is it, too; garden taps count as the home's, since nobody knows their
 * part. Without readings, the salt that is bought a year ÷ the salt of a regeneration × the volume
 * between two of them tells a meter's use, to 20 %; common practice. Then the mean is brought up to
 * date by {@link UseFromReadings}.
 *
 * <pre>{@code
 * ReadUse read = ReadUse.of(site);
 * HomeLoad home = new HomeLoad(read.site());
 * read.use().ifPresent(use -> show(use.low(), use.high()));
 * }</pre>
 */
public final class ReadUse {
  /** Days that must have been read: 7 at least. */
  public static final int LEAST_DAYS = 7;

  /**
   * Salt that fits the settings in any home, for one of the salt that follows from them; 0.75 to
   * 1.33, dimensionless. It fits, too, where nine in ten homes lie of whose use no more is known.
   * Beyond, a leak, a salt bridge or a wrong setting is more likely than another use; common
   * practice.
   */
  public static final Bounds<Double> SALT_FITS = Bounds.of(0.75, 1.33);

  private static final double ONE_IN_TWENTY = 0.05;

  /** What has come of it. */
  public enum Outcome {
    /** Nothing was read, and nothing else tells the use. */
    NOTHING_READ,
    /** The household's use is stated as known. */
    STATED,
    /** The use follows from readings of a meter. */
    BY_METER,
    /** The use follows from the salt that is bought. */
    BY_SALT,
    /** The readings cover less than a week and are left out. */
    TOO_FEW_DAYS,
    /** The counter has not moved, or by no more than regenerations take; it is left out. */
    COUNTER_STOOD_STILL,
    /** The salt that is bought does not fit the settings and any usual use; it is left out. */
    SALT_DOES_NOT_FIT
  }

  private final Site site;
  private final Outcome outcome;
  private final @Nullable UseFromReadings use;

  private ReadUse(Site site, Outcome outcome, @Nullable UseFromReadings use) {
    this.site = use == null ? site : site.withKnownUse(use.known());
    this.outcome = outcome;
    this.use = use;
  }

  private static ReadUse without(Site site, Outcome outcome) {
    return new ReadUse(site, outcome, null);
  }

  /**
   * {@return what the present softener of a home tells of its use; a use that is stated as known
   * stays}
   *
   * @param site the home
   */
  public static ReadUse of(Site site) {
    if (site.household().knownUse().isPresent()) {
      return without(site, Outcome.STATED);
    }
    return site.present()
        .filter(tells())
        .map(present -> told(present, new HomeLoad(site)))
        .orElseGet(() -> without(site, Outcome.NOTHING_READ));
  }

  private static Predicate<PresentSoftener> tells() {
    return present -> !present.readings().isEmpty() || SaltTold.tells(present);
  }

  private static ReadUse told(PresentSoftener present, HomeLoad before) {
    return present.readings().isEmpty() ? bySalt(present, before) : byMeter(present, before);
  }

  private static ReadUse byMeter(PresentSoftener present, HomeLoad before) {
    MeterTold told = new MeterTold(present, before);
    if (told.days() < LEAST_DAYS) {
      return without(before.site(), Outcome.TOO_FEW_DAYS);
    } else if (!told.moved()) {
      return without(before.site(), Outcome.COUNTER_STOOD_STILL);
    }
    UseFromReadings use =
        UseFromReadings.of(before.use().expected(), before.use().likely(), told.intervals());
    return new ReadUse(before.site(), Outcome.BY_METER, use);
  }

  private static ReadUse bySalt(PresentSoftener present, HomeLoad before) {
    SaltTold told = new SaltTold(FoundSoftener.of(present, before), before);
    if (!told.counts()) {
      return without(before.site(), Outcome.NOTHING_READ);
    } else if (!fits(told.useOfYear().ratioTo(before.yearlyUse()), before)) {
      return without(before.site(), Outcome.SALT_DOES_NOT_FIT);
    }
    UseFromReadings use =
        UseFromReadings.ofYear(
            before.use().expected(), before.use().likely(), told.useOfYear(), SaltTold.DEVIATION);
    return new ReadUse(before.site(), Outcome.BY_SALT, use);
  }

  private static boolean fits(double ratio, HomeLoad before) {
    LikelyUse likely = before.use().likely();
    return ratio >= Math.min(SALT_FITS.low(), likely.highMean(ONE_IN_TWENTY))
        && ratio <= Math.max(SALT_FITS.high(), likely.highMean(1 - ONE_IN_TWENTY));
  }

  /** {@return the home, of which the use is known if anything tells it} */
  public Site site() {
    return site;
  }

  /** {@return what has come of it} */
  public Outcome outcome() {
    return outcome;
  }

  /** {@return the use by readings or salt; empty where neither tells it} */
  public Optional<UseFromReadings> use() {
    return Optional.ofNullable(use);
  }

  @Override
  public String toString() {
    return outcome + (use == null ? "" : ": " + use);
  }
}
