/**
 * What a home asks of any softener: compensated hardness, daily use, daily load, peak flow.
 *
 * <pre>{@code
 * HomeLoad home = new HomeLoad(site);
 * HardnessAmount load = home.dailyLoad();
 * }</pre>
 */
@NullMarked
package io.github.brinewright.demand;

import org.jspecify.annotations.NullMarked;
