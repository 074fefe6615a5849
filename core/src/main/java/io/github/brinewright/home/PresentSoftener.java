package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * The softener that is already in the house, as a visit found it. What sets it off must be known,
 * and its rating, its bed or its vessel; all else may be unknown. Example:
 *
 * <pre>{@code
 * PresentSoftener present =
 *     PresentSoftener.of(PresentControl.clock(7)).rated(HardnessAmount.ofGrains(40_000)).build();
 * }</pre>
 */
public final class PresentSoftener {
  /** Ratings: 3,200 to 640,000 grains, those of beds of 0.1 to 20 ft3. */
  public static final Bounds<HardnessAmount> RATING =
      Bounds.of(HardnessAmount.ofGrains(3_200), HardnessAmount.ofGrains(640_000));

  /** Ages: 0 to 60 years. */
  public static final Bounds<Integer> AGE_YEARS = Bounds.of(0, 60);

  /** Hours of the day at which it regenerates: 0 to 23. */
  public static final Bounds<Integer> HOUR = Bounds.of(0, 23);

  /** Salt that a family buys a year: 0 to 20,000 lb. */
  public static final Bounds<Mass> SALT_BOUGHT = Bounds.of(Mass.ofPounds(0), Mass.ofPounds(20_000));

  /** Hardness measured behind it: 0 to 200 gpg. */
  public static final Bounds<Hardness> HARDNESS_AFTER =
      Bounds.of(Hardness.ofGrainsPerGallon(0), Hardness.ofGrainsPerGallon(200));

  private final PresentControl control;
  private final @Nullable HardnessAmount rated;
  private final @Nullable Volume resinVolume;
  private final @Nullable Vessel vessel;
  private final @Nullable Resin resin;
  private final @Nullable Integer ageYears;
  private final @Nullable PresentSalt salt;
  private final @Nullable Integer hour;
  private final Regenerant regenerant;
  private final @Nullable Mass saltBought;
  private final @Nullable Hardness hardnessAfter;
  private final List<MeterReading> readings;
  private final ReadMeter readMeter;

  private PresentSoftener(Builder builder) {
    control = builder.control;
    rated = builder.rated;
    resinVolume = builder.resinVolume;
    vessel = builder.vessel;
    resin = builder.resin;
    ageYears = builder.ageYears;
    salt = builder.salt;
    hour = builder.hour;
    regenerant = builder.regenerant;
    saltBought = builder.saltBought;
    hardnessAfter = builder.hardnessAfter;
    readings = builder.readings;
    readMeter = builder.readMeter;
  }

  private PresentSoftener(PresentSoftener found) {
    control = found.control;
    rated = found.rated;
    resinVolume = found.resinVolume;
    vessel = found.vessel;
    resin = found.resin;
    ageYears = found.ageYears;
    salt = found.salt;
    hour = found.hour;
    regenerant = found.regenerant;
    saltBought = null;
    hardnessAfter = found.hardnessAfter;
    readings = List.of();
    readMeter = ReadMeter.SOFTENER;
  }

  /**
   * Begins a present softener.
   *
   * @param control what sets off a regeneration
   * @return a builder of it
   */
  public static Builder of(PresentControl control) {
    return new Builder(control);
  }

  /** {@return what sets off a regeneration} */
  public PresentControl control() {
    return control;
  }

  /** {@return its rating; empty when not known} */
  public Optional<HardnessAmount> rated() {
    return Optional.ofNullable(rated);
  }

  /** {@return the volume of its bed; empty when not known} */
  public Optional<Volume> resinVolume() {
    return Optional.ofNullable(resinVolume);
  }

  /** {@return its vessel; empty when not measured} */
  public Optional<Vessel> vessel() {
    return Optional.ofNullable(vessel);
  }

  /** {@return its resin; empty when not known} */
  public Optional<Resin> resin() {
    return Optional.ofNullable(resin);
  }

  /** {@return its age in whole years; empty when not known} */
  public OptionalInt ageYears() {
    return ageYears == null ? OptionalInt.empty() : OptionalInt.of(ageYears);
  }

  /** {@return the salt that it is set to; empty when not known} */
  public Optional<PresentSalt> salt() {
    return Optional.ofNullable(salt);
  }

  /** {@return the hour of the day at which it regenerates, 0 to 23; empty when not known} */
  public OptionalInt hour() {
    return hour == null ? OptionalInt.empty() : OptionalInt.of(hour);
  }

  /** {@return the kind of its salt} */
  public Regenerant regenerant() {
    return regenerant;
  }

  /** {@return the salt that the family buys a year; empty when not known} */
  public Optional<Mass> saltBought() {
    return Optional.ofNullable(saltBought);
  }

  /** {@return the hardness measured behind it; empty when not measured} */
  public Optional<Hardness> hardnessAfter() {
    return Optional.ofNullable(hardnessAfter);
  }

  /** {@return what a meter stood at, in the order of their dates; none, or at least two} */
  public List<MeterReading> readings() {
    return readings;
  }

  /** {@return which meter the readings are of} */
  public ReadMeter readMeter() {
    return readMeter;
  }

  /** The same softener, without the readings and the salt of those who have used it. */
  PresentSoftener withoutUse() {
    return new PresentSoftener(this);
  }

  private List<@Nullable Object> parts() {
    return Arrays.asList(
        control,
        rated,
        resinVolume,
        vessel,
        resin,
        ageYears,
        salt,
        hour,
        regenerant,
        saltBought,
        hardnessAfter,
        readings,
        readMeter);
  }

  /** Softeners of which the same is known are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PresentSoftener that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** What is known of it, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return "present softener "
        + parts().stream().map(part -> Objects.toString(part, "not known")).toList();
  }

  /** Collects a present softener. */
  public static final class Builder {
    private final PresentControl control;
    private @Nullable HardnessAmount rated;
    private @Nullable Volume resinVolume;
    private @Nullable Vessel vessel;
    private @Nullable Resin resin;
    private @Nullable Integer ageYears;
    private @Nullable PresentSalt salt;
    private @Nullable Integer hour;
    private Regenerant regenerant = Regenerant.SODIUM_CHLORIDE;
    private @Nullable Mass saltBought;
    private @Nullable Hardness hardnessAfter;
    private List<MeterReading> readings = List.of();
    private ReadMeter readMeter = ReadMeter.SOFTENER;

    private Builder(PresentControl control) {
      this.control = control;
    }

    /**
     * Its rating.
     *
     * @param rating 3,200 to 640,000 grains
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder rated(HardnessAmount rating) {
      rated = RATING.require("rating of the present softener", rating);
      return this;
    }

    /**
     * The volume of its bed.
     *
     * @param volume 0.1 to 20 ft3
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder resinVolume(Volume volume) {
      resinVolume = Softener.RESIN_VOLUME.require("resin volume of the present softener", volume);
      return this;
    }

    /**
     * Its vessel, from which the usual volume of a bed follows where that is not known.
     *
     * @param measured outside diameter and height
     * @return this builder
     */
    public Builder vessel(Vessel measured) {
      vessel = measured;
      return this;
    }

    /**
     * Its resin; taken as standard gel unless set.
     *
     * @param known the resin in the bed
     * @return this builder
     */
    public Builder resin(Resin known) {
      resin = known;
      return this;
    }

    /**
     * Its age.
     *
     * @param years 0 to 60
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder ageYears(int years) {
      ageYears = AGE_YEARS.require("age of the present softener in years", years);
      return this;
    }

    /**
     * The salt that it is set to.
     *
     * @param set dosage, mass or refill
     * @return this builder
     */
    public Builder salt(PresentSalt set) {
      salt = set;
      return this;
    }

    /**
     * The hour at which it regenerates; taken as 2 a.m. unless set.
     *
     * @param ofDay 0 to 23
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder hour(int ofDay) {
      hour = HOUR.require("regeneration hour", ofDay);
      return this;
    }

    /**
     * The kind of its salt; sodium chloride unless set.
     *
     * @param kind what is filled in
     * @return this builder
     */
    public Builder regenerant(Regenerant kind) {
      regenerant = kind;
      return this;
    }

    /**
     * The salt that the family really buys.
     *
     * @param aYear 0 to 20,000 lb
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder saltBought(Mass aYear) {
      saltBought = SALT_BOUGHT.require("salt bought a year", aYear);
      return this;
    }

    /**
     * The hardness measured behind it.
     *
     * @param measured 0 to 200 gpg
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder hardnessAfter(Hardness measured) {
      hardnessAfter = HARDNESS_AFTER.require("hardness after the softener", measured);
      return this;
    }

    /**
     * What a meter stood at on some days.
     *
     * @param meter which one
     * @param read at least two, in the order of their dates, the counter never falling
     * @return this builder
     * @throws IllegalArgumentException when there is one alone, dates do not rise, or the counter
     *     falls
     */
    public Builder readings(ReadMeter meter, List<MeterReading> read) {
      readings = MeterReading.requireRising(read);
      readMeter = meter;
      return this;
    }

    /**
     * {@return the finished softener; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when neither rating nor bed nor vessel is known
     */
    public PresentSoftener build() {
      if (rated == null && resinVolume == null && vessel == null) {
        throw new IllegalArgumentException(
            "of the present softener neither rating, resin volume nor vessel is known;"
                + " give one of them");
      }
      return new PresentSoftener(this);
    }
  }
}
