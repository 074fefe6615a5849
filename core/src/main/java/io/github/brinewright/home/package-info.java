/**
 * What a visit gives: the site, its people, its water and its supply.
 *
 * <pre>{@code
 * WaterAnalysis water =
 *     WaterAnalysis.ofHardness(Hardness.ofGrainsPerGallon(18))
 *         .found(Substance.IRON, Concentration.ofMilligramsPerLitre(0.3))
 *         .build();
 * Site site = Site.of("A1", water, Household.of(3).build()).build();
 * }</pre>
 */
@NullMarked
package io.github.brinewright.home;

import org.jspecify.annotations.NullMarked;
