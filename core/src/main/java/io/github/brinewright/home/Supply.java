package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Pressure;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the main or the well delivers at the home. A value that was not measured is absent, never
 * zero. Example: {@code Supply.NOT_MEASURED.withPressure(Pressure.ofPsi(60))}.
 */
public final class Supply {
  /** Static pressure at a home: 5 to 200 psi. */
  public static final Bounds<Pressure> PRESSURE = Bounds.of(Pressure.ofPsi(5), Pressure.ofPsi(200));

  /** Flow that a main or well delivers: 0.5 to 200 gpm. */
  public static final Bounds<FlowRate> FLOW =
      Bounds.of(FlowRate.ofGallonsPerMinute(0.5), FlowRate.ofGallonsPerMinute(200));

  /** Pressure at a home while water flows: 1 to 200 psi. */
  public static final Bounds<Pressure> FLOWING_PRESSURE =
      Bounds.of(Pressure.ofPsi(1), Pressure.ofPsi(200));

  /** Neither pressure nor flow was measured. */
  public static final Supply NOT_MEASURED = new Supply(null, null, null);

  private final @Nullable Pressure pressure;
  private final @Nullable Pressure flowingPressure;
  private final @Nullable FlowRate flow;

  private Supply(
      @Nullable Pressure pressure, @Nullable Pressure flowingPressure, @Nullable FlowRate flow) {
    this.pressure = pressure;
    this.flowingPressure = flowingPressure;
    this.flow = flow;
  }

  /**
   * {@return a supply of which both were measured}
   *
   * @param pressure static pressure; 5 to 200 psi
   * @param flow the most it delivers; 0.5 to 200 gpm
   * @throws IllegalArgumentException outside these ranges
   */
  public static Supply of(Pressure pressure, FlowRate flow) {
    return NOT_MEASURED.withPressure(pressure).withFlow(flow);
  }

  /**
   * {@return the same supply with a measured pressure}
   *
   * @param measured static pressure; 5 to 200 psi
   * @throws IllegalArgumentException outside that range
   */
  public Supply withPressure(Pressure measured) {
    return new Supply(PRESSURE.require("supply pressure", measured), flowingPressure, flow);
  }

  /**
   * {@return the same supply with a pressure measured while much water flows}
   *
   * @param measured 1 to 200 psi
   * @throws IllegalArgumentException outside that range
   */
  public Supply withFlowingPressure(Pressure measured) {
    return new Supply(pressure, FLOWING_PRESSURE.require("flowing pressure", measured), flow);
  }

  /**
   * {@return the same supply with a measured flow}
   *
   * @param measured the most it delivers; 0.5 to 200 gpm
   * @throws IllegalArgumentException outside that range
   */
  public Supply withFlow(FlowRate measured) {
    return new Supply(pressure, flowingPressure, FLOW.require("supply flow", measured));
  }

  /** {@return the static pressure; empty when it was not measured} */
  public Optional<Pressure> pressure() {
    return Optional.ofNullable(pressure);
  }

  /** {@return the pressure while much water flows; empty when it was not measured} */
  public Optional<Pressure> flowingPressure() {
    return Optional.ofNullable(flowingPressure);
  }

  /**
   * {@return what a softener gets while water flows: the flowing pressure, or where that was not
   * measured the static one, which is higher; empty when neither was}
   */
  public Optional<Pressure> pressureInUse() {
    return flowingPressure().or(this::pressure);
  }

  /** {@return the most it delivers; empty when it was not measured} */
  public Optional<FlowRate> flow() {
    return Optional.ofNullable(flow);
  }

  /** Supplies that were measured alike are equal. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Supply that
        && Objects.equals(pressure, that.pressure)
        && Objects.equals(flowingPressure, that.flowingPressure)
        && Objects.equals(flow, that.flow);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pressure, flowingPressure, flow);
  }

  /** What was measured, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return "pressure "
        + shown(pressure)
        + ", flowing "
        + shown(flowingPressure)
        + ", flow "
        + shown(flow);
  }

  private static String shown(@Nullable Object value) {
    return value == null ? "not measured" : value.toString();
  }
}
