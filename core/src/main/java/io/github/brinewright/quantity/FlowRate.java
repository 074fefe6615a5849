package io.github.brinewright.quantity;

import java.time.Duration;

/** Volume of water in a unit of time. */
public final class FlowRate extends Quantity<FlowRate> {
  private static final double LITRE_PER_MINUTE = 1 / 3.785411784;
  private static final double CUBIC_METRE_PER_HOUR = 1000.0 / 60 * LITRE_PER_MINUTE;

  private FlowRate(double base) {
    super(base);
  }

  /**
   * {@return a flow rate of {@code value} US gallons per minute}
   *
   * @param value a finite number of US gallons per minute
   */
  public static FlowRate ofGallonsPerMinute(double value) {
    return new FlowRate(value);
  }

  /**
   * {@return a flow rate of {@code value} litres per minute}
   *
   * @param value a finite number of litres per minute
   */
  public static FlowRate ofLitresPerMinute(double value) {
    return new FlowRate(value * LITRE_PER_MINUTE);
  }

  /**
   * {@return a flow rate of {@code value} cubic metres per hour}
   *
   * @param value a finite number of cubic metres per hour
   */
  public static FlowRate ofCubicMetresPerHour(double value) {
    return new FlowRate(value * CUBIC_METRE_PER_HOUR);
  }

  /** {@return the number of US gallons per minute} */
  public double gallonsPerMinute() {
    return base();
  }

  /** {@return the number of litres per minute} */
  public double litresPerMinute() {
    return base() / LITRE_PER_MINUTE;
  }

  /** {@return the number of cubic metres per hour} */
  public double cubicMetresPerHour() {
    return base() / CUBIC_METRE_PER_HOUR;
  }

  /**
   * {@return the volume that flows in the given time}
   *
   * @param time how long it flows
   */
  public Volume during(Duration time) {
    return Volume.ofGallons(base() * Minutes.of(time));
  }

  /**
   * {@return the time a volume takes at this flow}
   *
   * @param volume volume that passes
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
