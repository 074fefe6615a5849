package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Require;
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

  private static final Pressure NONE = Pressure.ofPsi(0);

  /** Neither pressure nor flow was measured. */
  public static final Supply NOT_MEASURED = new Supply(null, null, null, NONE);

  private final @Nullable Pressure pressure;
  private final @Nullable Pressure flowingPressure;
  private final @Nullable FlowRate flow;
  private final Pressure lossAhead;

  private Supply(
      @Nullable Pressure pressure,
      @Nullable Pressure flowingPressure,
      @Nullable FlowRate flow,
      Pressure lossAhead) {
    this.lossAhead = lossAhead;
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
    return new Supply(
        PRESSURE.require("supply pressure", measured), flowingPressure, flow, lossAhead);
  }

  /**
   * {@return the same supply with a pressure measured while much water flows}
   *
   * @param measured 1 to 200 psi
   * @throws IllegalArgumentException outside that range
   */
  public Supply withFlowingPressure(Pressure measured) {
    return new Supply(
        pressure, FLOWING_PRESSURE.require("flowing pressure", measured), flow, lossAhead);
  }

  /**
   * {@return the same supply with a measured flow}
   *
   * @param measured the most it delivers; 0.5 to 200 gpm
   * @throws IllegalArgumentException outside that range
   */
  public Supply withFlow(FlowRate measured) {
    return new Supply(pressure, flowingPressure, FLOW.require("supply flow", measured), lossAhead);
  }

  /**
   * {@return the same supply with treatments ahead of the softener}
   *
   * @param loss pressure that they take; zero or more
   * @throws IllegalArgumentException when it is negative
   */
  public Supply withLossAhead(Pressure loss) {
    return new Supply(
        pressure, flowingPressure, flow, Require.notNegative("pressure loss ahead", loss));
  }

  /** {@return the pressure that treatments ahead of the softener take} */
  public Pressure lossAhead() {
    return lossAhead;
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
   * measured the static one, which is higher, less what treatments ahead of it take; empty when
   * neither was}
   */
  public Optional<Pressure> pressureInUse() {
    return flowingPressure().or(this::pressure).map(each -> each.minus(lossAhead).max(NONE));
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
        && Objects.equals(flow, that.flow)
        && lossAhead.equals(that.lossAhead);
  }

  @Override
  public int hashCode() {
    return Objects.hash(pressure, flowingPressure, flow, lossAhead);
  }

  /** What was measured, for developers; people read what {@code words} writes. */
  @Override
  public String toString() {
    return "pressure "
        + shown(pressure)
        + ", flowing "
        + shown(flowingPressure)
        + ", flow "
        + shown(flow)
        + (lossAhead.isPositive() ? ", less " + lossAhead + " ahead" : "");
  }

  private static String shown(@Nullable Object value) {
    return value == null ? "not measured" : value.toString();
  }
}
