/**
 * A price list and a home side by side: candidates that keep every limit first, then by cost, and
 * the reason for each mark.
 *
 * <pre>{@code
 * PriceList prices = PriceList.builder(offers).limits(limits).build();
 * Comparison comparison = prices.compare(site, tariff);
 * for (Candidate candidate : comparison.candidates()) {
 *   show(candidate.softener().name(), candidate.life().total(), comparison.recommends(candidate));
 * }
 * }</pre>
 */
@NullMarked
package io.github.brinewright.comparison;

import org.jspecify.annotations.NullMarked;
