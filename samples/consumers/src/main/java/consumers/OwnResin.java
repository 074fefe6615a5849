package consumers;

import io.github.brinewright.quantity.SaltDosage;
import java.nio.file.Path;

/** A resin by the dealer's own table. */
final class OwnResin implements Consumer {
  @Override
  public String run(Path out) {
    SaltDosage dosage = SaltDosage.ofPoundsPerCubicFoot(6);
    long grains = Math.round(OwnStock.resin().curve().at(dosage).grainsPerCubicFoot());
    Consumer.require(grains == 18_500, "6 lb lies half-way between the rows of 4 and 8 lb");
    return grains + " grains/ft3";
  }
}
