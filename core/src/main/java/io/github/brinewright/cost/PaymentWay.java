package io.github.brinewright.cost;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A way to pay that a dealer offers.
 *
 * <pre>{@code
 * PaymentWay rental =
 *     PaymentWay.of("rental", PaymentKind.RENTAL, nothing)
 *         .months(60)
 *         .monthlyShare(new BigDecimal("0.022"))
 *         .endShare(new BigDecimal("0.1"))
 *         .build();
 * }</pre>
 *
 * <p>Immutable; equal ways are equal.
 */
public final class PaymentWay {
  /** For how many months payments run: 1 to 240. */
  public static final Bounds<Integer> MONTHS = Bounds.of(1, 240);

  /** Days from the signature to the first of monthly payments: 3 to 360. */
  public static final Bounds<Integer> FIRST_DAYS = Bounds.of(3, 360);

  /** A usual month of a credit, in days. */
  public static final int USUAL_FIRST_DAYS = 30;

  private final Values values;

  private PaymentWay(Values values) {
    this.values = values;
  }

  /**
   * Begins a way to pay.
   *
   * @param id short name within a price list; not blank
   * @param kind how it is paid
   * @param nothing zero in the currency of the price list
   * @return a builder of the way
   * @throws IllegalArgumentException when the id is blank
   */
  public static Builder of(String id, PaymentKind kind, Money nothing) {
    return new Builder(id, kind, nothing);
  }

  /** {@return the short name within a price list} */
  public String id() {
    return values.id;
  }

  /** {@return how it is paid} */
  public PaymentKind kind() {
    return values.kind;
  }

  /** {@return the name on paper} */
  public LocalText name() {
    return values.name;
  }

  /** {@return what the homeowner reads of it; may be empty} */
  public LocalText text() {
    return values.text;
  }

  /** {@return the share of the price that is due with the signature, as a fraction} */
  public BigDecimal depositShare() {
    return values.depositShare;
  }

  /** {@return the nominal yearly rate of a credit, as a fraction} */
  public BigDecimal yearlyRate() {
    return values.yearlyRate;
  }

  /** {@return for how many months payments run; 0 for cash} */
  public int months() {
    return values.months;
  }

  /** {@return what a credit costs at once, beside its interest} */
  public Money fee() {
    return values.fee;
  }

  /** {@return days from the signature to the first of monthly payments} */
  public int firstDays() {
    return values.firstDays;
  }

  /** {@return who gives the credit, or owns what is rented; empty where nobody is named} */
  public String creditor() {
    return values.creditor;
  }

  /** {@return the share of the price that a month's rent is, as a fraction} */
  public BigDecimal monthlyShare() {
    return values.monthlyShare;
  }

  /**
   * {@return the share of the price for which it may be bought at the end of a rental; empty where
   * it is given back}
   */
  public Optional<BigDecimal> endShare() {
    return Optional.ofNullable(values.endShare);
  }

  /** {@return whether a year's service is in the rent} */
  public boolean serviceIncluded() {
    return values.serviceIncluded;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PaymentWay way && values.equals(way.values);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(values);
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "PaymentWay");
  }

  private record Values(
      String id,
      PaymentKind kind,
      LocalText name,
      LocalText text,
      BigDecimal depositShare,
      BigDecimal yearlyRate,
      int months,
      Money fee,
      int firstDays,
      String creditor,
      BigDecimal monthlyShare,
      @Nullable BigDecimal endShare,
      boolean serviceIncluded) {}

  /** Collects a way to pay. */
  public static final class Builder {
    private final String id;
    private final PaymentKind kind;
    private LocalText name;
    private LocalText text = LocalText.NONE;
    private BigDecimal depositShare = BigDecimal.ZERO;
    private BigDecimal yearlyRate = BigDecimal.ZERO;
    private int months;
    private Money fee;
    private int firstDays = USUAL_FIRST_DAYS;
    private String creditor = "";
    private BigDecimal monthlyShare = BigDecimal.ZERO;
    private @Nullable BigDecimal endShare;
    private boolean serviceIncluded;

    private Builder(String id, PaymentKind kind, Money nothing) {
      this.id = Require.notBlank("id of a way to pay", id);
      this.kind = kind;
      name = LocalText.of(id);
      fee = Prices.require("fee", nothing, nothing.getCurrencyUnit());
    }

    /**
     * The name on paper; the id unless set.
     *
     * @param name short, without a full stop
     * @return this builder
     */
    public Builder name(LocalText name) {
      this.name = name.usual().isEmpty() ? new LocalText(id, name.byLanguage()) : name;
      return this;
    }

    /**
     * What the homeowner reads of it; nothing unless set.
     *
     * @param text a sentence or two
     * @return this builder
     */
    public Builder text(LocalText text) {
      this.text = text;
      return this;
    }

    /**
     * Share of the price that is due with the signature; none unless set.
     *
     * @param fraction 0 to 1, with at most 8 decimals
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder depositShare(BigDecimal fraction) {
      depositShare = Prices.rate("deposit of " + id, fraction, "1");
      return this;
    }

    /**
     * Nominal yearly rate of a credit; none unless set.
     *
     * @param fraction 0 to 0.6, with at most 8 decimals
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder yearlyRate(BigDecimal fraction) {
      yearlyRate = Prices.rate("yearly rate of " + id, fraction, "0.6");
      return this;
    }

    /**
     * For how many months payments run; needed but for cash.
     *
     * @param number 1 to 240
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder months(int number) {
      months = MONTHS.require("months of " + id, number);
      return this;
    }

    /**
     * What a credit costs at once, beside its interest; nothing unless set.
     *
     * @param amount 0 to 10^12 in the currency of the price list
     * @return this builder
     * @throws IllegalArgumentException outside that range, or in another currency
     */
    public Builder fee(Money amount) {
      fee = Prices.require("fee of " + id, amount, fee.getCurrencyUnit());
      return this;
    }

    /**
     * Days to the first of monthly payments; 30 unless set.
     *
     * @param days 3 to 360
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder firstDays(int days) {
      firstDays = FIRST_DAYS.require("days to the first payment of " + id, days);
      return this;
    }

    /**
     * Who gives the credit, or owns what is rented; nobody named unless set.
     *
     * @param name as it is to be printed
     * @return this builder
     */
    public Builder creditor(String name) {
      creditor = name;
      return this;
    }

    /**
     * Share of the price that a month's rent is; needed of a rental.
     *
     * @param fraction 0 to 1, with at most 8 decimals
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder monthlyShare(BigDecimal fraction) {
      monthlyShare = Prices.rate("monthly share of " + id, fraction, "1");
      return this;
    }

    /**
     * Share of the price for which it may be bought at the end of a rental; given back unless set.
     *
     * @param fraction 0 to 1, with at most 8 decimals
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder endShare(BigDecimal fraction) {
      endShare = Prices.rate("share at the end of " + id, fraction, "1");
      return this;
    }

    /**
     * Whether a year's service is in the rent; it is not unless set.
     *
     * @param included true where it is
     * @return this builder
     */
    public Builder serviceIncluded(boolean included) {
      serviceIncluded = included;
      return this;
    }

    /**
     * {@return the finished way; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when a credit or a rental has no months, or a rental no rent
     */
    public PaymentWay build() {
      refuse(kind != PaymentKind.CASH && months == 0, "has no months");
      refuse(kind == PaymentKind.RENTAL && monthlyShare.signum() == 0, "has no rent");
      return new PaymentWay(
          new Values(
              id,
              kind,
              name,
              text,
              depositShare,
              yearlyRate,
              months,
              fee,
              firstDays,
              creditor,
              monthlyShare,
              endShare,
              serviceIncluded));
    }

    private void refuse(boolean wrong, String why) {
      if (wrong) {
        throw new IllegalArgumentException("the way to pay " + id + " " + why);
      }
    }
  }
}
