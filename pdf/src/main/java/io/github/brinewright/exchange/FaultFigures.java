package io.github.brinewright.exchange;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.FaultKind;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** The figures of a fault under names that carry their units, in the order of its kind. */
final class FaultFigures {
  private static final String RUN_OUT = "runOutDaysPerYear";
  private static final String RUN_OUT_WATER = "runOutGalPerYear";
  private static final String UNUSED = "unusedCapacityShare";
  private static final String SALT_SAVED = "saltSavedLbPerYear";
  private static final String CYCLE = "hardWaterDuringRegenerationGalPerYear";
  private static final String CYCLE_AT_NIGHT = CYCLE + "AtUsualHour";
  private static final Set<String> CONSEQUENCES =
      Set.of(RUN_OUT, RUN_OUT_WATER, UNUSED, SALT_SAVED, CYCLE, CYCLE_AT_NIGHT);

  private static final String COMPENSATED = "compensatedHardnessGpg";
  private static final String HARDNESS_SET = "setHardnessGpg";
  private static final String USABLE = "usableCapacityGrains";
  private static final String SALT = "saltPerRegenerationLb";
  private static final String RIGHT_SALT = "rightSaltPerRegenerationLb";
  private static final String DOSAGE = "saltDosageLbPerFt3";

  private FaultFigures() {}

  /** What it is about: as set, as needed. */
  static Map<String, Object> about(Fault fault) {
    return all(fault, name -> !CONSEQUENCES.contains(name));
  }

  /** What comes of it in a year. */
  static Map<String, Object> consequence(Fault fault) {
    return all(fault, CONSEQUENCES::contains);
  }

  private static Map<String, Object> all(Fault fault, Predicate<String> wanted) {
    List<String> names = names(fault.kind());
    List<Figure> figures = fault.figures();
    if (names.size() != figures.size()) {
      throw new IllegalStateException(fault + " does not have the figures " + names);
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      if (wanted.test(names.get(i))) {
        fields.put(names.get(i), number(figures.get(i)));
      }
    }
    return fields;
  }

  private static List<String> names(FaultKind kind) {
    return switch (kind) {
      case BED_TOO_SMALL -> List.of("resinFt3", "dailyLoadGrains", USABLE);
      case RATING_AS_CAPACITY ->
          List.of("reckonedCapacityGrains", USABLE, RUN_OUT, RUN_OUT_WATER, SALT_SAVED);
      case HARDNESS_WITHOUT_IRON, HARDNESS_SET_TOO_LOW ->
          List.of(HARDNESS_SET, COMPENSATED, RUN_OUT, RUN_OUT_WATER);
      case HARDNESS_SET_TOO_HIGH -> List.of(HARDNESS_SET, COMPENSATED, UNUSED);
      case INTERVAL_TOO_LONG -> List.of("setDays", "lastingDays", RUN_OUT, RUN_OUT_WATER);
      case VOLUME_TOO_LARGE -> List.of("startsAfterGal", "bedHoldsGal", RUN_OUT, RUN_OUT_WATER);
      case RESERVE_TWICE -> List.of("setVolumeGal", "reserveGal", "bedHoldsGal", UNUSED);
      case INTERVAL_TOO_SHORT -> List.of("daysBetweenRegenerations", UNUSED, SALT_SAVED);
      case REFILL_TOO_SMALL -> List.of(SALT, RIGHT_SALT, RUN_OUT, RUN_OUT_WATER);
      case REFILL_TOO_LARGE -> List.of(SALT, RIGHT_SALT, SALT_SAVED);
      case DOSAGE_TOO_RICH -> List.of(DOSAGE, "rightSaltDosageLbPerFt3", SALT_SAVED);
      case DOSAGE_TOO_LEAN -> List.of(DOSAGE, "leastSaltDosageLbPerFt3");
      case HOUR_IN_USE -> List.of("hour", CYCLE, CYCLE_AT_NIGHT);
      case SALT_BOUGHT_ABOVE, SALT_BOUGHT_BELOW ->
          List.of("saltBoughtLbPerYear", "saltComputedLbPerYear");
      case NOT_SOFT_BEHIND -> List.of("hardnessAfterGpg");
    };
  }

  private static BigDecimal number(Figure figure) {
    if (figure instanceof Figure.Physical physical) {
      return Numbers.of(number(physical.value()));
    } else if (figure instanceof Figure.Days days) {
      return Numbers.of(days.days());
    } else if (figure instanceof Figure.Share share) {
      return Numbers.of(share.fraction());
    } else if (figure instanceof Figure.Bed bed) {
      return Numbers.of(bed.value().cubicFeet());
    } else if (figure instanceof Figure.Clock clock) {
      return Numbers.of(clock.value().getHour());
    }
    throw new IllegalStateException("a fault has " + figure);
  }

  private static double number(Quantity<?> value) {
    if (value instanceof Volume volume) {
      return volume.gallons();
    } else if (value instanceof Mass mass) {
      return mass.pounds();
    } else if (value instanceof Hardness hardness) {
      return hardness.grainsPerGallon();
    } else if (value instanceof HardnessAmount amount) {
      return amount.grains();
    } else if (value instanceof SaltDosage dosage) {
      return dosage.poundsPerCubicFoot();
    }
    throw new IllegalStateException("a fault has " + value);
  }
}
