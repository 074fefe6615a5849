package io.github.brinewright.comparison;

import io.github.brinewright.finding.Rule;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Sources;

/**
 * Something that a good choice keeps, though a candidate that does not may still be sold. The
 * amounts are those of {@link Margins}.
 */
public enum Margin {
  /** Days between regenerations at mean use. */
  INTERVAL_MEAN(Sources.MMSD, Sense.AT_LEAST),
  /** Days between regenerations at design use. */
  INTERVAL_DESIGN(Sources.COMMON_PRACTICE, Sense.AT_LEAST),
  /** Peak flow through the bed, at most the flow that it softens without a break. */
  PEAK_ABOVE_SERVICE_FLOW(Sources.COMMON_PRACTICE, Sense.AT_MOST),
  /** Flow through each square foot of the bed, as long as it is used within its service flow. */
  AREA_LOADING_SERVICE(Sources.AREA_LOADING, Sense.AT_MOST),
  /** Flow through each square foot of the bed at the home's peak. */
  AREA_LOADING_PEAK(Sources.COMMON_PRACTICE, Sense.AT_MOST),
  /** Pressure lost in bed and valve, as long as the unit is used within its service flow. */
  PRESSURE_LOSS(Sources.NSF_44, Sense.AT_MOST),
  /** Pressure left behind the unit at peak flow. */
  PRESSURE_LEFT(Sources.COMMON_PRACTICE, Sense.AT_LEAST),
  /** Share of intervals in which soft water runs out, over all homes with such a mean use. */
  OUT_OF_SOFT_WATER(Sources.METER_DATA, Sense.AT_MOST),
  /** Share of a year's use that passes hard, from all causes, at mean use. */
  HARD_WATER_MEAN(Sources.METER_DATA, Sense.AT_MOST),
  /** The same at the mean that three of four such homes stay below. */
  HARD_WATER_HIGH(Sources.METER_DATA, Sense.AT_MOST),
  /** Salt dosage where iron is 2 mg/L or more, or dissolved solids 750 mg/L. */
  LEAN_DOSAGE(Sources.TRADE_BOOKLET, Sense.AT_LEAST);

  /** Which side of the margin is the good one. */
  public enum Sense {
    /** The limit or more. */
    AT_LEAST,
    /** The limit or less. */
    AT_MOST
  }

  private final Source source;
  private final Sense sense;

  Margin(Source source, Sense sense) {
    this.source = source;
    this.sense = sense;
  }

  /**
   * {@return a stable code, which files and programs may keep: its name in lower case with hyphens}
   */
  public String code() {
    return Rule.codeOf(this);
  }

  /** {@return who supports it} */
  public Source source() {
    return source;
  }

  /** {@return which side of the limit is the good one} */
  public Sense sense() {
    return sense;
  }
}
