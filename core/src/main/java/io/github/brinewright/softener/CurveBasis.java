package io.github.brinewright.softener;

import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;

/**
 * What a capacity is stated on. Within one basis resins are compared like for like; published
 * tables of one kind of resin differ by a third from basis to basis, so a lead across bases is less
 * sure.
 *
 * @param source who states it
 */
public record CurveBasis(Source source) {
  /**
   * The basis of every shipped resin: the conservative fit for standard gel. Other shipped resins
   * are set against it by their ratio to a standard gel of the same publication.
   */
  public static final CurveBasis SHIPPED = new CurveBasis(Sources.STANDARD_GEL);

  /** A rating in grains. */
  public static final CurveBasis RATING = new CurveBasis(Sources.RATED_CAPACITY);
}
