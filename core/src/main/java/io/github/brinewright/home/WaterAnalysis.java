package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Turbidity;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What was found in the water. A value that was not tested is absent, never zero. */
public final class WaterAnalysis {
  /** Hardness of a water that may be softened: 0.1 to 200 gpg. */
  public static final Bounds<Hardness> HARDNESS =
      Bounds.of(Hardness.ofGrainsPerGallon(0.1), Hardness.ofGrainsPerGallon(200));

  /** pH: 0 to 14. */
  public static final Bounds<Double> PH = Bounds.of(0.0, 14.0);

  /** Temperature of water as it enters a home: 33 to 120 °F (0.6 to 48.9 °C). */
  public static final Bounds<Temperature> TEMPERATURE =
      Bounds.of(Temperature.ofFahrenheit(33), Temperature.ofFahrenheit(120));

  /** Turbidity that is measured: 0 to 4,000 NTU. */
  public static final Bounds<Turbidity> TURBIDITY =
      Bounds.of(Turbidity.ofNtu(0), Turbidity.ofNtu(4_000));

  private final Builder set;

  private WaterAnalysis(Builder builder) {
    set = builder;
  }

  /**
   * {@return an analysis of which only the hardness is known so far; public supply, nothing else
   * tested}
   *
   * @param hardness 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public static Builder ofHardness(Hardness hardness) {
    return new Builder(HARDNESS.require("hardness", hardness));
  }

  /**
   * {@return the same analysis with another hardness}
   *
   * @param other 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public WaterAnalysis withHardness(Hardness other) {
    Builder changed = set.copy();
    changed.hardness = HARDNESS.require("hardness", other);
    return changed.build();
  }

  /**
   * This water, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    return set.copy();
  }

  /**
   * The same water after a treatment: hardness, and what else is stated of it. Where the iron is
   * stated, what was said of its form in the raw water no longer holds.
   */
  WaterAnalysis after(TreatedWater treated) {
    Builder changed = set.copy();
    changed.hardness = treated.hardness();
    treated.left().forEach(changed::left);
    treated.ph().ifPresent(changed::ph);
    treated.turbidity().ifPresent(changed::turbidity);
    return changed.build();
  }

  /** {@return the total hardness of calcium and magnesium} */
  public Hardness hardness() {
    return set.hardness;
  }

  /** {@return how the hardness is known; empty when nobody says} */
  public Optional<HardnessMethod> hardnessMethod() {
    return Optional.ofNullable(set.hardnessMethod);
  }

  /** {@return public supply or private well} */
  public WaterSource source() {
    return set.source;
  }

  /** {@return the test for coliform bacteria} */
  public BacteriaResult bacteria() {
    return set.bacteria;
  }

  /** {@return the test for Escherichia coli} */
  public BacteriaResult eColi() {
    return set.eColi;
  }

  /** {@return the test for iron bacteria, or the look for their slime} */
  public BacteriaResult ironBacteria() {
    return set.ironBacteria;
  }

  /** {@return how water with iron looks at the tap; empty when nobody looked} */
  public Optional<TapIron> ironAtTap() {
    return Optional.ofNullable(set.ironAtTap);
  }

  /**
   * {@return what the laboratory says of the substance; empty when it was not tested}
   *
   * @param substance what was tested for
   */
  public Optional<LabResult> result(Substance substance) {
    return Optional.ofNullable(set.tested.get(substance));
  }

  /**
   * {@return the most that there is of the substance: what was found, the reporting limit where it
   * is below that, or 0 mg/L where none was detected; empty when it was not tested}
   *
   * @param substance what was tested for
   */
  public Optional<Concentration> found(Substance substance) {
    return result(substance).map(LabResult::atMost);
  }

  /**
   * {@return what was found of the substance in mg/L, or zero where it was not tested}
   *
   * @param substance what was tested for
   */
  public Concentration foundOrNone(Substance substance) {
    return found(substance).orElse(Concentration.ofMilligramsPerLitre(0));
  }

  /** {@return the pH; empty when it was not tested} */
  public OptionalDouble ph() {
    return set.ph == null ? OptionalDouble.empty() : OptionalDouble.of(set.ph);
  }

  /** {@return the turbidity; empty when it was not measured} */
  public Optional<Turbidity> turbidity() {
    return Optional.ofNullable(set.turbidity);
  }

  /** {@return the temperature of the water; empty when it was not measured} */
  public Optional<Temperature> temperature() {
    return Optional.ofNullable(set.temperature);
  }

  /** {@return the day of the test; empty when it is not known} */
  public Optional<LocalDate> date() {
    return Optional.ofNullable(set.date);
  }

  /** Analyses that found the same are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WaterAnalysis that && set.parts().equals(that.set.parts());
  }

  @Override
  public int hashCode() {
    return set.parts().hashCode();
  }

  /** What was found, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return set.hardness
        + " by "
        + shown(set.hardnessMethod)
        + ", "
        + set.source
        + ", bacteria "
        + set.bacteria
        + ", E. coli "
        + set.eColi
        + ", iron bacteria "
        + set.ironBacteria
        + ", iron at the tap "
        + shown(set.ironAtTap)
        + ", found "
        + set.tested
        + ", pH "
        + shown(set.ph)
        + ", turbidity "
        + shown(set.turbidity)
        + ", temperature "
        + shown(set.temperature)
        + ", tested on "
        + shown(set.date);
  }

  private static String shown(@Nullable Object value) {
    return value == null ? "not known" : value.toString();
  }

  /** Collects an analysis. */
  public static final class Builder {
    private final Map<Substance, LabResult> tested = new EnumMap<>(Substance.class);
    private Hardness hardness;
    private @Nullable HardnessMethod hardnessMethod;
    private WaterSource source = WaterSource.PUBLIC_SUPPLY;
    private BacteriaResult bacteria = BacteriaResult.NOT_DONE;
    private BacteriaResult eColi = BacteriaResult.NOT_DONE;
    private BacteriaResult ironBacteria = BacteriaResult.NOT_DONE;
    private @Nullable TapIron ironAtTap;
    private @Nullable Double ph;
    private @Nullable Turbidity turbidity;
    private @Nullable Temperature temperature;
    private @Nullable LocalDate date;

    private Builder(Hardness hardness) {
      this.hardness = hardness;
    }

    private Builder copy() {
      Builder copy = new Builder(hardness);
      copy.tested.putAll(tested);
      copy.hardnessMethod = hardnessMethod;
      copy.source = source;
      copy.bacteria = bacteria;
      copy.eColi = eColi;
      copy.ironBacteria = ironBacteria;
      copy.ironAtTap = ironAtTap;
      copy.ph = ph;
      copy.turbidity = turbidity;
      copy.temperature = temperature;
      copy.date = date;
      return copy;
    }

    private List<@Nullable Object> parts() {
      return Arrays.asList(
          tested,
          hardness,
          hardnessMethod,
          source,
          bacteria,
          eColi,
          ironBacteria,
          ironAtTap,
          ph,
          turbidity,
          temperature,
          date);
    }

    /**
     * What a treatment leaves of a substance. Of iron, what was known of its form no longer holds.
     *
     * @param substance in the water
     * @param left in the water behind the treatment
     * @return this builder
     */
    public Builder left(Substance substance, LabResult left) {
      if (substance == Substance.IRON) {
        tested.remove(Substance.DISSOLVED_IRON);
        ironAtTap = null;
      }
      return found(substance, left);
    }

    /**
     * How the hardness is known; not said unless set.
     *
     * @param method how it was measured or from whom it is
     * @return this builder
     */
    public Builder hardnessBy(HardnessMethod method) {
      this.hardnessMethod = method;
      return this;
    }

    /**
     * Where the water comes from; public supply unless set.
     *
     * @param source public supply or private well
     * @return this builder
     */
    public Builder from(WaterSource source) {
      this.source = source;
      return this;
    }

    /**
     * The test for coliform bacteria; not done unless set.
     *
     * @param bacteria whether the test was done, and what it found
     * @return this builder
     */
    public Builder bacteria(BacteriaResult bacteria) {
      this.bacteria = bacteria;
      return this;
    }

    /**
     * The test for Escherichia coli; not done unless set.
     *
     * @param eColi whether the test was done, and what it found
     * @return this builder
     */
    public Builder eColi(BacteriaResult eColi) {
      this.eColi = eColi;
      return this;
    }

    /**
     * The test for iron bacteria, or the look for their slime; not done unless set.
     *
     * @param ironBacteria whether the test was done, and what it found
     * @return this builder
     */
    public Builder ironBacteria(BacteriaResult ironBacteria) {
      this.ironBacteria = ironBacteria;
      return this;
    }

    /**
     * How water with iron looks at the tap; not looked at unless set.
     *
     * @param look clear or cloudy, before the water stands in the air
     * @return this builder
     */
    public Builder ironAtTap(TapIron look) {
      this.ironAtTap = look;
      return this;
    }

    /**
     * A substance that was tested for, and how much of it was measured.
     *
     * @param substance what was tested for
     * @param amount 0 to 50,000 mg/L
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder found(Substance substance, Concentration amount) {
      return found(
          substance, LabResult.measured(Substance.FOUND.require(substance.name(), amount)));
    }

    /**
     * A substance that was tested for, and what the laboratory says of it.
     *
     * @param substance what was tested for
     * @param result an amount, or below a limit
     * @return this builder
     */
    public Builder found(Substance substance, LabResult result) {
      tested.put(substance, result);
      return this;
    }

    /**
     * The turbidity.
     *
     * @param turbidity 0 to 4,000 NTU
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder turbidity(Turbidity turbidity) {
      this.turbidity = TURBIDITY.require("turbidity", turbidity);
      return this;
    }

    /**
     * The pH.
     *
     * @param ph from 0 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder ph(double ph) {
      this.ph = PH.require("pH", ph);
      return this;
    }

    /**
     * Temperature of the water as it enters the home.
     *
     * @param temperature 33 to 120 °F (0.6 to 48.9 °C)
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder temperature(Temperature temperature) {
      this.temperature = TEMPERATURE.require("water temperature", temperature);
      return this;
    }

    /**
     * Day of the test.
     *
     * @param date on which the water was tested
     * @return this builder
     */
    public Builder date(LocalDate date) {
      this.date = date;
      return this;
    }

    /** {@return the finished analysis; later calls of this builder do not change it} */
    public WaterAnalysis build() {
      return new WaterAnalysis(copy());
    }
  }
}
