package io.github.brinewright.home;

import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Temperature;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** What was found in the water. A value that was not tested is absent, never zero. */
public final class WaterAnalysis {
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
   * @param hardness greater than zero
   * @throws IllegalArgumentException when the hardness is zero or negative
   */
  public static Builder ofHardness(Hardness hardness) {
    return new Builder(Require.positive("hardness", hardness));
  }

  /** The same analysis with another hardness. */
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
     * @param amount zero or more
     */
    public Builder found(Substance substance, Concentration amount) {
      tested.put(substance, Require.notNegative(substance.name(), amount));
      return this;
    }

    /**
     * @param ph from 0 to 14
     */
    public Builder ph(double ph) {
      this.ph = Require.between("pH", ph, 0, 14);
      return this;
    }

    /** Temperature of the water as it enters the home. */
    public Builder temperature(Temperature temperature) {
      this.temperature = temperature;
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
