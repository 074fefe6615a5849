package io.github.brinewright.published;

import io.github.brinewright.demand.Household;
import io.github.brinewright.resin.Regenerant;
import io.github.brinewright.sizing.Candidate;
import io.github.brinewright.sizing.Effect;
import io.github.brinewright.sizing.HomeLoad;
import io.github.brinewright.sizing.Site;
import io.github.brinewright.sizing.Sizer;
import io.github.brinewright.sizing.SoftenerUnit;
import io.github.brinewright.units.Hardness;
import io.github.brinewright.units.Volume;
import io.github.brinewright.water.WaterAnalysis;

/** A plain home for figures that need one. */
final class Homes {
  private Homes() {}

  static double sodiumAdded(Hardness hardness) {
    return effect(hardness, Regenerant.SODIUM_CHLORIDE).sodiumAdded().milligramsPerLitre();
  }

  static double potassiumAdded(Hardness hardness) {
    return effect(hardness, Regenerant.POTASSIUM_CHLORIDE).potassiumAdded().milligramsPerLitre();
  }

  private static Effect effect(Hardness hardness, Regenerant regenerant) {
    Site site = Site.of("h", WaterAnalysis.ofHardness(hardness).build(), Household.of(2).build());
    SoftenerUnit unit =
        SoftenerUnit.withResin("u", Volume.ofCubicFeet(1)).regenerant(regenerant).build();
    return new Sizer(new HomeLoad(site)).design(Candidate.of(unit).get(0)).effect();
  }
}
