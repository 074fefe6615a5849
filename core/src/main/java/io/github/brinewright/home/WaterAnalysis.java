package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Temperature;
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

  private final Hardness hardness;
  private final WaterSource source;
  private final BacteriaResult bacteria;
  private final Map<Substance, Concentration> tested;
  private final @Nullable Double ph;
  private final @Nullable Temperature temperature;
  private final @Nullable LocalDate date;

  private WaterAnalysis(Builder builder) {
    hardness = builder.hardness;
    source = builder.source;
    bacteria = builder.bacteria;
    tested = new EnumMap<>(builder.tested);
    ph = builder.ph;
    temperature = builder.temperature;
    date = builder.date;
  }

  /**
   * An analysis of which only the hardness is known so far; public supply, nothing else tested.
   *
   * @param hardness 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public static Builder ofHardness(Hardness hardness) {
    return new Builder(HARDNESS.require("hardness", hardness));
  }

  /**
   * The same analysis with another hardness.
   *
   * @param other 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public WaterAnalysis withHardness(Hardness other) {
    Builder builder = ofHardness(other).from(source).bacteria(bacteria);
    tested.forEach(builder::found);
    builder.ph = ph;
    builder.temperature = temperature;
    builder.date = date;
    return builder.build();
  }

  /** Total hardness of calcium and magnesium. */
  public Hardness hardness() {
    return hardness;
  }

  /** Public supply or private well. */
  public WaterSource source() {
    return source;
  }

  /** The bacteria test. */
  public BacteriaResult bacteria() {
    return bacteria;
  }

  /** What was found of the substance; empty when it was not tested. */
  public Optional<Concentration> found(Substance substance) {
    return Optional.ofNullable(tested.get(substance));
  }

  /** What was found of the substance in mg/L, or zero where it was not tested. */
  public Concentration foundOrNone(Substance substance) {
    return found(substance).orElse(Concentration.ofMilligramsPerLitre(0));
  }

  /** pH; empty when it was not tested. */
  public OptionalDouble ph() {
    return ph == null ? OptionalDouble.empty() : OptionalDouble.of(ph);
  }

  /** Temperature of the water; empty when it was not measured. */
  public Optional<Temperature> temperature() {
    return Optional.ofNullable(temperature);
  }

  /** Day of the test; empty when it is not known. */
  public Optional<LocalDate> date() {
    return Optional.ofNullable(date);
  }

  private List<@Nullable Object> parts() {
    return Arrays.asList(hardness, source, bacteria, tested, ph, temperature, date);
  }

  /** Analyses that found the same are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WaterAnalysis that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** What was found, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return hardness
        + ", "
        + source
        + ", bacteria "
        + bacteria
        + ", found "
        + tested
        + ", pH "
        + shown(ph)
        + ", temperature "
        + shown(temperature)
        + ", tested on "
        + shown(date);
  }

  private static String shown(@Nullable Object value) {
    return value == null ? "not known" : value.toString();
  }

  /** Collects an analysis. */
  public static final class Builder {
    private final Hardness hardness;
    private WaterSource source = WaterSource.PUBLIC_SUPPLY;
    private BacteriaResult bacteria = BacteriaResult.NOT_DONE;
    private final Map<Substance, Concentration> tested = new EnumMap<>(Substance.class);
    private @Nullable Double ph;
    private @Nullable Temperature temperature;
    private @Nullable LocalDate date;

    private Builder(Hardness hardness) {
      this.hardness = hardness;
    }

    /** Where the water comes from; public supply unless set. */
    public Builder from(WaterSource source) {
      this.source = source;
      return this;
    }

    /** The bacteria test; not done unless set. */
    public Builder bacteria(BacteriaResult bacteria) {
      this.bacteria = bacteria;
      return this;
    }

    /**
     * A substance that was tested for.
     *
     * @param amount 0 to 50,000 mg/L
     * @throws IllegalArgumentException outside that range
     */
    public Builder found(Substance substance, Concentration amount) {
      tested.put(substance, Substance.FOUND.require(substance.name(), amount));
      return this;
    }

    /**
     * The pH.
     *
     * @param ph from 0 to 14
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
     * @throws IllegalArgumentException outside that range
     */
    public Builder temperature(Temperature temperature) {
      this.temperature = TEMPERATURE.require("water temperature", temperature);
      return this;
    }

    /** Day of the test. */
    public Builder date(LocalDate date) {
      this.date = date;
      return this;
    }

    /** The finished analysis; later calls of this builder do not change it. */
    public WaterAnalysis build() {
      return new WaterAnalysis(this);
    }
  }
}
