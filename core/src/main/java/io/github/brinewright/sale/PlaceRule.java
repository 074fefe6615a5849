package io.github.brinewright.sale;

import io.github.brinewright.home.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A rule of a place on sales, as its published text has it and never more: no advice. Local law and
 * the dealer's own counsel decide.
 *
 * @param place where it holds
 * @param kind what it is about
 * @param language of a prescribed sentence, as a code of ISO 639; empty where there is none
 * @param sentence that is prescribed, word for word; empty where there is none
 * @param share most that a deposit may be of the price, as a fraction; null where there is none
 * @param most that a deposit may be in the money of the place; null where there is none
 * @param citation where it stands
 * @param checked on which day it was last compared with its text
 * @param checkAgain the day from which it is to be compared anew
 */
public record PlaceRule(
    Place place,
    Kind kind,
    String language,
    String sentence,
    @Nullable BigDecimal share,
    @Nullable BigDecimal most,
    String citation,
    LocalDate checked,
    LocalDate checkAgain) {
  /** What a rule is about. */
  public enum Kind {
    /** The buyer's right to cancel a sale made at home. */
    CANCELLATION,
    /** The most that may be asked for before the work is done. */
    DEPOSIT
  }

  private static final LocalDate CHECKED = LocalDate.of(2026, 11, 27);

  /**
   * Those that come with the library: the statement of 16 CFR 429.1(a), in force in the United
   * States; the down payment of California's Business and Professions Code 7159.5(a)(3).
   */
  public static final List<PlaceRule> SHIPPED =
      List.of(
          new PlaceRule(
              Place.US,
              Kind.CANCELLATION,
              Locale.ENGLISH.getLanguage(),
              "You, the buyer, may cancel this transaction at any time prior to midnight of the"
                  + " third business day after the date of this transaction. See the attached"
                  + " notice of cancellation form for an explanation of this right.",
              null,
              null,
              "16 CFR 429.1(a)",
              CHECKED,
              CHECKED.plusYears(2)),
          new PlaceRule(
              Place.of("US-CA"),
              Kind.DEPOSIT,
              "",
              "",
              new BigDecimal("0.10"),
              new BigDecimal("1000"),
              "Cal. Business and Professions Code 7159.5(a)(3)",
              CHECKED,
              CHECKED.plusYears(2)));

  /**
   * {@return whether it holds at a place}
   *
   * @param other where a home is
   * @param about what is asked for
   */
  public boolean holds(Place other, Kind about) {
    return kind == about && other.isWithin(place);
  }
}
