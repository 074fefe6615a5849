package io.github.brinewright.quantity;

/** Flow through a unit of cross-section, as the trade states it, or as a velocity. */
public final class FlowVelocity extends Quantity<FlowVelocity> {
  private static final double METRE_PER_SECOND = 60 / 0.003785411784 * 0.09290304;

  private FlowVelocity(double base) {
    super(base);
  }

  /**
   * {@return a flow velocity of {@code value} gpm per square foot}
   *
   * @param value a finite number of gpm per square foot
   */
  public static FlowVelocity ofGallonsPerMinutePerSquareFoot(double value) {
    return new FlowVelocity(value);
  }

  /**
   * {@return a flow velocity of {@code value} metres per second}
   *
   * @param value a finite number of metres per second
   */
  public static FlowVelocity ofMetresPerSecond(double value) {
    return new FlowVelocity(value * METRE_PER_SECOND);
  }

  /** {@return the number of gpm per square foot} */
  public double gallonsPerMinutePerSquareFoot() {
    return base();
  }

  /** {@return the number of metres per second} */
  public double metresPerSecond() {
    return base() / METRE_PER_SECOND;
  }

  /**
   * {@return the flow that passes the given cross-section at this velocity}
   *
   * @param area cross-section that the flow passes
   */
  public FlowRate through(Area area) {
    return FlowRate.ofGallonsPerMinute(base() * area.squareFeet());
  }

  @Override
  FlowVelocity with(double base) {
    return new FlowVelocity(base);
  }

  @Override
  String baseUnit() {
    return "gpm/ft2";
  }
}
