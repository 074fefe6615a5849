package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One home as the visit found it. Example:
 *
 * <pre>{@code
 * Site site = Site.of("A1", water, household).target(Hardness.ofGrainsPerGallon(3)).build();
 * }</pre>
 */
public final class Site {
  /** Hardness to blend to: 0 to 10 gpg, and below that of the water that is softened. */
  public static final Bounds<Hardness> TARGET =
      Bounds.of(Hardness.ofGrainsPerGallon(0), Hardness.ofGrainsPerGallon(10));

  /** Temperature of a brine tank: 33 to 110 °F (0.6 to 43.3 °C). */
  public static final Bounds<Temperature> BRINE_TANK_TEMPERATURE =
      Bounds.of(Temperature.ofFahrenheit(33), Temperature.ofFahrenheit(110));

  /** 60 °F (15.6 °C) where nobody measured the brine tank: common practice. */
  public static final Temperature USUAL_BRINE_TANK_TEMPERATURE = Temperature.ofFahrenheit(60);

  private final String id;
  private final Customer contact;
  private final WaterAnalysis water;
  private final Household household;
  private final Supply supply;
  private final FoulingAllowances allowances;
  private final Hardness target;
  private final Place place;
  private final @Nullable TreatedWater treated;
  private final Temperature brineTankTemperature;
  private final boolean softerWanted;
  private final @Nullable PresentSoftener present;

  private Site(Builder builder) {
    id = builder.id;
    contact = builder.contact;
    water = builder.water;
    household = builder.household;
    supply = builder.supply;
    allowances = builder.allowances;
    target = builder.target;
    place = builder.place;
    treated = builder.treated;
    brineTankTemperature = builder.brineTankTemperature;
    softerWanted = builder.softerWanted;
    present = builder.present;
  }

  /**
   * {@return a home with the usual allowances whose supply was not measured, softened in full}
   *
   * @param id short name within a job; not blank
   * @param water what was found in the water
   * @param household who lives there
   * @throws IllegalArgumentException when the id is blank
   */
  public static Builder of(String id, WaterAnalysis water, Household household) {
    return new Builder(id, water, household);
  }

  /** {@return the short name within a job} */
  public String id() {
    return id;
  }

  /** {@return whose home it is} */
  public Customer contact() {
    return contact;
  }

  /** {@return what was found in the raw water} */
  public WaterAnalysis water() {
    return water;
  }

  /** {@return the water after a treatment ahead of the softener; empty when none is stated} */
  public Optional<TreatedWater> treated() {
    return Optional.ofNullable(treated);
  }

  /**
   * {@return the water that enters the softener: after the stated treatment, or else the raw water}
   */
  public WaterAnalysis softenedWater() {
    return treated == null ? water : water.after(treated);
  }

  /** {@return where the home is} */
  public Place place() {
    return place;
  }

  /** {@return the temperature where the brine tank stands} */
  public Temperature brineTankTemperature() {
    return brineTankTemperature;
  }

  /** {@return whether water that is soft enough is to be softened all the same} */
  public boolean softerWanted() {
    return softerWanted;
  }

  /** {@return the softener that is already in the house; empty when there is none} */
  public Optional<PresentSoftener> present() {
    return Optional.ofNullable(present);
  }

  /** {@return who lives there} */
  public Household household() {
    return household;
  }

  /** {@return what the main or well delivers} */
  public Supply supply() {
    return supply;
  }

  /** {@return the hardness added for iron and manganese} */
  public FoulingAllowances allowances() {
    return allowances;
  }

  /** {@return the hardness to blend to through a bypass; zero for fully soft water} */
  public Hardness target() {
    return target;
  }

  /**
   * {@return the same home with other people in it} What the people before used, by readings of a
   * meter and salt that was bought, says nothing of them and is left out; where their use is
   * already known from it, that is taken in proportion.
   *
   * @param number 1 to 40
   * @throws IllegalArgumentException outside that range
   */
  public Site withPeople(int number) {
    Builder changed = builder(water, household.withPeople(number));
    changed.present = present == null ? null : present.withoutUse();
    return changed.build();
  }

  /**
   * {@return the same home, of which is known what its people really use}
   *
   * @param use mean of a day at home, in place of bill and statistics
   */
  public Site withKnownUse(KnownUse use) {
    return builder(water, household.withKnownUse(use)).build();
  }

  /**
   * {@return the same home with harder or softer water} What enters the softener follows by {@link
   * #enteringWith}.
   *
   * @param hardness 0.1 to 200 gpg; what enters must be above the target
   * @throws IllegalArgumentException outside that range
   */
  public Site withHardness(Hardness hardness) {
    Builder changed = builder(water.withHardness(hardness), household);
    if (treated != null) {
      changed.treated(treated.withHardness(enteringWith(hardness)));
    }
    return changed.build();
  }

  /**
   * {@return the hardness that would enter the softener with harder or softer raw water} It is that
   * of the raw water or, after a stated treatment, the stated one changed by as much, within 0.1 to
   * 200 gpg.
   *
   * @param hardness of the raw water, 0.1 to 200 gpg
   * @throws IllegalArgumentException outside that range
   */
  public Hardness enteringWith(Hardness hardness) {
    WaterAnalysis.HARDNESS.require("hardness", hardness);
    return treated == null
        ? hardness
        : WaterAnalysis.HARDNESS.nearest(treated.hardness().plus(hardness.minus(water.hardness())));
  }

  /**
   * {@return the same home with treatments ahead of the softener that are sold with it}
   *
   * @param behind the water that they leave, and the pressure that they take
   * @throws IllegalArgumentException when that water is no harder than the target
   */
  public Site withTreated(TreatedWater behind) {
    return builder(water, household)
        .treated(behind)
        .supply(supply.withLossAhead(behind.pressureLoss()))
        .build();
  }

  private Builder builder(WaterAnalysis otherWater, Household otherHousehold) {
    Builder builder =
        new Builder(id, otherWater, otherHousehold)
            .contact(contact)
            .supply(supply)
            .allowances(allowances)
            .target(target)
            .place(place)
            .brineTankTemperature(brineTankTemperature)
            .softerWanted(softerWanted);
    builder.present = present;
    return treated == null ? builder : builder.treated(treated);
  }

  private List<Object> parts() {
    return List.of(
        id,
        contact,
        water,
        household,
        supply,
        allowances,
        target,
        place,
        treated(),
        brineTankTemperature,
        softerWanted,
        present());
  }

  /** Homes of which the same is known are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Site that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** What is known of it, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return "home "
        + id
        + " of "
        + contact
        + ": "
        + water
        + "; "
        + household
        + "; "
        + supply
        + "; "
        + allowances
        + "; blended to "
        + target
        + "; in "
        + place.code()
        + "; treated to "
        + (treated == null ? "nothing stated" : treated)
        + "; brine tank at "
        + brineTankTemperature
        + "; softer wanted: "
        + softerWanted
        + "; "
        + (present == null ? "no softener there" : present);
  }

  /** Collects a home. */
  public static final class Builder {
    private final String id;
    private final WaterAnalysis water;
    private final Household household;
    private Customer contact;
    private Supply supply = Supply.NOT_MEASURED;
    private FoulingAllowances allowances = FoulingAllowances.USUAL;
    private Hardness target = TARGET.low();
    private Place place = Place.US;
    private @Nullable TreatedWater treated;
    private Temperature brineTankTemperature = USUAL_BRINE_TANK_TEMPERATURE;
    private boolean softerWanted;
    private @Nullable PresentSoftener present;

    private Builder(String id, WaterAnalysis water, Household household) {
      this.id = Require.notBlank("site id", id);
      this.water = water;
      this.household = household;
      contact = Customer.named(id);
    }

    /**
     * Whose home it is; named by its id unless set.
     *
     * @param contact name and address
     * @return this builder
     */
    public Builder contact(Customer contact) {
      this.contact = contact;
      return this;
    }

    /**
     * What the main or well delivers; not measured unless set.
     *
     * @param supply pressures and flow, so far as they were measured
     * @return this builder
     */
    public Builder supply(Supply supply) {
      this.supply = supply;
      return this;
    }

    /**
     * Hardness added for iron and manganese; the usual allowances unless set.
     *
     * @param allowances hardness for each mg/L of iron and manganese
     * @return this builder
     */
    public Builder allowances(FoulingAllowances allowances) {
      this.allowances = allowances;
      return this;
    }

    /**
     * Hardness to blend to through a bypass; zero, for fully soft water, unless set.
     *
     * @param target 0 to 10 gpg
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder target(Hardness target) {
      this.target = TARGET.require("target hardness", target);
      return this;
    }

    /**
     * Where the home is; the United States unless set.
     *
     * @param place a country or a part of one
     * @return this builder
     */
    public Builder place(Place place) {
      this.place = place;
      return this;
    }

    /**
     * The water after a treatment ahead of the softener; none unless set.
     *
     * @param treated hardness after the treatment, and what else is stated of it
     * @return this builder
     */
    public Builder treated(TreatedWater treated) {
      this.treated = treated;
      return this;
    }

    /**
     * Temperature where the brine tank stands; 60 °F unless set.
     *
     * @param temperature 33 to 110 °F (0.6 to 43.3 °C)
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder brineTankTemperature(Temperature temperature) {
      this.brineTankTemperature =
          BRINE_TANK_TEMPERATURE.require("brine tank temperature", temperature);
      return this;
    }

    /**
     * Whether water that is soft enough is to be softened all the same; not unless set.
     *
     * @param wanted true to soften it all the same
     * @return this builder
     */
    public Builder softerWanted(boolean wanted) {
      this.softerWanted = wanted;
      return this;
    }

    /**
     * The softener that is already in the house; none unless set.
     *
     * @param softener as the visit found it
     * @return this builder
     */
    public Builder present(PresentSoftener softener) {
      present = softener;
      return this;
    }

    /**
     * {@return the finished home; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when the target is not below the hardness that enters the
     *     softener
     */
    public Site build() {
      Hardness entering = treated == null ? water.hardness() : treated.hardness();
      if (target.compareTo(entering) >= 0) {
        throw new IllegalArgumentException(
            "a target hardness of "
                + target
                + " is not below the "
                + entering
                + " of the water that is softened; leave it empty for fully soft water");
      }
      return new Site(this);
    }
  }
}
