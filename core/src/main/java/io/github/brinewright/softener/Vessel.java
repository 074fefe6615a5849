package io.github.brinewright.softener;

import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Volume;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;

/**
 * The round pressure vessel that holds the bed.
 *
 * @param diameter outside diameter as the trade states it; 3 to 90 in
 * @param height of the vessel; 3 to 90 in
 */
public record Vessel(Length diameter, Length height) {
  /** Diameter and height of a vessel: 3 to 90 in. */
  public static final Bounds<Length> SIDE = Bounds.of(Length.ofInches(3), Length.ofInches(90));

  private static final TreeMap<Double, Vessel> USUAL =
      new TreeMap<>(
          Map.of(
              0.5, ofInches(8, 35),
              0.75, ofInches(8, 44),
              1.0, ofInches(9, 48),
              1.5, ofInches(10, 54),
              2.0, ofInches(12, 52),
              2.5, ofInches(13, 54),
              3.0, ofInches(14, 65),
              4.0, ofInches(16, 65)));

  /**
   * @param diameter outside diameter as the trade states it
   * @param height of the vessel
   * @throws IllegalArgumentException when diameter or height is out of range
   */
  public Vessel {
    SIDE.require("vessel diameter", diameter);
    SIDE.require("vessel height", height);
  }

  private static Vessel ofInches(double diameter, double height) {
    return new Vessel(Length.ofInches(diameter), Length.ofInches(height));
  }

  /**
   * {@return the vessel usually sold with a bed of the given volume: common practice}
   *
   * @param resin volume of the bed
   */
  public static Vessel usualFor(Volume resin) {
    Map.Entry<Double, Vessel> entry = USUAL.ceilingEntry(resin.cubicFeet() - 1e-6);
    return entry == null ? USUAL.lastEntry().getValue() : entry.getValue();
  }

  /**
   * {@return the bed usually sold in a vessel of about this size: the one whose usual vessel is
   * nearest in volume; in a larger or smaller vessel than any of these in proportion, common
   * practice} Example: 9 × 48 in → 1 ft3.
   */
  public Volume usualBed() {
    double own = cylinder();
    Map.Entry<Double, Vessel> nearest =
        USUAL.entrySet().stream()
            .min(Comparator.comparingDouble(each -> Math.abs(each.getValue().cylinder() - own)))
            .orElseThrow();
    double ratio = own / nearest.getValue().cylinder();
    boolean beyond =
        own < USUAL.firstEntry().getValue().cylinder()
            || own > USUAL.lastEntry().getValue().cylinder();
    Volume usual = Volume.ofCubicFeet(nearest.getKey());
    return beyond ? Softener.RESIN_VOLUME.nearest(usual.times(ratio)) : usual;
  }

  private double cylinder() {
    return diameter.inches() * diameter.inches() * height.inches();
  }

  /** {@return the cross-section} */
  public Area area() {
    return Area.ofCircle(diameter);
  }

  /**
   * {@return the depth of a bed in it, as if the vessel were a plain cylinder}
   *
   * @param resin volume of the bed
   */
  public Length depthOf(Volume resin) {
    return area().depthOf(resin);
  }

  /**
   * {@return the room above the bed as a share of the bed's depth; dimensionless}
   *
   * @param resin volume of the bed
   */
  public double freeboard(Volume resin) {
    Length depth = depthOf(resin);
    return height.minus(depth).ratioTo(depth);
  }
}
