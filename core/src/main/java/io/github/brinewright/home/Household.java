package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Volume;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The people in the home and how they use water. */
public final class Household {
  /** Design use of a person: 75 US gallons a day, common practice. */
  public static final Volume USUAL_PER_PERSON = Volume.ofGallons(75);

  /** People in a home: 1 to 40. */
  public static final Bounds<Integer> PEOPLE = Bounds.of(1, 40);

  /** Bathrooms of a home: 0.5 to 20. */
  public static final Bounds<Double> BATHROOMS = Bounds.of(0.5, 20.0);

  /** Design use of a person: 10 to 400 gallons a day. */
  public static final Bounds<Volume> PER_PERSON =
      Bounds.of(Volume.ofGallons(10), Volume.ofGallons(400));

  /** How many there may be of one fixture: 1 to 100. */
  public static final Bounds<Integer> FIXTURES = Bounds.of(1, 100);

  /** Days of a year away, or with guests: 0 to 300. */
  public static final Bounds<Integer> DAYS_OF_YEAR = Bounds.of(0, 300);

  /** Guests at one time: 0 to 40. */
  public static final Bounds<Integer> GUESTS = Bounds.of(0, 40);

  /** Peak flow that was measured at a home: 0.5 to 200 gpm. */
  public static final Bounds<FlowRate> PEAK_FLOW =
      Bounds.of(FlowRate.ofGallonsPerMinute(0.5), FlowRate.ofGallonsPerMinute(200));

  private final int people;
  private final double bathrooms;
  private final Volume perPersonDaily;
  private final @Nullable Bill bill;
  private final Map<Fixture, Integer> fixtures;
  private final SoftenedShare softened;
  private final int awayDays;
  private final int guestDays;
  private final int guests;
  private final @Nullable FlowRate peakFlow;
  private final @Nullable KnownUse knownUse;

  private Household(Builder builder) {
    people = builder.people;
    bathrooms = builder.bathrooms;
    perPersonDaily = builder.perPersonDaily;
    bill = builder.bill;
    fixtures = Map.copyOf(builder.fixtures);
    softened = builder.softened;
    awayDays = builder.awayDays;
    guestDays = builder.guestDays;
    guests = builder.guests;
    peakFlow = builder.peakFlow;
    knownUse = builder.knownUse;
  }

  /**
   * {@return a household of the given size with one bathroom for every two people, 75 gallons a
   * head and no bill at hand}
   *
   * @param people 1 to 40
   * @throws IllegalArgumentException outside that range
   */
  public static Builder of(int people) {
    return new Builder(PEOPLE.require("people", people));
  }

  /**
   * {@return the same home with other people in it; a bill and a known use, which were those of the
   * people before, are taken in proportion, as well known as they were}
   *
   * @param number 1 to 40
   * @throws IllegalArgumentException outside that range
   */
  public Household withPeople(int number) {
    Builder builder = as(of(number));
    double factor = (double) number / people;
    builder.bill = bill == null ? null : bill.times(factor);
    builder.knownUse = knownUse == null ? null : knownUse.times(factor);
    return builder.build();
  }

  /**
   * {@return the same household, of which is known what it really uses}
   *
   * @param use mean of a day at home, in place of bill and statistics
   */
  public Household withKnownUse(KnownUse use) {
    Builder builder = as(of(people)).knownUse(use);
    builder.bill = bill;
    return builder.build();
  }

  private Builder as(Builder builder) {
    builder
        .bathrooms(bathrooms)
        .perPersonDaily(perPersonDaily)
        .softened(softened)
        .away(awayDays)
        .guests(guests, guestDays);
    fixtures.forEach(builder::fixture);
    builder.peakFlow = peakFlow;
    return builder;
  }

  /** {@return how many people live in the home} */
  public int people() {
    return people;
  }

  /** {@return the number of bathrooms; a half bathroom has no shower or tub} */
  public double bathrooms() {
    return bathrooms;
  }

  /** {@return the design use of one person a day} */
  public Volume perPersonDaily() {
    return perPersonDaily;
  }

  /** {@return the fixtures with their numbers; empty when they were not counted} */
  public Map<Fixture, Integer> fixtures() {
    return fixtures;
  }

  /** {@return which water is softened} */
  public SoftenedShare softened() {
    return softened;
  }

  /** {@return the days of the year on which nobody is at home} */
  public int awayDays() {
    return awayDays;
  }

  /** {@return the days of the year with guests} */
  public int guestDays() {
    return guestDays;
  }

  /** {@return how many guests there are then} */
  public int guests() {
    return guests;
  }

  /** {@return the peak flow measured at the visit; empty when it was not measured} */
  public Optional<FlowRate> peakFlow() {
    return Optional.ofNullable(peakFlow);
  }

  /** {@return the winter bill, when there is one} */
  public Optional<Bill> bill() {
    return Optional.ofNullable(bill);
  }

  /**
   * {@return what the household really uses; empty when nobody has read a meter for long enough}
   */
  public Optional<KnownUse> knownUse() {
    return Optional.ofNullable(knownUse);
  }

  private List<@Nullable Object> parts() {
    return Arrays.asList(
        people,
        bathrooms,
        perPersonDaily,
        bill,
        fixtures,
        softened,
        awayDays,
        guestDays,
        guests,
        peakFlow,
        knownUse);
  }

  /** Households that were told the same are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Household that && parts().equals(that.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  /** What is known of it, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return people
        + " people, "
        + bathrooms
        + " bathrooms, "
        + (bill == null ? perPersonDaily + " each a day" : bill.toString())
        + ", softened "
        + softened
        + ", fixtures "
        + new TreeMap<>(fixtures)
        + ", away "
        + awayDays
        + " days, "
        + guests
        + " guests "
        + guestDays
        + " days, peak flow "
        + (peakFlow == null ? "not measured" : peakFlow)
        + ", "
        + (knownUse == null ? "real use not known" : knownUse);
  }

  /** Collects a household. */
  public static final class Builder {
    private final int people;
    private double bathrooms;
    private Volume perPersonDaily = USUAL_PER_PERSON;
    private @Nullable Bill bill;
    private final Map<Fixture, Integer> fixtures = new EnumMap<>(Fixture.class);
    private SoftenedShare softened = SoftenedShare.WHOLE_HOUSE;
    private int awayDays;
    private int guestDays;
    private int guests;
    private @Nullable FlowRate peakFlow;
    private @Nullable KnownUse knownUse;

    private Builder(int people) {
      this.people = people;
      bathrooms = Math.max(1, Math.ceil(people / 2.0));
    }

    /**
     * Bathrooms; one for every two people unless set.
     *
     * @param bathrooms 0.5 to 20
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder bathrooms(double bathrooms) {
      this.bathrooms = BATHROOMS.require("bathrooms", bathrooms);
      return this;
    }

    /**
     * Design use of one person a day; 75 gallons unless set.
     *
     * @param daily 10 to 400 gallons
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder perPersonDaily(Volume daily) {
      this.perPersonDaily = PER_PERSON.require("use per person", daily);
      return this;
    }

    /**
     * The winter bill.
     *
     * @param bill use that was billed in winter
     * @return this builder
     */
    public Builder bill(Bill bill) {
      this.bill = bill;
      return this;
    }

    /**
     * Counts a fixture, so that the peak flow rests on fixture units.
     *
     * @param fixture kind of the fixture
     * @param number 1 to 100
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder fixture(Fixture fixture, int number) {
      fixtures.put(fixture, FIXTURES.require("number of fixtures", number));
      return this;
    }

    /**
     * Which water is softened; the whole house unless set.
     *
     * @param share part of the use that passes the softener
     * @return this builder
     */
    public Builder softened(SoftenedShare share) {
      this.softened = share;
      return this;
    }

    /**
     * Days of the year on which nobody is at home.
     *
     * @param days 0 to 300
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder away(int days) {
      this.awayDays = DAYS_OF_YEAR.require("days away", days);
      return this;
    }

    /**
     * Guests who stay in the home.
     *
     * @param number 0 to 40
     * @param days of the year, 0 to 300
     * @return this builder
     * @throws IllegalArgumentException outside these ranges
     */
    public Builder guests(int number, int days) {
      this.guests = GUESTS.require("guests", number);
      this.guestDays = DAYS_OF_YEAR.require("days with guests", days);
      return this;
    }

    /**
     * Peak flow measured at the visit.
     *
     * @param measured 0.5 to 200 gpm
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder peakFlow(FlowRate measured) {
      this.peakFlow = PEAK_FLOW.require("peak flow", measured);
      return this;
    }

    /**
     * What the household really uses, in place of bill and statistics; not known unless set. Files
     * of a job hold no such use but the readings that it follows from.
     *
     * @param use mean of a day at home, and how well it is known
     * @return this builder
     */
    public Builder knownUse(KnownUse use) {
      this.knownUse = use;
      return this;
    }

    /** {@return the finished household} */
    public Household build() {
      return new Household(this);
    }
  }
}
