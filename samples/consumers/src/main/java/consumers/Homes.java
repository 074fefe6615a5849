package consumers;

import io.github.brinewright.home.Household;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Hardness;

/** An invented home. */
final class Homes {
  private Homes() {}

  static Site one() {
    var water = WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18)).build();
    return Site.of("A1", water, Household.of(3).bathrooms(2).build());
  }
}
