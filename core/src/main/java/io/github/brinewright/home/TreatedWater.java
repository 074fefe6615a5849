package io.github.brinewright.home;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Turbidity;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
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
  private final Map<Substance, LabResult> left;
  private final @Nullable Double ph;
  private final @Nullable Turbidity turbidity;
  private final List<String> treatments;
  private final Pressure pressureLoss;

  private TreatedWater(Parts parts) {
    hardness = WaterAnalysis.HARDNESS.require("treated hardness", parts.hardness);
    left = Collections.unmodifiableMap(parts.left);
    ph = parts.ph;
    turbidity = parts.turbidity;
    treatments = List.copyOf(parts.treatments);
    pressureLoss = parts.pressureLoss;
  }

  private static final class Parts {
    private Hardness hardness;
    private final Map<Substance, LabResult> left = new EnumMap<>(Substance.class);
    private @Nullable Double ph;
    private @Nullable Turbidity turbidity;
    private List<String> treatments = List.of();
    private Pressure pressureLoss = Pressure.ofPsi(0);

    private Parts(Hardness hardness) {
      this.hardness = hardness;
    }
  }

  private TreatedWater with(Consumer<Parts> change) {
    Parts parts = new Parts(hardness);
    parts.left.putAll(left);
    parts.ph = ph;
    parts.turbidity = turbidity;
    parts.treatments = treatments;
    parts.pressureLoss = pressureLoss;
    change.accept(parts);
    return new TreatedWater(parts);
  }

  /**
   * {@return a water of which only the hardness after treatment is stated}
   *
   * @param hardness 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public static TreatedWater ofHardness(Hardness hardness) {
    return new TreatedWater(new Parts(hardness));
  }

  /**
   * {@return the same with another hardness}
   *
   * @param other 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public TreatedWater withHardness(Hardness other) {
    return with(parts -> parts.hardness = other);
  }

  /**
   * {@return the same with the iron that is left}
   *
   * @param after what the laboratory says of it after treatment
   */
  public TreatedWater withIron(LabResult after) {
    return withLeft(Substance.IRON, after);
  }

  /**
   * {@return the same with the manganese that is left}
   *
   * @param after what the laboratory says of it after treatment
   */
  public TreatedWater withManganese(LabResult after) {
    return withLeft(Substance.MANGANESE, after);
  }

  /**
   * {@return the same with what is left of a substance}
   *
   * @param substance in the water
   * @param after what the laboratory says of it after treatment
   */
  public TreatedWater withLeft(Substance substance, LabResult after) {
    return with(parts -> parts.left.put(substance, after));
  }

  /**
   * {@return the same with the pH after treatment}
   *
   * @param after from 0 to 14
   * @throws IllegalArgumentException outside that range
   */
  public TreatedWater withPh(double after) {
    double checked = WaterAnalysis.PH.require("treated pH", after);
    return with(parts -> parts.ph = checked);
  }

  /**
   * {@return the same with the turbidity after treatment}
   *
   * @param after 0 to 4,000 NTU
   * @throws IllegalArgumentException outside that range
   */
  public TreatedWater withTurbidity(Turbidity after) {
    Turbidity checked = WaterAnalysis.TURBIDITY.require("treated turbidity", after);
    return with(parts -> parts.turbidity = checked);
  }

  /**
   * {@return the same as computed for treatments that are sold with the softener, not stated}
   *
   * @param ids of the treatments, in the order of the water
   * @param loss of pressure in all of them; zero or more
   * @throws IllegalArgumentException when the loss is negative
   */
  public TreatedWater by(List<String> ids, Pressure loss) {
    Pressure checked = Require.notNegative("pressure loss of treatments", loss);
    return with(
        parts -> {
          parts.treatments = ids;
          parts.pressureLoss = checked;
        });
  }

  /** {@return the total hardness after treatment} */
  public Hardness hardness() {
    return hardness;
  }

  /** {@return the iron that is left; empty when it is not stated} */
  public Optional<LabResult> iron() {
    return Optional.ofNullable(left.get(Substance.IRON));
  }

  /** {@return the manganese that is left; empty when it is not stated} */
  public Optional<LabResult> manganese() {
    return Optional.ofNullable(left.get(Substance.MANGANESE));
  }

  /** {@return what is left of each substance of which that is stated or computed} */
  public Map<Substance, LabResult> left() {
    return left;
  }

  /** {@return the pH after treatment; empty when it is not stated} */
  public OptionalDouble ph() {
    return ph == null ? OptionalDouble.empty() : OptionalDouble.of(ph);
  }

  /** {@return the turbidity after treatment; empty when it is not stated} */
  public Optional<Turbidity> turbidity() {
    return Optional.ofNullable(turbidity);
  }

  /**
   * {@return ids of the treatments, sold with the softener, that it is computed for; empty where it
   * is stated}
   */
  public List<String> treatments() {
    return treatments;
  }

  /** {@return whether it is computed for treatments that are sold with the softener} */
  public boolean isComputed() {
    return !treatments.isEmpty();
  }

  /** {@return the pressure that these treatments take; none where it is stated} */
  public Pressure pressureLoss() {
    return pressureLoss;
  }

  private List<@Nullable Object> parts() {
    return Arrays.asList(hardness, left, ph, turbidity, treatments, pressureLoss);
  }

  /** Waters of which the same is stated are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TreatedWater that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** What is stated, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return hardness
        + ", left "
        + left
        + ", pH "
        + (ph == null ? "as before" : ph)
        + ", turbidity "
        + (turbidity == null ? "as before" : turbidity)
        + (isComputed() ? ", by " + treatments : "");
  }
}
