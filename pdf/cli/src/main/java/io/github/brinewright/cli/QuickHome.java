package io.github.brinewright.cli;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.job.BuiltInOffers;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A home and a unit described by options alone, for a first look without a job folder. */
final class QuickHome {
  private static final double USUAL_GPM = 0.5;
  private static final Duration TENTH_OF_A_MINUTE = Duration.ofSeconds(6);

  @Option(
      names = "--hardness",
      converter = HardnessConverter.class,
      description = "Hardness with its unit: 22gpg, 375mg/L, 21dH, 37fH, 26clark or 3.7mmol/L.")
  @Nullable Hardness hardness;

  @Option(names = "--people", defaultValue = "3", description = "People (default: 3).")
  int people;

  @Option(names = "--bathrooms", description = "Bathrooms (default: one for two people).")
  @Nullable Double bathrooms;

  @Option(names = "--iron", description = "Iron, mg/L.")
  @Nullable Double iron;

  @Option(names = "--manganese", description = "Manganese, mg/L.")
  @Nullable Double manganese;

  @Option(names = "--rated-grains", description = "Rating of the unit, when only that is known.")
  @Nullable Double ratedGrains;

  @Option(names = "--resin-ft3", description = "Resin volume of the unit, cubic feet.")
  @Nullable Double resinCubicFeet;

  @Option(
      names = "--dosage",
      description = "Salt dosage, lb NaCl for each cubic foot (default: 6).")
  @Nullable Double dosage;

  @Option(
      names = "--control",
      description = "clock, metered_at_once or metered_at_night (default).")
  @Nullable Control control;

  @Option(names = "--refill-gpm", description = "Brine refill flow, gpm (default: 0.5).")
  @Nullable Double refillGpm;

  boolean given() {
    return hardness != null;
  }

  Comparison compare() {
    if (hardness == null) {
      throw new UsageException("name a JOBFOLDER, or describe a home with --hardness and --people");
    }
    CurrencyUnit currency = CurrencyUnit.USD;
    try {
      return PriceList.of(offers(currency)).compare(site(hardness), Tariff.placeholder(currency));
    } catch (IllegalArgumentException refused) {
      throw new UsageException(refused.getMessage());
    }
  }

  private Site site(Hardness known) {
    WaterAnalysis.Builder water = WaterAnalysis.ofHardness(known);
    if (iron != null) {
      water.found(Substance.IRON, Concentration.ofMilligramsPerLitre(iron));
    }
    if (manganese != null) {
      water.found(Substance.MANGANESE, Concentration.ofMilligramsPerLitre(manganese));
    }
    Household.Builder household = Household.of(people);
    if (bathrooms != null) {
      household.bathrooms(bathrooms);
    }
    return Site.of("home", water.build(), household.build()).build();
  }

  private List<Offer> offers(CurrencyUnit currency) {
    if (ratedGrains == null && resinCubicFeet == null) {
      if (control != null || dosage != null || refillGpm != null) {
        throw new UsageException(
            "--control, --dosage and --refill-gpm describe one unit;"
                + " give its --rated-grains or --resin-ft3 too");
      }
      return BuiltInOffers.all(currency);
    }
    Softener.Builder unit =
        bed()
            .controls(EnumSet.of(control == null ? Control.METERED_AT_NIGHT : control))
            .refill(
                FlowRate.ofGallonsPerMinute(refillGpm == null ? USUAL_GPM : refillGpm),
                TENTH_OF_A_MINUTE);
    return List.of(Offer.unpriced(unit.build(), currency));
  }

  private Softener.Builder bed() {
    if (ratedGrains != null && dosage != null) {
      throw new UsageException("--rated-grains and --dosage are two methods; give one of them");
    }
    Volume resin = resinCubicFeet == null ? null : Volume.ofCubicFeet(resinCubicFeet);
    if (ratedGrains == null) {
      return Softener.withResin("unit", Objects.requireNonNull(resin))
          .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(dosage == null ? 6 : dosage)));
    }
    Softener.Builder rated = Softener.withRating("unit", HardnessAmount.ofGrains(ratedGrains));
    return resin == null ? rated : rated.resinVolume(resin);
  }
}
