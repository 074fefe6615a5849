package io.github.brinewright.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.DailyVariation;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every type accepts can be worked out in full, in all combinations of the ends of ranges. */
class CornersTest {
  private static <T extends Comparable<? super T>> List<T> ends(Bounds<T> bounds) {
    return List.of(bounds.low(), bounds.high());
  }

  private static List<Site> homes() {
    List<Site> homes = new ArrayList<>();
    for (Hardness hardness : ends(WaterAnalysis.HARDNESS)) {
      ends(WaterAnalysis.TEMPERATURE)
          .forEach(
              temperature -> {
                WaterAnalysis.Builder water =
                    WaterAnalysis.ofHardness(hardness).temperature(temperature);
                for (Household household : households()) {
                  Site.Builder site = Site.of("h", water.build(), household);
                  homes.add(site.build());
                  homes.add(site.target(hardness.times(0.999).min(Site.TARGET.high())).build());
                }
              });
    }
    homes.add(
        Site.of(
                "iron",
                WaterAnalysis.ofHardness(WaterAnalysis.HARDNESS.high())
                    .found(Substance.IRON, Substance.FOUND.high())
                    .build(),
                Household.of(Household.PEOPLE.high()).build())
            .build());
    return homes;
  }

  private static List<Household> households() {
    List<Household> households = new ArrayList<>();
    for (int people : ends(Household.PEOPLE)) {
      for (Volume each : ends(Household.PER_PERSON)) {
        double bathrooms = people == 1 ? Household.BATHROOMS.low() : Household.BATHROOMS.high();
        households.add(
            Household.of(people)
                .perPersonDaily(each)
                .bathrooms(bathrooms)
                .softened(people == 1 ? SoftenedShare.HOT_WATER : SoftenedShare.WHOLE_HOUSE)
                .build());
      }
    }
    return households;
  }

  private static List<Softener> softeners() {
    List<Softener.Builder> beds = new ArrayList<>();
    ends(RatedCapacityBasis.RATING).forEach(rated -> beds.add(Softener.withRating("r", rated)));
    CapacityCurve curve = ShippedResins.FINE_MESH.curve();
    for (Volume volume : ends(Softener.RESIN_VOLUME)) {
      for (SaltDosage dosage : ends(curve.dosages())) {
        for (boolean small : new boolean[] {true, false}) {
          beds.add(
              Softener.withResin("c", volume)
                  .regenerant(small ? Regenerant.SODIUM_CHLORIDE : Regenerant.POTASSIUM_CHLORIDE)
                  .dosages(List.of(dosage))
                  .valveLoss(end(Softener.VALVE_LOSS, small))
                  .saltStorage(end(Softener.SALT_STORAGE, small))
                  .resin(
                      new Resin(
                          "x",
                          "x",
                          curve,
                          end(Resin.BEAD_SIZE, small),
                          end(Resin.BEAD_DENSITY, small))));
        }
      }
    }
    List<Softener> softeners = new ArrayList<>();
    for (Softener.Builder bed : beds) {
      bed.controls(EnumSet.allOf(Control.class));
      for (boolean small : new boolean[] {true, false}) {
        softeners.add(
            bed.refill(end(Softener.REFILL_RATE, small), end(Softener.REFILL_STEP, !small))
                .drainFlows(List.of(end(Softener.DRAIN_FLOW, small)))
                .build());
      }
    }
    return softeners;
  }

  private static <T extends Comparable<? super T>> T end(Bounds<T> bounds, boolean low) {
    return low ? bounds.low() : bounds.high();
  }

  private static List<DailyVariation> variations() {
    return List.of(
        DailyVariation.NONE,
        DailyVariation.USUAL,
        new DailyVariation(
            DailyVariation.COEFFICIENT.high(),
            DailyVariation.NEXT_DAY.high(),
            Collections.nCopies(7, DailyVariation.WEEKDAY.high())));
  }

  @Test
  void everyCornerIsWorkedOutInFull() {
    List<Softener> softeners = softeners();
    int designs = 0;
    for (Site site : homes()) {
      for (DailyVariation variation : variations()) {
        for (double risk :
            new double[] {0, DailyVariation.RISK.low(), DailyVariation.RISK.high()}) {
          Sizer sizer = new Sizer(new HomeLoad(site, variation), risk);
          for (Softener softener : softeners) {
            for (Setup setup : Setup.of(softener)) {
              check(sizer.design(setup));
              designs++;
            }
          }
        }
      }
    }
    assertThat(designs).isGreaterThan(10_000);
  }

  private static void check(Design design) {
    assertThat(design.steps()).extracting(Step::result).isNotEmpty();
    assertThat(design.year().isPresent()).isEqualTo(design.feasible());
    assertThat(design.runOutShare().orElse(0)).as(design.toString()).isBetween(0.0, 1.0);
    design.year().ifPresent(CornersTest::check);
    assertThat(design.flow().pressureLoss().low().isPositive()).isTrue();
  }

  private static void check(YearlyUse year) {
    assertThat(year.regenerations()).isPositive().isFinite();
    assertThat(year.salt().isPositive()).isTrue();
  }
}
