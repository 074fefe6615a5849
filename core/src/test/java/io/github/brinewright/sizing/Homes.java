package io.github.brinewright.sizing;

import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Softener;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Homes and beds of the tests of this package. */
final class Homes {
  private Homes() {}

  static Site.Builder site(double hardness, Household.Builder household) {
    return site(WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(hardness)), household);
  }

  static Site.Builder site(WaterAnalysis.Builder water, Household.Builder household) {
    return Site.of("h", water.build(), household.build());
  }

  static Softener.Builder bed(double cubicFeet, double pounds, Control... controls) {
    return Softener.withResin("bed", Volume.ofCubicFeet(cubicFeet))
        .dosages(List.of(SaltDosage.ofPoundsPerCubicFoot(pounds)))
        .controls(EnumSet.copyOf(Set.of(controls)));
  }

  static Design only(Sizer sizer, Softener softener) {
    return sizer.design(Setup.of(softener).get(0));
  }
}
