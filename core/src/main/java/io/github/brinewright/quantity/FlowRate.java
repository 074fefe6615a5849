package io.github.brinewright.quantity;

import java.time.Duration;

/** Volume of water in a unit of time. */
public final class FlowRate extends Quantity<FlowRate> {
  private static final double LITRE_PER_MINUTE = 1 / 3.785411784;
  private static final double CUBIC_METRE_PER_HOUR = 1000.0 / 60 * LITRE_PER_MINUTE;

  private FlowRate(double base) {
    super(base);
  }

  /** A flow rate of {@code value} US gallons per minute. */
  public static FlowRate ofGallonsPerMinute(double value) {
    return new FlowRate(value);
  }

  /** A flow rate of {@code value} litres per minute. */
  public static FlowRate ofLitresPerMinute(double value) {
    return new FlowRate(value * LITRE_PER_MINUTE);
  }

  /** A flow rate of {@code value} cubic metres per hour. */
  public static FlowRate ofCubicMetresPerHour(double value) {
    return new FlowRate(value * CUBIC_METRE_PER_HOUR);
  }

  /** The number of US gallons per minute. */
  public double gallonsPerMinute() {
    return base();
  }

  /** The number of litres per minute. */
  public double litresPerMinute() {
    return base() / LITRE_PER_MINUTE;
  }

  /** The number of cubic metres per hour. */
  public double cubicMetresPerHour() {
    return base() / CUBIC_METRE_PER_HOUR;
  }

  /** The volume that flows in the given time. */
  public Volume during(Duration time) {
    return Volume.ofGallons(base() * Minutes.of(time));
  }

  /**
   * The time a volume takes at this flow.
   *
   * @throws ArithmeticException when this flow is zero
   */
  public Duration timeFor(Volume volume) {
    if (base() == 0) {
      throw new ArithmeticException("no volume ever passes at a flow of zero");
    }
    return Minutes.toDuration(volume.gallons() / base());
  }

  @Override
  FlowRate with(double base) {
    return new FlowRate(base);
  }

  @Override
  String baseUnit() {
    return "gpm";
  }
}
