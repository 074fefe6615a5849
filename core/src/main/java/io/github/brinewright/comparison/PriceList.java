package io.github.brinewright.comparison;

import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.cost.YearlyCost;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.finding.RuleBook;
import io.github.brinewright.home.Site;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.sizing.ReadUse;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.sizing.Sizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A dealer's offers, the terms they are sold on, and the limits, margins and rules they are judged
 * by; it compares them for a home.
 *
 * <pre>{@code
 * PriceList prices = PriceList.builder(offers).terms(terms).build();
 * Comparison comparison = prices.compare(site, Tariff.placeholder(CurrencyUnit.USD));
 * comparison.recommended().ifPresent(best -> show(best.softener().name()));
 * }</pre>
 *
 * <p>Immutable; may be shared between threads. Equal price lists are equal.
 */
public final class PriceList {
  private final Map<String, Offer> offersById;
  private final Values values;

  private PriceList(Map<String, Offer> offersById, Values values) {
    this.offersById = offersById;
    this.values = values;
  }

  /**
   * {@return a price list with the usual terms, limits, margins and rules} See {@link #builder} for
   * errors.
   *
   * @param offers at least one, all in one currency, each of a softener with an id of its own
   */
  public static PriceList of(List<Offer> offers) {
    return builder(offers).build();
  }

  /**
   * Begins a price list.
   *
   * @param offers at least one, all in one currency, each of a softener with an id of its own;
   *     {@link Builder#build} refuses others with an {@link IllegalArgumentException}
   * @return a builder of the price list
   */
  public static Builder builder(List<Offer> offers) {
    return new Builder(offers);
  }

  /**
   * This price list, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    return new Builder(offers())
        .items(items())
        .ways(ways())
        .terms(terms())
        .limits(limits())
        .margins(margins())
        .rules(rules());
  }

  /** {@return what the dealer sells, in the order given} */
  public List<Offer> offers() {
    return values.offers;
  }

  /** {@return what else the dealer sells or takes off, in the order of a bill} */
  public List<Item> items() {
    return values.items;
  }

  /** {@return what a customer may add to a quote, in the order of a bill} */
  public List<Item> extras() {
    return items().stream().filter(Item::isExtra).toList();
  }

  /** {@return ways to pay, in their order; none where {@link #terms} say all} */
  public List<PaymentWay> ways() {
    return values.ways;
  }

  /**
   * {@return the credit that a monthly payment is stated of: the first among the ways to pay or,
   * where there are no ways, that of the terms; empty when none is offered}
   */
  public Optional<PaymentWay> credit() {
    return ways().isEmpty()
        ? terms().creditWay(Money.zero(currency()))
        : ways().stream().filter(way -> way.kind() == PaymentKind.CREDIT).findFirst();
  }

  /** {@return how it is sold} */
  public Terms terms() {
    return values.terms;
  }

  /** {@return the dealer's limits} */
  public Limits limits() {
    return values.limits;
  }

  /** {@return the dealer's margins} */
  public Margins margins() {
    return values.margins;
  }

  /** {@return the rules that homes and candidates are looked at by} */
  public RuleBook rules() {
    return values.rules;
  }

  /**
   * {@return the offer of a softener; empty when it is not sold here}
   *
   * @param softenerId id of the softener
   */
  public Optional<Offer> offer(String softenerId) {
    return Optional.ofNullable(offersById.get(softenerId));
  }

  /** {@return the currency of all prices} */
  public CurrencyUnit currency() {
    return offers().get(0).currency();
  }

  /**
   * Works out every setting of every offer for a home.
   *
   * @param site the home
   * @param tariff in the currency of this price list
   * @return all candidates, best first
   * @throws IllegalArgumentException when the tariff is in another currency
   */
  public Comparison compare(Site site, Tariff tariff) {
    HomeLoad home = home(site);
    Sizer sizer = sizer(home);
    Surveyed surveyed = Surveyed.of(this, home);
    List<Candidate> candidates = new ArrayList<>();
    for (Offer offer : offers()) {
      for (Setup setup : Setup.of(offer.softener())) {
        candidates.add(appraise(sizer.design(setup), offer, tariff, surveyed));
      }
    }
    return new Comparison(this, surveyed, tariff, candidates);
  }

  /**
   * {@return what a home asks for, sized on the share of its days that this dealer chose, if any}
   * What readings of the present softener tell of its use is worked in; so is the water behind the
   * treatments of this list that its water asks for, where they answer all that is to be treated.
   *
   * @param site the home
   */
  public HomeLoad home(Site site) {
    HomeLoad raw = load(ReadUse.of(site).site());
    Site treated = new Treating(this, raw).site();
    return treated.equals(raw.site()) ? raw : load(treated);
  }

  private HomeLoad load(Site site) {
    OptionalDouble share = limits().designUse();
    return share.isPresent()
        ? HomeLoad.coveringShare(site, share.getAsDouble())
        : new HomeLoad(site);
  }

  /**
   * {@return a sizer with this dealer's limits}
   *
   * @param home what the home asks for
   */
  public Sizer sizer(HomeLoad home) {
    return new Sizer(home, limits().reserveRisk());
  }

  /**
   * Prices a design and looks for what speaks against it.
   *
   * @param design of a softener that is sold here, made by {@link #sizer}
   * @param tariff in the currency of this price list
   * @return the design with its prices and what was found
   * @throws IllegalArgumentException when the softener is not sold here, not with this control, or
   *     the tariff is in another currency
   */
  public Candidate appraise(Design design, Tariff tariff) {
    return appraise(design, tariff, Surveyed.of(this, design.home()));
  }

  Candidate appraise(Design design, Tariff tariff, Surveyed surveyed) {
    Offer offer =
        offer(design.softener().id())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "the softener "
                            + design.softener().id()
                            + " is not in this price list; add an offer of it"));
    return appraise(design, offer, tariff, surveyed);
  }

  private Candidate appraise(Design design, Offer offer, Tariff tariff, Surveyed surveyed) {
    List<Finding> findings = rules().findings(design, limits());
    Quote quote = new Quote(offer, design.setup().control(), terms(), surveyed.itemsWith(findings));
    YearlyCost yearly = YearlyCost.of(design, offer, tariff, quote.items());
    return new Candidate(
        design, findings, Served.of(design, margins(), limits()), LifeCost.of(quote, yearly));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PriceList list && values.equals(list.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "PriceList");
  }

  private record Values(
      List<Offer> offers,
      List<Item> items,
      List<PaymentWay> ways,
      Terms terms,
      Limits limits,
      Margins margins,
      RuleBook rules) {}

  /** Collects a price list. */
  public static final class Builder {
    private final List<Offer> offers;
    private List<Item> items = List.of();
    private List<PaymentWay> ways = List.of();
    private Terms terms = Terms.USUAL;
    private Limits limits = Limits.USUAL;
    private Margins margins = Margins.USUAL;
    private RuleBook rules = RuleBook.USUAL;

    private Builder(List<Offer> offers) {
      this.offers = List.copyOf(offers);
    }

    /**
     * What else is sold or taken off; nothing unless set.
     *
     * @param items in the order of a bill, each with an id of its own; a bundle names others of
     *     them
     * @return this builder
     */
    public Builder items(List<Item> items) {
      this.items = List.copyOf(items);
      return this;
    }

    /**
     * Ways to pay; none beside the deposit and credit of the terms unless set.
     *
     * @param ways in their order, each with an id of its own, in the currency of the offers
     * @return this builder
     */
    public Builder ways(List<PaymentWay> ways) {
      this.ways = List.copyOf(ways);
      return this;
    }

    /**
     * How it is sold; {@link Terms#USUAL} unless set.
     *
     * @param terms tax, deposit, credit and the years compared
     * @return this builder
     */
    public Builder terms(Terms terms) {
      this.terms = terms;
      return this;
    }

    /**
     * The dealer's limits; {@link Limits#USUAL} unless set.
     *
     * @param limits those of the dealer
     * @return this builder
     */
    public Builder limits(Limits limits) {
      this.limits = limits;
      return this;
    }

    /**
     * The dealer's margins; {@link Margins#USUAL} unless set.
     *
     * @param margins those of the dealer
     * @return this builder
     */
    public Builder margins(Margins margins) {
      this.margins = margins;
      return this;
    }

    /**
     * The rules; {@link RuleBook#USUAL} unless set.
     *
     * @param rules that homes and candidates are looked at by
     * @return this builder
     */
    public Builder rules(RuleBook rules) {
      this.rules = rules;
      return this;
    }

    /**
     * {@return the finished price list; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when there is no offer, two softeners or two items share an
     *     id, a bundle names an item that is not there, or currencies differ
     */
    public PriceList build() {
      if (offers.isEmpty()) {
        throw new IllegalArgumentException("there is no unit to compare");
      }
      Map<String, Offer> byId = new LinkedHashMap<>();
      for (Offer offer : offers) {
        String id = offer.softener().id();
        if (byId.put(id, offer) != null) {
          throw new IllegalArgumentException(
              "two softeners of the price list have the id " + id + "; give one of them another");
        }
        if (!offer.currency().equals(offers.get(0).currency())) {
          throw new IllegalArgumentException(
              "the offer of "
                  + id
                  + " is in "
                  + offer.currency()
                  + ", but the first one in "
                  + offers.get(0).currency()
                  + "; use one currency in a price list");
        }
      }
      Item.check(items, offers.get(0).currency());
      return new PriceList(byId, new Values(offers, items, ways, terms, limits, margins, rules));
    }
  }
}
