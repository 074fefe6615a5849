package io.github.brinewright.softener;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Volume;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A softener as a dealer stocks it: a bed with a resin and the dosages it may be set to, or a bed
 * of which only a rating is known, with the valve's figures.
 */
public final class Softener {
  /** Volume of a bed: 0.1 to 20 ft3. */
  public static final Bounds<Volume> RESIN_VOLUME =
      Bounds.of(Volume.ofCubicFeet(0.1), Volume.ofCubicFeet(20));

  /** Flow of a brine refill: 0.05 to 5 gpm. */
  public static final Bounds<FlowRate> REFILL_RATE =
      Bounds.of(FlowRate.ofGallonsPerMinute(0.05), FlowRate.ofGallonsPerMinute(5));

  /** Smallest step of a refill setting: 0.01 to 5 minutes. */
  public static final Bounds<Duration> REFILL_STEP =
      Bounds.of(Minutes.toDuration(0.01), Minutes.toDuration(5));

  /** Flow that a bed softens: 0.5 to 200 gpm. */
  public static final Bounds<FlowRate> SERVICE_FLOW =
      Bounds.of(FlowRate.ofGallonsPerMinute(0.5), FlowRate.ofGallonsPerMinute(200));

  /** Pressure loss of valve and piping: 0 to 50 psi. */
  public static final Bounds<Pressure> VALVE_LOSS =
      Bounds.of(Pressure.ofPsi(0), Pressure.ofPsi(50));

  /** Power that a control draws: 0 to 100 W. */
  public static final Bounds<Power> STANDBY = Bounds.of(Power.ofWatts(0), Power.ofWatts(100));

  /** Salt that a brine tank stores: 1 to 5,000 lb. */
  public static final Bounds<Mass> SALT_STORAGE = Bounds.of(Mass.ofPounds(1), Mass.ofPounds(5_000));

  /** Flow that a drain line control lets through: 0.2 to 60 gpm. */
  public static final Bounds<FlowRate> DRAIN_FLOW =
      Bounds.of(FlowRate.ofGallonsPerMinute(0.2), FlowRate.ofGallonsPerMinute(60));

  /** Salt efficiency that a certificate may state: 500 to 6,000 grains a pound. */
  public static final Bounds<SaltEfficiency> CERTIFIED_EFFICIENCY =
      Bounds.of(SaltEfficiency.ofGrainsPerPound(500), SaltEfficiency.ofGrainsPerPound(6_000));

  private static final double CONTINUOUS_GPM_PER_CUBIC_FOOT = 5;
  private static final double PEAK_GPM_PER_CUBIC_FOOT = 10;

  private final Builder set;
  private final List<CapacityBasis> bases;
  private final int hash;

  private Softener(Builder builder) {
    set = builder;
    bases = set.bases();
    hash = set.parts().hashCode();
  }

  /**
   * {@return a bed of known resin and volume: standard gel at 6 lb/ft3 unless set otherwise}
   *
   * @param id short name within a price list; not blank
   * @param resinVolume 0.1 to 20 ft3
   * @throws IllegalArgumentException outside that range, or when the id is blank
   */
  public static Builder withResin(String id, Volume resinVolume) {
    return new Builder(id, null, RESIN_VOLUME.require("resin volume", resinVolume));
  }

  /**
   * {@return a bed of which only the rating is known; its volume is taken as 1 ft3 for each 32,000
   * grains unless set otherwise}
   *
   * @param id short name within a price list; not blank
   * @param rated 1,000 to 1,000,000 grains
   * @throws IllegalArgumentException outside that range, or when the id is blank
   */
  public static Builder withRating(String id, HardnessAmount rated) {
    return new Builder(id, rated, RatedCapacityBasis.usualVolume(rated));
  }

  /** {@return the short name within a price list} */
  public String id() {
    return set.id;
  }

  /** {@return the name on paper} */
  public String name() {
    return set.name;
  }

  /** {@return the rating, when the softener is sized by one} */
  public Optional<HardnessAmount> rated() {
    return Optional.ofNullable(set.rated);
  }

  /** {@return the volume of the bed} */
  public Volume resinVolume() {
    return set.resinVolume;
  }

  /** {@return whether {@link #resinVolume()} was only guessed from the rating} */
  public boolean resinVolumeAssumed() {
    return set.resinVolumeAssumed;
  }

  /** {@return the resin in the bed} */
  public Resin resin() {
    return set.resin;
  }

  /** {@return the controls it is sold with} */
  public Set<Control> controls() {
    return EnumSet.copyOf(set.controls());
  }

  /** {@return how its tanks work together} */
  public Arrangement arrangement() {
    return set.arrangement;
  }

  /** {@return how many tanks it has} Volume, rating, vessel and flows are those of one tank. */
  public int tanks() {
    return set.tanks;
  }

  /** {@return the salt efficiency that a certificate states; empty when the unit has none} */
  public Optional<SaltEfficiency> certifiedEfficiency() {
    return Optional.ofNullable(set.certifiedEfficiency);
  }

  /** {@return the vessel} */
  public Vessel vessel() {
    return set.vessel == null ? Vessel.usualFor(set.resinVolume) : set.vessel;
  }

  /** {@return the flow of the brine refill} */
  public FlowRate refillRate() {
    return set.refillRate;
  }

  /** {@return the smallest step of the refill setting} */
  public Duration refillStep() {
    return set.refillStep;
  }

  /** {@return the flow that the bed softens without a break; 5 gpm/ft3 unless set} */
  public FlowRate serviceFlow() {
    return set.serviceFlow == null ? perCubicFoot(CONTINUOUS_GPM_PER_CUBIC_FOOT) : set.serviceFlow;
  }

  /** {@return the flow that the bed softens for some minutes; 10 gpm/ft3 unless set} */
  public FlowRate peakServiceFlow() {
    return set.peakFlow == null ? perCubicFoot(PEAK_GPM_PER_CUBIC_FOOT) : set.peakFlow;
  }

  private FlowRate perCubicFoot(double gallonsPerMinute) {
    return FlowRate.ofGallonsPerMinute(gallonsPerMinute * set.resinVolume.cubicFeet());
  }

  /** {@return the pressure loss of valve and piping at {@link #serviceFlow()}} */
  public Pressure valveLoss() {
    return set.valveLoss;
  }

  /** {@return the power that the control draws at all times} */
  public Power standby() {
    return set.standby;
  }

  /** {@return the salt that the brine tank stores; empty when neither it nor the tank is known} */
  public Optional<Mass> saltStorage() {
    return Optional.ofNullable(set.saltStorage).or(() -> brineTank().map(BrineTank::storage));
  }

  /** {@return the brine tank; empty when not known} */
  public Optional<BrineTank> brineTank() {
    return Optional.ofNullable(set.brineTank);
  }

  /** {@return the drain flows that the dealer stocks for it; empty when not known} */
  public List<FlowRate> drainFlows() {
    return set.drainFlows;
  }

  /** {@return the cycle plan set by the dealer; empty to choose one by rule} */
  public Optional<CyclePlan> plan() {
    return Optional.ofNullable(set.plan);
  }

  /** {@return the salt used} */
  public Regenerant regenerant() {
    return set.regenerant;
  }

  /**
   * {@return every capacity basis it may be set to: one for each dosage, or the one of its rating}
   */
  public List<CapacityBasis> bases() {
    return bases;
  }

  /** Softeners that were given the same of everything are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || other instanceof Softener that
            && hash == that.hash
            && set.parts().equals(that.set.parts());
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** Name, bed and controls, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    String bed = set.rated == null ? "dosages " + set.dosages : "rated " + set.rated;
    return set.name
        + " ("
        + set.id
        + "): "
        + set.resinVolume.cubicFeet()
        + " ft3 of "
        + set.resin.id()
        + ", "
        + bed
        + ", "
        + set.controls()
        + ", "
        + set.tanks
        + " tanks "
        + set.arrangement;
  }

  /** Collects a softener. */
  public static final class Builder implements Cloneable {
    private final String id;
    private final @Nullable HardnessAmount rated;
    private String name;
    private Volume resinVolume;
    private boolean resinVolumeAssumed;
    private Resin resin = ShippedResins.STANDARD_GEL;
    private List<SaltDosage> dosages = List.of(SaltDosage.ofPoundsPerCubicFoot(6));
    private double designFactor = DosageCurveBasis.USUAL_DESIGN_FACTOR;
    private @Nullable Set<Control> controls;
    private Arrangement arrangement = Arrangement.SINGLE;
    private int tanks = 1;
    private @Nullable SaltEfficiency certifiedEfficiency;
    private @Nullable Vessel vessel;
    private FlowRate refillRate = FlowRate.ofGallonsPerMinute(0.5);
    private Duration refillStep = Duration.ofSeconds(6);
    private @Nullable FlowRate serviceFlow;
    private @Nullable FlowRate peakFlow;
    private Pressure valveLoss = Pressure.ofPsi(0);
    private Power standby = Power.ofWatts(3);
    private @Nullable Mass saltStorage;
    private @Nullable BrineTank brineTank;
    private List<FlowRate> drainFlows = List.of();
    private @Nullable CyclePlan plan;
    private Regenerant regenerant = Regenerant.SODIUM_CHLORIDE;

    private Builder(String id, @Nullable HardnessAmount rated, Volume resinVolume) {
      this.id = Require.notBlank("softener id", id);
      this.name = id;
      this.rated = rated;
      this.resinVolume = resinVolume;
      this.resinVolumeAssumed = rated != null;
    }

    /** Everything that makes up a softener, to tell two of them apart. */
    private List<@Nullable Object> parts() {
      return Arrays.asList(
          id,
          rated,
          name,
          resinVolume,
          resinVolumeAssumed,
          resin,
          dosages,
          designFactor,
          controls(),
          arrangement,
          tanks,
          certifiedEfficiency,
          vessel,
          refillRate,
          refillStep,
          serviceFlow,
          peakFlow,
          valveLoss,
          standby,
          saltStorage,
          brineTank,
          drainFlows,
          plan,
          regenerant);
    }

    private Set<Control> controls() {
      if (controls != null) {
        return controls;
      }
      boolean twin = arrangement == Arrangement.TWIN_ALTERNATING;
      return EnumSet.of(twin ? Control.METERED_AT_ONCE : Control.METERED_AT_NIGHT);
    }

    private List<CapacityBasis> bases() {
      if (rated != null) {
        return List.of(new RatedCapacityBasis(rated, resinVolume, regenerant));
      }
      return dosages.stream()
          .<CapacityBasis>map(
              dosage -> new DosageCurveBasis(resin, resinVolume, dosage, designFactor, regenerant))
          .toList();
    }

    /**
     * Name on paper; the id unless set.
     *
     * @param name name on paper; not blank
     * @return this builder
     * @throws IllegalArgumentException when blank
     */
    public Builder name(String name) {
      this.name = Require.notBlank("softener name", name);
      return this;
    }

    /**
     * The true volume of a rated bed.
     *
     * @param volume 0.1 to 20 ft3
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder resinVolume(Volume volume) {
      this.resinVolume = RESIN_VOLUME.require("resin volume", volume);
      this.resinVolumeAssumed = false;
      return this;
    }

    /**
     * The resin; standard gel unless set.
     *
     * @param resin resin of the bed
     * @return this builder
     */
    public Builder resin(Resin resin) {
      this.resin = resin;
      return this;
    }

    /**
     * The salt dosages it may be set to, as sodium chloride; 6 lb/ft3 unless set.
     *
     * @param dosages at least one, each within the resin's curve
     * @return this builder
     * @throws IllegalArgumentException when there is none
     */
    public Builder dosages(List<SaltDosage> dosages) {
      this.dosages = Require.someOf("dosages", dosages);
      return this;
    }

    /**
     * Share of the resin's curve that is counted on; 0.9 unless set.
     *
     * @param factor 0.5 to 1; dimensionless
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder designFactor(double factor) {
      this.designFactor = DosageCurveBasis.DESIGN_FACTOR.require("design factor", factor);
      return this;
    }

    /**
     * The controls it is sold with; metered, delayed, unless set, and metered, at once, for tanks
     * that take turns.
     *
     * @param controls at least one
     * @return this builder
     * @throws IllegalArgumentException when there is none
     */
    public Builder controls(Set<Control> controls) {
      this.controls = EnumSet.copyOf(Require.someOf("controls", controls));
      return this;
    }

    /**
     * How its tanks work together; a single one unless set. Volume, rating, vessel and flows are
     * those of one tank.
     *
     * @param arrangement tanks that take turns are built with the control {@link
     *     Control#METERED_AT_ONCE} alone
     * @param tanks 1 of a single one, 2 that take turns, 2 to 4 in parallel
     * @return this builder
     * @throws IllegalArgumentException when there are more or fewer
     */
    public Builder arrangement(Arrangement arrangement, int tanks) {
      this.tanks = arrangement.tanks().require("tanks", tanks);
      this.arrangement = arrangement;
      return this;
    }

    /**
     * Salt efficiency that a certificate states; none unless set.
     *
     * @param certified 500 to 6,000 grains a pound
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder certifiedEfficiency(SaltEfficiency certified) {
      this.certifiedEfficiency = CERTIFIED_EFFICIENCY.require("certified efficiency", certified);
      return this;
    }

    /**
     * The vessel; the usual one for the volume unless set.
     *
     * @param vessel diameter and height
     * @return this builder
     */
    public Builder vessel(Vessel vessel) {
      this.vessel = vessel;
      return this;
    }

    /**
     * Refill flow and the smallest step of its setting; 0.5 gpm and 0.1 minute unless set.
     *
     * @param rate 0.05 to 5 gpm
     * @param step 0.01 to 5 minutes
     * @return this builder
     * @throws IllegalArgumentException outside these ranges
     */
    public Builder refill(FlowRate rate, Duration step) {
      this.refillRate = REFILL_RATE.require("refill rate", rate);
      this.refillStep = REFILL_STEP.require("refill step", step);
      return this;
    }

    /**
     * Flow softened without a break, and for some minutes.
     *
     * @param continuous 0.5 to 200 gpm
     * @param peak 0.5 to 200 gpm
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder serviceFlow(FlowRate continuous, FlowRate peak) {
      this.serviceFlow = SERVICE_FLOW.require("service flow", continuous);
      this.peakFlow = SERVICE_FLOW.require("peak service flow", peak);
      return this;
    }

    /**
     * Pressure loss of valve and piping at the continuous service flow; none unless set.
     *
     * @param loss 0 to 50 psi
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder valveLoss(Pressure loss) {
      this.valveLoss = VALVE_LOSS.require("valve loss", loss);
      return this;
    }

    /**
     * Power drawn at all times; 3 W unless set.
     *
     * @param power 0 to 100 W
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder standby(Power power) {
      this.standby = STANDBY.require("standby power", power);
      return this;
    }

    /**
     * Salt that the brine tank stores; reckoned from the tank, where that is known, unless set.
     *
     * @param salt 1 to 5,000 lb
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder saltStorage(Mass salt) {
      this.saltStorage = SALT_STORAGE.require("salt storage", salt);
      return this;
    }

    /**
     * The brine tank.
     *
     * @param tank diameter and height
     * @return this builder
     */
    public Builder brineTank(BrineTank tank) {
      this.brineTank = tank;
      return this;
    }

    /**
     * Drain flows in stock for it.
     *
     * @param flows each from 0.2 to 60 gpm; may be empty
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder drainFlows(List<FlowRate> flows) {
      flows.forEach(flow -> DRAIN_FLOW.require("drain flow", flow));
      this.drainFlows = List.copyOf(flows);
      return this;
    }

    /**
     * The cycle plan; chosen by rule unless set.
     *
     * @param plan times and rinses of its regeneration
     * @return this builder
     */
    public Builder plan(CyclePlan plan) {
      this.plan = plan;
      return this;
    }

    /**
     * The salt used; sodium chloride unless set.
     *
     * @param regenerant sodium or potassium chloride
     * @return this builder
     */
    public Builder regenerant(Regenerant regenerant) {
      this.regenerant = regenerant;
      return this;
    }

    @Override
    protected Builder clone() {
      try {
        return (Builder) super.clone();
      } catch (CloneNotSupportedException impossible) {
        throw new AssertionError(impossible);
      }
    }

    /**
     * {@return the finished softener; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when a dosage lies outside the resin's table, or tanks that
     *     take turns have another control than {@link Control#METERED_AT_ONCE}
     */
    public Softener build() {
      if (arrangement == Arrangement.TWIN_ALTERNATING
          && !controls().equals(EnumSet.of(Control.METERED_AT_ONCE))) {
        throw new IllegalArgumentException(
            "controls are " + controls() + ", but tanks that take turns are metered, at once");
      }
      Builder fixed = clone();
      fixed.controls = controls();
      return new Softener(fixed);
    }
  }
}
