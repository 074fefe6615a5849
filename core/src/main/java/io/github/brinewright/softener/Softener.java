package io.github.brinewright.softener;

import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import java.time.Duration;
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
  private static final double CONTINUOUS_GPM_PER_CUBIC_FOOT = 5;
  private static final double PEAK_GPM_PER_CUBIC_FOOT = 10;

  private final Builder set;

  private Softener(Builder builder) {
    set = builder;
  }

  /**
   * A bed of known resin and volume: standard gel at 6 lb/ft3 unless set otherwise.
   *
   * @param id short name within a price list
   * @param resinVolume more than zero
   */
  public static Builder withResin(String id, Volume resinVolume) {
    return new Builder(id, null, Require.positive("resin volume", resinVolume));
  }

  /**
   * A bed of which only the rating is known; its volume is taken as 1 ft3 for each 32,000 grains
   * unless set otherwise.
   *
   * @param id short name within a price list
   * @param rated more than zero
   */
  public static Builder withRating(String id, HardnessAmount rated) {
    Require.positive("rated capacity", rated);
    return new Builder(id, rated, RatedCapacityBasis.usualVolume(rated));
  }

  /** Short name within a price list. */
  public String id() {
    return set.id;
  }

  /** Name on paper. */
  public String name() {
    return set.name;
  }

  /** The rating, when the softener is sized by one. */
  public Optional<HardnessAmount> rated() {
    return Optional.ofNullable(set.rated);
  }

  /** Volume of the bed. */
  public Volume resinVolume() {
    return set.resinVolume;
  }

  /** Whether {@link #resinVolume()} was only guessed from the rating. */
  public boolean resinVolumeAssumed() {
    return set.resinVolumeAssumed;
  }

  /** The resin in the bed. */
  public Resin resin() {
    return set.resin;
  }

  /** The controls it is sold with. */
  public Set<Control> controls() {
    return EnumSet.copyOf(set.controls);
  }

  /** The vessel. */
  public Vessel vessel() {
    return set.vessel == null ? Vessel.usualFor(set.resinVolume) : set.vessel;
  }

  /** Flow of the brine refill. */
  public FlowRate refillRate() {
    return set.refillRate;
  }

  /** Smallest step of the refill setting. */
  public Duration refillStep() {
    return set.refillStep;
  }

  /** Flow that the bed softens without a break; 5 gpm/ft3 unless set. */
  public FlowRate serviceFlow() {
    return set.serviceFlow == null ? perCubicFoot(CONTINUOUS_GPM_PER_CUBIC_FOOT) : set.serviceFlow;
  }

  /** Flow that the bed softens for some minutes; 10 gpm/ft3 unless set. */
  public FlowRate peakServiceFlow() {
    return set.peakFlow == null ? perCubicFoot(PEAK_GPM_PER_CUBIC_FOOT) : set.peakFlow;
  }

  private FlowRate perCubicFoot(double gallonsPerMinute) {
    return FlowRate.ofGallonsPerMinute(gallonsPerMinute * set.resinVolume.cubicFeet());
  }

  /** Pressure loss of valve and piping at {@link #serviceFlow()}. */
  public Pressure valveLoss() {
    return set.valveLoss;
  }

  /** Power that the control draws at all times. */
  public Power standby() {
    return set.standby;
  }

  /** Salt that the brine tank stores; empty when neither it nor the tank is known. */
  public Optional<Mass> saltStorage() {
    return Optional.ofNullable(set.saltStorage).or(() -> brineTank().map(BrineTank::storage));
  }

  /** The brine tank; empty when not known. */
  public Optional<BrineTank> brineTank() {
    return Optional.ofNullable(set.brineTank);
  }

  /** Drain flows that the dealer stocks for it; empty when not known. */
  public List<FlowRate> drainFlows() {
    return set.drainFlows;
  }

  /** The cycle plan set by the dealer; empty to choose one by rule. */
  public Optional<CyclePlan> plan() {
    return Optional.ofNullable(set.plan);
  }

  /** The salt used. */
  public Regenerant regenerant() {
    return set.regenerant;
  }

  /** Every capacity basis it may be set to: one for each dosage, or the one of its rating. */
  public List<CapacityBasis> bases() {
    if (set.rated != null) {
      return List.of(new RatedCapacityBasis(set.rated, set.resinVolume, set.regenerant));
    }
    return set.dosages.stream()
        .<CapacityBasis>map(
            dosage ->
                new DosageCurveBasis(
                    set.resin, set.resinVolume, dosage, set.designFactor, set.regenerant))
        .toList();
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
    private Set<Control> controls = EnumSet.of(Control.METERED_AT_NIGHT);
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
      this.id = id;
      this.name = id;
      this.rated = rated;
      this.resinVolume = resinVolume;
      this.resinVolumeAssumed = rated != null;
    }

    /** Name on paper; the id unless set. */
    public Builder name(String name) {
      this.name = name;
      return this;
    }

    /** The true volume of a rated bed. */
    public Builder resinVolume(Volume volume) {
      this.resinVolume = Require.positive("resin volume", volume);
      this.resinVolumeAssumed = false;
      return this;
    }

    /** The resin; standard gel unless set. */
    public Builder resin(Resin resin) {
      this.resin = resin;
      return this;
    }

    /** The salt dosages it may be set to, as sodium chloride; 6 lb/ft3 unless set. */
    public Builder dosages(List<SaltDosage> dosages) {
      this.dosages = List.copyOf(dosages);
      return this;
    }

    /** Share of the resin's curve that is counted on, 0.5 to 1; 0.9 unless set. */
    public Builder designFactor(double factor) {
      this.designFactor = factor;
      return this;
    }

    /** The controls it is sold with; metered, delayed, unless set. */
    public Builder controls(Set<Control> controls) {
      this.controls = EnumSet.copyOf(controls);
      return this;
    }

    /** The vessel; the usual one for the volume unless set. */
    public Builder vessel(Vessel vessel) {
      this.vessel = vessel;
      return this;
    }

    /** Refill flow and the smallest step of its setting; 0.5 gpm and 0.1 minute unless set. */
    public Builder refill(FlowRate rate, Duration step) {
      this.refillRate = rate;
      this.refillStep = step;
      return this;
    }

    /** Flow softened without a break, and for some minutes. */
    public Builder serviceFlow(FlowRate continuous, FlowRate peak) {
      this.serviceFlow = Require.positive("service flow", continuous);
      this.peakFlow = Require.positive("peak service flow", peak);
      return this;
    }

    /** Pressure loss of valve and piping at the continuous service flow; none unless set. */
    public Builder valveLoss(Pressure loss) {
      this.valveLoss = Require.notNegative("valve loss", loss);
      return this;
    }

    /** Power drawn at all times; 3 W unless set. */
    public Builder standby(Power power) {
      this.standby = Require.notNegative("standby power", power);
      return this;
    }

    /** Salt that the brine tank stores. */
    public Builder saltStorage(Mass salt) {
      this.saltStorage = Require.positive("salt storage", salt);
      return this;
    }

    /** The brine tank. */
    public Builder brineTank(BrineTank tank) {
      this.brineTank = tank;
      return this;
    }

    /** Drain flows in stock for it. */
    public Builder drainFlows(List<FlowRate> flows) {
      this.drainFlows = List.copyOf(flows);
      return this;
    }

    /** The cycle plan; chosen by rule unless set. */
    public Builder plan(CyclePlan plan) {
      this.plan = plan;
      return this;
    }

    /** The salt used; sodium chloride unless set. */
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
     * The finished softener; later calls of this builder do not change it.
     *
     * @throws IllegalArgumentException when a dosage lies outside the resin's table
     */
    public Softener build() {
      Softener softener = new Softener(clone());
      softener.bases();
      return softener;
    }
  }
}
