package io.github.brinewright.home;

import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The people in the home and how they use water. */
public final class Household {
  /** Design use of a person: 75 US gallons a day, common practice. */
  public static final Volume USUAL_PER_PERSON = Volume.ofGallons(75);

  private final int people;
  private final double bathrooms;
  private final Volume perPersonDaily;
  private final @Nullable Bill bill;
  private final Map<Fixture, Integer> fixtures;
  private final SoftenedShare softened;
  private final int awayDays;
  private final int guestDays;
  private final int guests;

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
  }

  /**
   * A household of the given size with one bathroom for every two people, 75 gallons a head and no
   * bill at hand.
   *
   * @param people 1 to 40
   * @throws IllegalArgumentException outside that range
   */
  public static Builder of(int people) {
    return new Builder(Require.between("people", people, 1, 40));
  }

  /** The same home with other people in it; a bill is taken in proportion. */
  public Household withPeople(int number) {
    Builder builder =
        of(number)
            .bathrooms(bathrooms)
            .perPersonDaily(perPersonDaily)
            .softened(softened)
            .away(awayDays)
            .guests(guests, guestDays);
    fixtures.forEach(builder::fixture);
    if (bill != null) {
      builder.bill(new Bill(bill.billed().times((double) number / people), bill.days()));
    }
    return builder.build();
  }

  /** How many people live in the home. */
  public int people() {
    return people;
  }

  /** Bathrooms; a half bathroom has no shower or tub. */
  public double bathrooms() {
    return bathrooms;
  }

  /** Design use of one person a day. */
  public Volume perPersonDaily() {
    return perPersonDaily;
  }

  /** The fixtures with their numbers; empty when they were not counted. */
  public Map<Fixture, Integer> fixtures() {
    return fixtures;
  }

  /** Which water is softened. */
  public SoftenedShare softened() {
    return softened;
  }

  /** Days of the year on which nobody is at home. */
  public int awayDays() {
    return awayDays;
  }

  /** Days of the year with guests. */
  public int guestDays() {
    return guestDays;
  }

  /** How many guests there are then. */
  public int guests() {
    return guests;
  }

  /** The winter bill, when there is one. */
  public Optional<Bill> bill() {
    return Optional.ofNullable(bill);
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

    private Builder(int people) {
      this.people = people;
      bathrooms = Math.max(1, Math.ceil(people / 2.0));
    }

    /**
     * @param bathrooms 0.5 to 20
     */
    public Builder bathrooms(double bathrooms) {
      this.bathrooms = Require.between("bathrooms", bathrooms, 0.5, 20);
      return this;
    }

    /**
     * @param daily design use of one person; more than zero
     */
    public Builder perPersonDaily(Volume daily) {
      this.perPersonDaily = Require.positive("use per person", daily);
      return this;
    }

    /** The winter bill. */
    public Builder bill(Bill bill) {
      this.bill = bill;
      return this;
    }

    /**
     * Counts a fixture, so that the peak flow rests on fixture units.
     *
     * @param number 1 to 100
     */
    public Builder fixture(Fixture fixture, int number) {
      fixtures.put(fixture, Require.between("number of fixtures", number, 1, 100));
      return this;
    }

    /** Which water is softened; the whole house unless set. */
    public Builder softened(SoftenedShare share) {
      this.softened = share;
      return this;
    }

    /**
     * Days of the year on which nobody is at home.
     *
     * @param days 0 to 300
     */
    public Builder away(int days) {
      this.awayDays = Require.between("days away", days, 0, 300);
      return this;
    }

    /**
     * Guests who stay in the home.
     *
     * @param number 0 to 40
     * @param days of the year, 0 to 300
     */
    public Builder guests(int number, int days) {
      this.guests = Require.between("guests", number, 0, 40);
      this.guestDays = Require.between("days with guests", days, 0, 300);
      return this;
    }

    /** The finished household. */
    public Household build() {
      return new Household(this);
    }
  }
}
