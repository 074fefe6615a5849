package io.github.brinewright.job;

import io.github.brinewright.cost.Tariff;
import io.github.brinewright.sizing.Site;

/**
 * A home with the prices at its address.
 *
 * @param site the home
 * @param tariff the prices
 */
public record Visit(Site site, Tariff tariff) {}
