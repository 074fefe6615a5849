package io.github.brinewright.softener;

import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;
import java.util.ArrayList;
import java.util.List;

/**
 * Resins that come with the library, all on one basis: the conservative fit for standard gel. Their
 * publications differ by up to a third for one kind of resin at 5 lb/ft3, by a twelfth like for
 * like; a resin is therefore set against standard gel by its ratio within one publication. The
 * tables as published stand beside them, for a dealer who knows that his resin keeps one.
 */
public final class ShippedResins {
  /** Mean of Keller's fine mesh over his standard mesh at 5, 10 and 15 lb/ft3. */
  private static final double FINE_OVER_STANDARD = 1.083;

  private static final LogarithmicCurve REFERENCE =
      new LogarithmicCurve(
          ResinCapacity.ofGrainsPerCubicFoot(10_286),
          ResinCapacity.ofGrainsPerCubicFoot(1_326.3),
          SaltDosage.ofPoundsPerCubicFoot(3),
          SaltDosage.ofPoundsPerCubicFoot(20),
          Sources.STANDARD_GEL);

  private ShippedResins() {}

  /**
   * Conservative standard gel, 8 % cross-linked: 10,286 ln(D) + 1,326.3 grains/ft3 for D = 3 to 20
   * lb/ft3. Example: 6 lb/ft3 → 19,756 grains/ft3. Source: operator training slides.
   */
  public static final Resin STANDARD_GEL =
      Resin.of("standard-gel", "Standard gel, 8 % cross-linked", REFERENCE);

  /** Standard mesh, which is standard gel under another name; 5 to 15 lb/ft3. */
  public static final Resin STANDARD_MESH =
      Resin.of(
          "standard-mesh", "Standard mesh", REFERENCE.likeForLike(1, 5, 15, Sources.STANDARD_GEL));

  /**
   * Fine mesh: 1.083 × standard gel for 5 to 15 lb/ft3. Example: 10 lb/ft3 → 27,087 grains/ft3.
   * Source: ratio of Keller, WC&amp;P 2005; mean bead 0.45 mm from memory.
   */
  public static final Resin FINE_MESH =
      new Resin(
          "fine-mesh",
          "Fine mesh",
          REFERENCE.likeForLike(FINE_OVER_STANDARD, 5, 15, Sources.FINE_MESH),
          Length.ofMillimetres(0.45),
          Resin.USUAL_DENSITY);

  /** General purpose, which is standard gel under another name; 5 to 12 lb/ft3. */
  public static final Resin GENERAL_PURPOSE =
      Resin.of(
          "general-purpose",
          "General purpose",
          REFERENCE.likeForLike(1, 5, 12, Sources.STANDARD_GEL));

  /** Standard mesh as published at 5, 10 and 15 lb/ft3. Source: Keller, WC&amp;P 2005. */
  public static final TableCurve KELLER_STANDARD_MESH =
      table(Sources.KELLER_2005, 5, 22_200, 10, 29_000, 15, 31_300);

  /** Fine mesh as published at 5, 10 and 15 lb/ft3. Source: Keller, WC&amp;P 2005. */
  public static final TableCurve KELLER_FINE_MESH =
      table(Sources.KELLER_2005, 5, 23_900, 10, 31_500, 15, 34_000);

  /** General purpose as published at 5, 8 and 12 lb/ft3. Source: Michaud, WC&amp;P 2015. */
  public static final TableCurve MICHAUD_GENERAL_PURPOSE =
      table(Sources.MICHAUD_2015, 5, 20_000, 8, 24_000, 12, 30_000);

  /** {@return all shipped resins} */
  public static List<Resin> all() {
    return List.of(STANDARD_GEL, STANDARD_MESH, FINE_MESH, GENERAL_PURPOSE);
  }

  private static TableCurve table(Source source, double... dosageAndCapacity) {
    List<TableCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < dosageAndCapacity.length; i += 2) {
      points.add(
          new TableCurve.Point(
              SaltDosage.ofPoundsPerCubicFoot(dosageAndCapacity[i]),
              ResinCapacity.ofGrainsPerCubicFoot(dosageAndCapacity[i + 1])));
    }
    return new TableCurve(points, source);
  }
}
