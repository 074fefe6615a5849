package io.github.brinewright.treatment;

import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Turbidity;
import io.github.brinewright.quantity.Volume;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a treatment takes from the water, within which limits, and what it needs itself; all of it
 * as its maker states.
 *
 * <pre>{@code
 * Treatment filter =
 *     Treatment.at(TreatmentPosition.METALS)
 *         .takes(Substance.IRON, 0.95)
 *         .most(Substance.IRON, Concentration.ofMilligramsPerLitre(10))
 *         .leastPh(6.8)
 *         .build();
 * }</pre>
 *
 * <p>Immutable.
 */
public final class Treatment {
  /** Share of a substance that is taken: 0 to 1. Dimensionless. */
  public static final Bounds<Double> SHARE = Bounds.of(0.0, 1.0);

  /** Volume of a backwash: 1 to 2,000 gal. */
  public static final Bounds<Volume> BACKWASH =
      Bounds.of(Volume.ofGallons(1), Volume.ofGallons(2_000));

  /** Days from one backwash to the next: 1 to 365. */
  public static final Bounds<Integer> BACKWASH_DAYS = Bounds.of(1, 365);

  /** Pressure loss at the service flow: 0 to 30 psi. */
  public static final Bounds<Pressure> LOSS = Bounds.of(Pressure.ofPsi(0), Pressure.ofPsi(30));

  /** Service flow: 0.5 to 200 gpm. */
  public static final Bounds<FlowRate> FLOW =
      Bounds.of(FlowRate.ofGallonsPerMinute(0.5), FlowRate.ofGallonsPerMinute(200));

  private static final double DAYS_A_YEAR = 365;

  private final Builder set;

  private Treatment(Builder builder) {
    set = builder;
  }

  /**
   * Begins a treatment.
   *
   * @param position where it stands
   * @return a builder of it
   */
  public static Builder at(TreatmentPosition position) {
    return new Builder(position);
  }

  /** {@return where it stands} */
  public TreatmentPosition position() {
    return set.position;
  }

  /**
   * {@return the share of a substance that it takes; empty where it takes none} Dimensionless, 0 to
   * 1.
   *
   * @param substance in the water
   */
  public OptionalDouble takes(Substance substance) {
    Double share = set.shares.get(substance);
    return share == null ? OptionalDouble.empty() : OptionalDouble.of(share);
  }

  /** {@return the share of the turbidity that it takes; empty where none} Dimensionless, 0 to 1. */
  public OptionalDouble takesTurbidity() {
    return optional(set.turbidity);
  }

  /**
   * {@return the most of a substance that it can be given; empty where none is stated}
   *
   * @param substance in the water
   */
  public Optional<Concentration> most(Substance substance) {
    return Optional.ofNullable(set.most.get(substance));
  }

  /** {@return the least pH that it works at; empty where none is stated} */
  public OptionalDouble leastPh() {
    return optional(set.leastPh);
  }

  /** {@return how it lifts the pH; empty where it does not} */
  public Optional<Neutralizer> neutralizer() {
    return Optional.ofNullable(set.neutralizer);
  }

  /** {@return the flow that it treats; empty where none is stated} */
  public Optional<FlowRate> serviceFlow() {
    return Optional.ofNullable(set.serviceFlow);
  }

  /** {@return its pressure loss at that flow; none where none is stated} */
  public Pressure pressureLoss() {
    return set.pressureLoss;
  }

  /** {@return the volume of a backwash; empty where it has none} */
  public Optional<Volume> backwash() {
    return Optional.ofNullable(set.backwash);
  }

  /** {@return days from one backwash to the next; 1 to 365} */
  public int backwashEveryDays() {
    return set.backwashDays;
  }

  /**
   * {@return water that it sends to the drain in a year} Formula: volume of a backwash × 365 ÷ days
   * between two. Example: 60 gal every 3 days → 7,300 gal. Source: product of the figures named.
   */
  public Volume drainOfYear() {
    return backwash().orElse(Volume.ofGallons(0)).times(DAYS_A_YEAR / backwashEveryDays());
  }

  /** {@return whether it changes water that a softener is sized on} */
  public boolean changesWater() {
    return position().aheadOfSoftener()
        && (!set.shares.isEmpty() || set.turbidity != null || set.neutralizer != null);
  }

  /**
   * {@return whether it can be given a water: no more of anything than it takes, at a pH that it
   * works at, and with what must be known of the water for its effect}
   *
   * @param water that reaches it; a substance or a pH that was not tested is no obstacle
   */
  public boolean fits(WaterAnalysis water) {
    boolean lessThanMost =
        set.most.entrySet().stream()
            .allMatch(
                each ->
                    water
                        .found(each.getKey())
                        .map(found -> !found.exceeds(each.getValue()))
                        .orElse(true));
    boolean ph =
        water.ph().isEmpty() || leastPh().isEmpty() || water.ph().getAsDouble() >= set.leastPh;
    return lessThanMost && ph && neutralizer().map(each -> known(water, each)).orElse(true);
  }

  private static boolean known(WaterAnalysis water, Neutralizer neutralizer) {
    return CarbonDioxide.dissolved(water, neutralizer.mineral(), neutralizer.phAfter()).isPresent();
  }

  /**
   * {@return the water behind it} What is taken is its share of what was found; a result below a
   * limit stays as it is. Example: 3.4 mg/L of iron, of which 95 % are taken → 0.17 mg/L.
   *
   * @param water that reaches it
   * @throws IllegalArgumentException when it does not fit that water
   */
  public WaterAnalysis treat(WaterAnalysis water) {
    if (!fits(water)) {
      throw new IllegalArgumentException("the treatment does not fit this water: " + water);
    }
    WaterAnalysis.Builder after = water.toBuilder();
    set.shares.forEach(
        (substance, share) ->
            water.result(substance).ifPresent(found -> leave(after, substance, found, share)));
    if (set.turbidity != null) {
      double left = 1 - set.turbidity;
      water.turbidity().ifPresent(each -> after.turbidity(Turbidity.ofNtu(each.ntu() * left)));
    }
    WaterAnalysis filtered = after.build();
    return neutralizer().map(each -> neutralized(filtered, each)).orElse(filtered);
  }

  private static void leave(
      WaterAnalysis.Builder after, Substance substance, LabResult found, double share) {
    LabResult left =
        found.kind() == LabResult.Kind.MEASURED
            ? LabResult.measured(found.atMost().times(1 - share))
            : found;
    after.left(substance, left);
  }

  private static WaterAnalysis neutralized(WaterAnalysis water, Neutralizer neutralizer) {
    if (water.ph().isPresent() && water.ph().getAsDouble() >= neutralizer.phAfter()) {
      return water;
    }
    Concentration dissolved =
        CarbonDioxide.dissolved(water, neutralizer.mineral(), neutralizer.phAfter()).orElseThrow();
    Concentration alkalinity = water.foundOrNone(Substance.ALKALINITY).plus(dissolved);
    Concentration left = alkalinity.times(CarbonDioxide.perAlkalinity(neutralizer.phAfter()));
    Hardness added = Hardness.ofMilligramsPerLitre(dissolved.milligramsPerLitre());
    return water.toBuilder()
        .ph(neutralizer.phAfter())
        .found(Substance.ALKALINITY, LabResult.measured(alkalinity))
        .found(Substance.CARBON_DIOXIDE, LabResult.measured(left))
        .build()
        .withHardness(WaterAnalysis.HARDNESS.nearest(water.hardness().plus(added)));
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Treatment that && set.parts().equals(that.set.parts());
  }

  @Override
  public int hashCode() {
    return set.parts().hashCode();
  }

  @Override
  public String toString() {
    return "Treatment" + set.parts();
  }

  /** Collects a treatment. */
  public static final class Builder {
    private final TreatmentPosition position;
    private final Map<Substance, Double> shares = new EnumMap<>(Substance.class);
    private final Map<Substance, Concentration> most = new EnumMap<>(Substance.class);
    private @Nullable Double turbidity;
    private @Nullable Double leastPh;
    private @Nullable Neutralizer neutralizer;
    private @Nullable FlowRate serviceFlow;
    private Pressure pressureLoss = LOSS.low();
    private @Nullable Volume backwash;
    private int backwashDays = 1;

    private Builder(TreatmentPosition position) {
      this.position = position;
    }

    private List<@Nullable Object> parts() {
      return Arrays.asList(
          position,
          shares,
          most,
          turbidity,
          leastPh,
          neutralizer,
          serviceFlow,
          pressureLoss,
          backwash,
          backwashDays);
    }

    /**
     * The share of a substance that is taken; none unless set.
     *
     * @param substance in the water
     * @param share dimensionless, 0 to 1
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder takes(Substance substance, double share) {
      shares.put(substance, SHARE.require("share of " + substance, share));
      return this;
    }

    /**
     * The share of the turbidity that is taken; none unless set.
     *
     * @param share dimensionless, 0 to 1
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder takesTurbidity(double share) {
      turbidity = SHARE.require("share of turbidity", share);
      return this;
    }

    /**
     * The most of a substance that it can be given; any amount unless set.
     *
     * @param substance in the water
     * @param amount 0 to 50,000 mg/L
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder most(Substance substance, Concentration amount) {
      most.put(substance, Substance.FOUND.require("most of " + substance, amount));
      return this;
    }

    /**
     * The least pH that it works at; any unless set.
     *
     * @param ph 0 to 14
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder leastPh(double ph) {
      leastPh = WaterAnalysis.PH.require("least pH", ph);
      return this;
    }

    /**
     * How it lifts the pH; it does not unless set.
     *
     * @param bed that dissolves
     * @return this builder
     */
    public Builder neutralizer(Neutralizer bed) {
      neutralizer = bed;
      return this;
    }

    /**
     * The flow that it treats; as much as is asked for unless set.
     *
     * @param flow 0.5 to 200 gpm
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder serviceFlow(FlowRate flow) {
      serviceFlow = FLOW.require("service flow of a treatment", flow);
      return this;
    }

    /**
     * Its pressure loss at the service flow; none unless set.
     *
     * @param loss 0 to 30 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder pressureLoss(Pressure loss) {
      pressureLoss = LOSS.require("pressure loss of a treatment", loss);
      return this;
    }

    /**
     * Its backwash; none unless set.
     *
     * @param volume of one; 1 to 2,000 gal
     * @param everyDays days from one to the next; 1 to 365
     * @return this builder
     * @throws IllegalArgumentException outside these ranges
     */
    public Builder backwash(Volume volume, int everyDays) {
      backwash = BACKWASH.require("backwash of a treatment", volume);
      backwashDays = BACKWASH_DAYS.require("days between two backwashes", everyDays);
      return this;
    }

    private Builder copy() {
      Builder copy = new Builder(position);
      copy.shares.putAll(shares);
      copy.most.putAll(most);
      copy.turbidity = turbidity;
      copy.leastPh = leastPh;
      copy.neutralizer = neutralizer;
      copy.serviceFlow = serviceFlow;
      copy.pressureLoss = pressureLoss;
      copy.backwash = backwash;
      copy.backwashDays = backwashDays;
      return copy;
    }

    /** {@return the finished treatment; later calls of this builder do not change it} */
    public Treatment build() {
      return new Treatment(copy());
    }
  }
}
