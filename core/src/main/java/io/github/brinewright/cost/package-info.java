/**
 * What a candidate costs to buy, to run and over its life, in exact decimals of any currency.
 *
 * <pre>{@code
 * Offer offer = Offer.of(softener, Money.parse("EUR 1480")).build();
 * Quote quote = new Quote(offer, Control.METERED_AT_NIGHT, Terms.USUAL);
 * YearlyCost yearly = YearlyCost.of(design, offer, Tariff.placeholder(CurrencyUnit.EUR));
 * LifeCost life = LifeCost.of(quote, yearly);
 * Money afterFiveYears = life.after(5);
 * }</pre>
 */
@NullMarked
package io.github.brinewright.cost;

import org.jspecify.annotations.NullMarked;
