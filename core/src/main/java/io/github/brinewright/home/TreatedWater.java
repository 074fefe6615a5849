package io.github.brinewright.home;

import io.github.brinewright.quantity.Hardness;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The water as the treatment ahead of the softener leaves it, so far as it is stated. What is not
 * stated is as in the raw water. Example:
 *
 * <pre>{@code
 * TreatedWater treated =
 *     TreatedWater.ofHardness(Hardness.ofGrainsPerGallon(18))
 *         .withIron(LabResult.below(Concentration.ofMilligramsPerLitre(0.1)))
 *         .withPh(7.2);
 * }</pre>
 */
public final class TreatedWater {
  private final Hardness hardness;
  private final @Nullable LabResult iron;
  private final @Nullable LabResult manganese;
  private final @Nullable Double ph;

  private TreatedWater(
      Hardness hardness,
      @Nullable LabResult iron,
      @Nullable LabResult manganese,
      @Nullable Double ph) {
    this.hardness = hardness;
    this.iron = iron;
    this.manganese = manganese;
    this.ph = ph;
  }

  /**
   * {@return a water of which only the hardness after treatment is stated}
   *
   * @param hardness 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public static TreatedWater ofHardness(Hardness hardness) {
    return new TreatedWater(
        WaterAnalysis.HARDNESS.require("treated hardness", hardness), null, null, null);
  }

  /**
   * {@return the same with another hardness}
   *
   * @param other 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public TreatedWater withHardness(Hardness other) {
    Hardness checked = WaterAnalysis.HARDNESS.require("treated hardness", other);
    return new TreatedWater(checked, iron, manganese, ph);
  }

  /**
   * {@return the same with the iron that is left}
   *
   * @param left what the laboratory says of it after treatment
   */
  public TreatedWater withIron(LabResult left) {
    return new TreatedWater(hardness, left, manganese, ph);
  }

  /**
   * {@return the same with the manganese that is left}
   *
   * @param left what the laboratory says of it after treatment
   */
  public TreatedWater withManganese(LabResult left) {
    return new TreatedWater(hardness, iron, left, ph);
  }

  /**
   * {@return the same with the pH after treatment}
   *
   * @param after from 0 to 14
   * @throws IllegalArgumentException outside that range
   */
  public TreatedWater withPh(double after) {
    return new TreatedWater(
        hardness, iron, manganese, WaterAnalysis.PH.require("treated pH", after));
  }

  /** {@return the total hardness after treatment} */
  public Hardness hardness() {
    return hardness;
  }

  /** {@return the iron that is left; empty when it is not stated} */
  public Optional<LabResult> iron() {
    return Optional.ofNullable(iron);
  }

  /** {@return the manganese that is left; empty when it is not stated} */
  public Optional<LabResult> manganese() {
    return Optional.ofNullable(manganese);
  }

  /** {@return the pH after treatment; empty when it is not stated} */
  public OptionalDouble ph() {
    return ph == null ? OptionalDouble.empty() : OptionalDouble.of(ph);
  }

  /** Waters of which the same is stated are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TreatedWater that
        && hardness.equals(that.hardness)
        && Objects.equals(iron, that.iron)
        && Objects.equals(manganese, that.manganese)
        && Objects.equals(ph, that.ph);
  }

  @Override
  public int hashCode() {
    return Objects.hash(hardness, iron, manganese, ph);
  }

  /** What is stated, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return hardness
        + ", iron "
        + shown(iron)
        + ", manganese "
        + shown(manganese)
        + ", pH "
        + shown(ph);
  }

  private static String shown(@Nullable Object value) {
    return value == null ? "as before" : value.toString();
  }
}
