package io.github.brinewright.published;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.AddedIons;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Softener;

/** A plain home for figures that need one. */
final class Homes {
  private Homes() {}

  static double sodiumAdded(Hardness hardness) {
    return added(hardness, Regenerant.SODIUM_CHLORIDE).sodium().milligramsPerLitre();
  }

  static double potassiumAdded(Hardness hardness) {
    return added(hardness, Regenerant.POTASSIUM_CHLORIDE).potassium().milligramsPerLitre();
  }

  private static AddedIons added(Hardness hardness, Regenerant regenerant) {
    Site site =
        Site.of("h", WaterAnalysis.ofHardness(hardness).build(), Household.of(2).build()).build();
    Softener softener =
        Softener.withResin("u", Volume.ofCubicFeet(1)).regenerant(regenerant).build();
    return new Sizer(new HomeLoad(site)).design(Setup.of(softener).get(0)).addedIons();
  }
}
