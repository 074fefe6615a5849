package io.github.brinewright.quantity;

/** Operating or total capacity of a unit volume of resin, as CaCO3. */
public final class ResinCapacity extends Quantity<ResinCapacity> {
  private static final double EQ_PER_LITRE = 28.316846592 * HardnessAmount.GRAINS_PER_EQUIVALENT;

  private ResinCapacity(double base) {
    super(base);
  }

  /**
   * {@return a resin capacity of {@code value} grains per cubic foot}
   *
   * @param value a finite number of grains per cubic foot
   */
  public static ResinCapacity ofGrainsPerCubicFoot(double value) {
    return new ResinCapacity(value);
  }

  /**
   * {@return a resin capacity of {@code value} equivalents per litre}
   *
   * @param value a finite number of equivalents per litre
   */
  public static ResinCapacity ofEquivalentsPerLitre(double value) {
    return new ResinCapacity(value * EQ_PER_LITRE);
  }

  /** {@return the number of grains per cubic foot} */
  public double grainsPerCubicFoot() {
    return base();
  }

  /** {@return the number of equivalents per litre} */
  public double equivalentsPerLitre() {
    return base() / EQ_PER_LITRE;
  }

  /**
   * {@return the capacity of a bed of the given volume}
   *
   * @param resin volume of the bed
   */
  public HardnessAmount of(Volume resin) {
    return HardnessAmount.ofGrains(base() * resin.cubicFeet());
  }

  /**
   * {@return the efficiency at which the given dosage reaches this capacity}
   *
   * @param dosage salt for each volume of resin; not zero
   */
  public SaltEfficiency at(SaltDosage dosage) {
    return SaltEfficiency.ofGrainsPerPound(base() / dosage.poundsPerCubicFoot());
  }

  @Override
  ResinCapacity with(double base) {
    return new ResinCapacity(base);
  }

  @Override
  String baseUnit() {
    return "grains/ft3";
  }
}
