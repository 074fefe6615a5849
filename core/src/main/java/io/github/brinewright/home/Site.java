package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Require;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One home as the visit found it. Example:
 *
 * <pre>{@code
 * Site site = Site.of("A1", water, household).target(Hardness.ofGrainsPerGallon(3)).build();
 * }</pre>
 */
public final class Site {
  /** Hardness to blend to: 0 to 10 gpg, and below that of the raw water. */
  public static final Bounds<Hardness> TARGET =
      Bounds.of(Hardness.ofGrainsPerGallon(0), Hardness.ofGrainsPerGallon(10));

  private final String id;
  private final Customer contact;
  private final WaterAnalysis water;
  private final Household household;
  private final Supply supply;
  private final FoulingAllowances allowances;
  private final Hardness target;

  private Site(Builder builder) {
    id = builder.id;
    contact = builder.contact;
    water = builder.water;
    household = builder.household;
    supply = builder.supply;
    allowances = builder.allowances;
    target = builder.target;
  }

  /**
   * A home with the usual allowances whose supply was not measured, softened in full.
   *
   * @param id short name within a job; not blank
   * @param water what was found in the water
   * @param household who lives there
   * @throws IllegalArgumentException when the id is blank
   */
  public static Builder of(String id, WaterAnalysis water, Household household) {
    return new Builder(id, water, household);
  }

  /** Short name within a job. */
  public String id() {
    return id;
  }

  /** Whose home it is. */
  public Customer contact() {
    return contact;
  }

  /** What was found in the water. */
  public WaterAnalysis water() {
    return water;
  }

  /** Who lives there. */
  public Household household() {
    return household;
  }

  /** What the main or well delivers. */
  public Supply supply() {
    return supply;
  }

  /** Hardness added for iron and manganese. */
  public FoulingAllowances allowances() {
    return allowances;
  }

  /** Hardness to blend to through a bypass; zero for fully soft water. */
  public Hardness target() {
    return target;
  }

  /**
   * The same home with other people in it.
   *
   * @param number 1 to 40
   * @throws IllegalArgumentException outside that range
   */
  public Site withPeople(int number) {
    return builder(water, household.withPeople(number)).build();
  }

  /**
   * The same home with harder or softer water.
   *
   * @param hardness 0.1 to 200 gpg, and above the target
   * @throws IllegalArgumentException outside that range
   */
  public Site withHardness(Hardness hardness) {
    return builder(water.withHardness(hardness), household).build();
  }

  private Builder builder(WaterAnalysis otherWater, Household otherHousehold) {
    return new Builder(id, otherWater, otherHousehold)
        .contact(contact)
        .supply(supply)
        .allowances(allowances)
        .target(target);
  }

  private List<Object> parts() {
    return List.of(id, contact, water, household, supply, allowances, target);
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
        + target;
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

    private Builder(String id, WaterAnalysis water, Household household) {
      this.id = Require.notBlank("site id", id);
      this.water = water;
      this.household = household;
      contact = Customer.named(id);
    }

    /** Whose home it is; named by its id unless set. */
    public Builder contact(Customer contact) {
      this.contact = contact;
      return this;
    }

    /** What the main or well delivers; not measured unless set. */
    public Builder supply(Supply supply) {
      this.supply = supply;
      return this;
    }

    /** Hardness added for iron and manganese; the usual allowances unless set. */
    public Builder allowances(FoulingAllowances allowances) {
      this.allowances = allowances;
      return this;
    }

    /**
     * Hardness to blend to through a bypass; zero, for fully soft water, unless set.
     *
     * @param target 0 to 10 gpg
     * @throws IllegalArgumentException outside that range
     */
    public Builder target(Hardness target) {
      this.target = TARGET.require("target hardness", target);
      return this;
    }

    /**
     * The finished home; later calls of this builder do not change it.
     *
     * @throws IllegalArgumentException when the target is not below the raw hardness
     */
    public Site build() {
      if (target.compareTo(water.hardness()) >= 0) {
        throw new IllegalArgumentException(
            "a target hardness of "
                + target
                + " is not below the "
                + water.hardness()
                + " of the raw water; leave it empty for fully soft water");
      }
      return new Site(this);
    }
  }
}
