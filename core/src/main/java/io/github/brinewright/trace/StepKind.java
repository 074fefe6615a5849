package io.github.brinewright.trace;

/** Every formula that a proposal can print, in the order in which a reader would redo them. */
public enum StepKind {
  /** Compensated hardness: hardness + iron allowance × iron + manganese allowance × manganese. */
  COMPENSATED_HARDNESS(Topic.WATER),

  /** Daily use to expect: what readings of some months leave of what was reckoned before. */
  EXPECTED_USE_READINGS(Topic.DEMAND),

  /** Daily use to expect: billed volume ÷ days. */
  EXPECTED_USE_BILL(Topic.DEMAND),

  /** Daily use to expect: 0.78 × (37.2 × people + 69.2) gal. */
  EXPECTED_USE_STATISTICS(Topic.DEMAND),

  /** Daily use to expect: occupancy × people × use per person. */
  EXPECTED_USE_OCCUPANCY(Topic.DEMAND),

  /**
   * Mean use of the year: daily use to expect × (ordinary days + guest days × guest factor + days
   * away × 0.02) ÷ 365.
   */
  USE_OF_YEAR(Topic.DEMAND),

  /** Daily use to size on: people × use per person. */
  DESIGN_USE_PER_HEAD(Topic.DEMAND),

  /**
   * Daily use to size on: factor that the chosen share of days stays below × daily use to expect.
   */
  DESIGN_USE_FACTOR(Topic.DEMAND),

  /** Share of the days at home covered: daily use to size on ÷ daily use to expect, gamma. */
  DESIGN_COVERAGE(Topic.DEMAND),

  /**
   * Water through the bed to size on: daily use × softened share × (hardness − target) ÷ hardness.
   */
  SOFTENED_DESIGN(Topic.DEMAND),

  /**
   * Water through the bed to expect: daily use × softened share × (hardness − target) ÷ hardness.
   */
  SOFTENED_EXPECTED(Topic.DEMAND),

  /** Daily load: daily use × compensated hardness. */
  DAILY_LOAD(Topic.DEMAND),

  /** Operating capacity of the resin: slope × ln(dosage) + offset. */
  CAPACITY_LOGARITHM(Topic.CAPACITY),

  /** Operating capacity of the resin: between two rows of its table, in proportion. */
  CAPACITY_TABLE(Topic.CAPACITY),

  /** Usable capacity (dosage curve): design factor × operating capacity × resin volume in ft³. */
  USABLE_FROM_CURVE(Topic.CAPACITY),

  /** Usable capacity (rated capacity): usable share × rated capacity. */
  USABLE_FROM_RATING(Topic.CAPACITY),

  /** Usable capacity in cold water: share left at this temperature × usable capacity. */
  USABLE_IN_COLD_WATER(Topic.CAPACITY),

  /** Salt for each regeneration: dosage × resin volume in ft³ × mass ratio of the salt. */
  SALT_FROM_DOSAGE(Topic.CAPACITY),

  /**
   * Salt for each regeneration: usable capacity ÷ 10,000 grains × 3 lb × mass ratio of the salt.
   */
  SALT_FROM_USABLE(Topic.CAPACITY),

  /** Water through each tank to size on: water through all tanks ÷ tanks. */
  DESIGN_OF_EACH_TANK(Topic.REGENERATION),

  /** Water through each tank to expect: water through all tanks ÷ tanks. */
  EXPECTED_OF_EACH_TANK(Topic.REGENERATION),

  /**
   * Capacity left for the home: usable capacity − regeneration water of the other tank ×
   * compensated hardness.
   */
  USABLE_BESIDE_TWIN(Topic.REGENERATION),

  /** Days that the bed holds at full use: usable capacity ÷ daily load, whole days. */
  CLOCK_DAYS(Topic.REGENERATION),

  /**
   * Days whose hard water stays within the margin: usable capacity ÷ (factor of nine cases in ten ×
   * load to expect), whole days.
   */
  CLOCK_DAYS_MARGIN(Topic.REGENERATION),

  /**
   * Days to set: the smallest of the days at full use, within the margin, and allowed; at least 1.
   */
  CLOCK_DAYS_SET(Topic.REGENERATION),

  /** Weekdays to set: as many as 7 ÷ days to set, rounded up, spread evenly. */
  WEEKDAYS_SET(Topic.REGENERATION),

  /** Reserve: one day to size on: daily use × compensated hardness. */
  RESERVE(Topic.REGENERATION),

  /**
   * Reserve for the chosen risk of running out: days that the risk asks for × daily use to expect ×
   * compensated hardness.
   */
  RESERVE_BY_RISK(Topic.REGENERATION),

  /** Volume to set: (usable capacity − reserve) ÷ compensated hardness. */
  SET_VOLUME(Topic.REGENERATION),

  /** Days between regenerations at full use: volume to set ÷ daily use to size on. */
  METERED_DAYS(Topic.REGENERATION),

  /** Refill water: salt ÷ salt that a gallon dissolves. */
  REFILL_WATER(Topic.REGENERATION),

  /** Brine refill, exact: refill water ÷ refill flow. */
  REFILL_MINUTES(Topic.REGENERATION),

  /** Salt that the set minutes give: set minutes × refill flow × salt that a gallon dissolves. */
  SALT_GIVEN(Topic.REGENERATION),

  /**
   * The same by the handbook: set refill water × salt that saturates a gallon at the brine tank's
   * temperature.
   */
  SALT_BY_HANDBOOK(Topic.REGENERATION),

  /** Backwash water: minutes × flow. */
  BACKWASH_WATER(Topic.REGENERATION),

  /** Brine draw water: minutes × flow. */
  BRINE_DRAW_WATER(Topic.REGENERATION),

  /** Slow rinse water: minutes × flow. */
  SLOW_RINSE_WATER(Topic.REGENERATION),

  /** Fast rinse water: minutes × flow. */
  FAST_RINSE_WATER(Topic.REGENERATION),

  /** Water for each regeneration: backwash + brine draw + slow rinse + fast rinse + refill. */
  CYCLE_WATER(Topic.REGENERATION),

  /** Peak flow: kitchen and laundry + flow per bathroom × bathrooms. */
  PEAK_BY_BATHROOMS(Topic.FLOW),

  /** Peak flow: as measured. */
  PEAK_MEASURED(Topic.FLOW),

  /** Peak flow: for the fixture units, between two rows of the code's table, in proportion. */
  PEAK_BY_FIXTURES(Topic.FLOW),

  /** Peak flow of the hot water: for three quarters of the fixture units, from the same table. */
  PEAK_OF_HOT_FIXTURES(Topic.FLOW),

  /** Peak flow of the hot water: share × peak flow. */
  PEAK_OF_HOT_WATER(Topic.FLOW),

  /** Peak flow through the bed: peak flow × share that is not blended. */
  PEAK_THROUGH_BED(Topic.FLOW),

  /** Peak flow through each tank: peak flow ÷ tanks. */
  PEAK_OF_EACH_TANK(Topic.FLOW),

  /** Depth of the bed: resin volume ÷ area of the vessel × 12. */
  BED_DEPTH(Topic.FLOW),

  /** Velocity at peak flow in m/s: peak flow ÷ area × 0.000679. */
  FLOW_VELOCITY(Topic.FLOW),

  /**
   * Pressure loss, loose bed (voidage e = 0.40): depth × (150 × viscosity × v × (1 − e)² ÷ (e³ ×
   * bead²) + 1.75 × density × v² × (1 − e) ÷ (e³ × bead)) ÷ 6,895 + valve.
   */
  PRESSURE_LOSS_LOOSE(Topic.FLOW),

  /** Pressure loss, dense bed (voidage e = 0.36): the same formula. */
  PRESSURE_LOSS_DENSE(Topic.FLOW),

  /**
   * Backwash flow for half the depth again: bead's terminal velocity (from the drag law) × voidage
   * ^ exponent × area.
   */
  BACKWASH_FLOW(Topic.FLOW),

  /** Regenerations a year: 365 ÷ mean days from one to the next, forecast from the home's days. */
  REGENERATIONS_YEAR(Topic.YEAR),

  /** Hard water a year: because the bed has run out + while it regenerates. */
  HARD_WATER_YEAR(Topic.YEAR),

  /** Salt that all tanks take: salt given × tanks. */
  SALT_OF_TANKS(Topic.YEAR),

  /** Water that all tanks take: water for each regeneration × tanks. */
  WATER_OF_TANKS(Topic.YEAR),

  /** Salt a year: regenerations × salt given. */
  SALT_YEAR(Topic.YEAR),

  /** Regeneration water a year: regenerations × water for each. */
  WATER_YEAR(Topic.YEAR),

  /** Electricity a year: power × 8,760 hours ÷ 1,000. */
  ELECTRICITY_YEAR(Topic.YEAR),

  /** Cost of salt: salt × price of a pound. */
  SALT_COST(Topic.MONEY),

  /** Cost of water: gallons ÷ 1,000 × price of the steps of the rate it falls in. */
  WATER_COST(Topic.MONEY),

  /** Cost of sewer: gallons ÷ 1,000 × price of the steps of the rate it falls in. */
  SEWER_COST(Topic.MONEY),

  /** Cost of electricity: energy × price of a kWh. */
  ELECTRICITY_COST(Topic.MONEY),

  /** Cost of the first year: salt + water + sewer + electricity + service. */
  YEARLY_COST(Topic.MONEY),

  /**
   * Cost over the years compared: price + each yearly line × its present value factor (rising
   * prices, discounted).
   */
  LIFE_COST(Topic.MONEY),

  /**
   * Cost over the years compared, with parts that are bought again: price + each yearly line × its
   * present value factor (rising prices, discounted) + what is bought again, in today's money.
   */
  LIFE_COST_RENEWED(Topic.MONEY),

  /** Months between fillings of the brine tank: 12 × salt stored ÷ salt a year. */
  MONTHS_BETWEEN_FILLINGS(Topic.EFFECT),

  /** Chloride to the drain a year: salt × its share of chloride. */
  CHLORIDE_DISCHARGED(Topic.EFFECT),

  /** Sodium added to the water: 7.864 mg/L for each gpg of hardness removed. */
  SODIUM_ADDED(Topic.EFFECT),

  /** Potassium added to the water: 13.374 mg/L for each gpg of hardness removed. */
  POTASSIUM_ADDED(Topic.EFFECT),

  /** Salt efficiency: usable capacity ÷ salt given. */
  SALT_EFFICIENCY(Topic.EFFECT),

  /** Water efficiency: water for each regeneration × 1,000 ÷ usable capacity. */
  WATER_EFFICIENCY(Topic.EFFECT);

  private final Topic topic;

  StepKind(Topic topic) {
    this.topic = topic;
  }

  /** {@return the part of the work it belongs to} */
  public Topic topic() {
    return topic;
  }
}
