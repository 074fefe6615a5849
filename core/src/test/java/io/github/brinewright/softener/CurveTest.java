package io.github.brinewright.softener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.TableCurve.Point;
import io.github.brinewright.trace.Source;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CurveTest {
  private static final Source OWN = Source.given("test");

  private static Point point(double dosage, double capacity) {
    return new Point(
        SaltDosage.ofPoundsPerCubicFoot(dosage), ResinCapacity.ofGrainsPerCubicFoot(capacity));
  }

  @Property
  void moreSaltNeverGivesLessCapacityNorMoreEfficiency(
      @ForAll @DoubleRange(min = 0, max = 1) double a,
      @ForAll @DoubleRange(min = 0, max = 1) double b) {
    for (Resin resin : ShippedResins.all()) {
      SaltDosage less = dosageAt(resin, Math.min(a, b));
      SaltDosage more = dosageAt(resin, Math.max(a, b));
      ResinCapacity low = resin.curve().at(less);
      ResinCapacity high = resin.curve().at(more);
      assertThat(high).isGreaterThanOrEqualTo(low);
      assertThat(high.at(more).grainsPerPound())
          .isLessThanOrEqualTo(low.at(less).grainsPerPound() + 1e-9);
      assertThat(low.at(less)).isLessThan(CapacityCurve.CHEMICAL_LIMIT);
    }
  }

  private static SaltDosage dosageAt(Resin resin, double share) {
    CapacityCurve curve = resin.curve();
    return curve
        .lowest()
        .plus(curve.highest().minus(curve.lowest()).times(share))
        .min(curve.highest());
  }

  @Test
  void aTableKeepsItsOwnRows() {
    CapacityCurve curve = ShippedResins.KELLER_STANDARD_MESH;
    assertThat(curve.at(SaltDosage.ofPoundsPerCubicFoot(10)).grainsPerCubicFoot())
        .as("Keller, WC&P 2005")
        .isCloseTo(29_000, within(1e-9));
    assertThat(curve.at(SaltDosage.ofPoundsPerCubicFoot(12.5)).grainsPerCubicFoot())
        .as("half way between 29,000 and 31,300")
        .isCloseTo(30_150, within(1e-9));
  }

  @Test
  void shippedResinsShareOneBasisAndDifferAsLikeForLike() {
    assertThat(ShippedResins.all())
        .allMatch(resin -> resin.curve().basis().equals(CurveBasis.SHIPPED));
    for (double pounds : new double[] {5, 10, 15}) {
      SaltDosage dosage = SaltDosage.ofPoundsPerCubicFoot(pounds);
      double published =
          ShippedResins.KELLER_FINE_MESH
              .at(dosage)
              .ratioTo(ShippedResins.KELLER_STANDARD_MESH.at(dosage));
      double shipped =
          ShippedResins.FINE_MESH
              .curve()
              .at(dosage)
              .ratioTo(ShippedResins.STANDARD_MESH.curve().at(dosage));
      assertThat(shipped)
          .as("Keller, WC&P 2005, at %s; one ratio stands for three within 1 %%", dosage)
          .isCloseTo(published, withinPercentage(1));
    }
    assertThat(ShippedResins.KELLER_FINE_MESH.basis()).isNotEqualTo(CurveBasis.SHIPPED);
  }

  @Test
  void nothingIsExtrapolated() {
    for (Resin resin : ShippedResins.all()) {
      SaltDosage below = resin.curve().lowest().times(0.99);
      SaltDosage above = resin.curve().highest().times(1.01);
      assertThatThrownBy(() -> resin.curve().at(below)).hasMessageContaining("outside the table");
      assertThatThrownBy(() -> resin.curve().at(above)).hasMessageContaining("outside the table");
    }
  }

  @Test
  void impossibleTablesAreRefused() {
    assertThatThrownBy(() -> new TableCurve(List.of(point(5, 20_000)), OWN))
        .hasMessageContaining("at least two");
    assertThatThrownBy(() -> new TableCurve(List.of(point(5, 31_000), point(6, 32_000)), OWN))
        .hasMessageContaining("chemical limit");
    assertThatThrownBy(() -> new TableCurve(List.of(point(5, 20_000), point(8, 19_000)), OWN))
        .hasMessageContaining("must rise");
    assertThatThrownBy(() -> new TableCurve(List.of(point(5, 10_000), point(8, 24_000)), OWN))
        .hasMessageContaining("efficiency must fall");
  }

  @Test
  void potassiumChlorideTakesMoreMassForTheSameCapacity() {
    Volume bed = Volume.ofCubicFeet(1);
    HardnessAmount rated = HardnessAmount.ofGrains(32_000);
    CapacityBasis sodium = new RatedCapacityBasis(rated, bed, Regenerant.SODIUM_CHLORIDE);
    CapacityBasis potassium = new RatedCapacityBasis(rated, bed, Regenerant.POTASSIUM_CHLORIDE);

    assertThat(potassium.usable()).isEqualTo(sodium.usable());
    Mass expected = sodium.saltPerRegeneration().times(1.2756);
    assertThat(potassium.saltPerRegeneration().pounds())
        .as("atomic weights, 4 decimals")
        .isCloseTo(expected.pounds(), within(1e-3));
  }
}
