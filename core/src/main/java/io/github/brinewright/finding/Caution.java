package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.softener.Regenerant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** General cautions that a proposal carries; the first three stand on every one. */
public enum Caution {
  /** Local rules and licensed practice come first. */
  LOCAL_RULES,
  /** A softener does not make unsafe water safe. */
  NOT_A_PURIFIER,
  /** Sodium, and potassium, in diets and infant formula. */
  SODIUM,
  /** Treat other troubles of the water first. */
  PRE_TREATMENT,
  /** Discharge of brine. */
  DISCHARGE,
  /** Lead and copper in old plumbing. */
  OLD_PLUMBING,
  /** Plants and aquaria. */
  PLANTS,
  /** The electrical outlet. */
  OUTLET,
  /** The right to cancel a sale made at home. */
  RIGHT_TO_CANCEL,
  /** Potassium chloride and kidney disease. */
  POTASSIUM,
  /** Wells are tested every year. */
  WELL_TESTS;

  /**
   * The cautions that apply.
   *
   * @param home the home
   * @param findings of the home
   * @param offered the salts of the candidates shown
   */
  public static List<Caution> applying(
      HomeLoad home, List<Finding> findings, Set<Regenerant> offered) {
    return Arrays.stream(values())
        .filter(caution -> caution.applies(home, findings, offered))
        .toList();
  }

  private boolean applies(HomeLoad home, List<Finding> findings, Set<Regenerant> offered) {
    return switch (this) {
      case PRE_TREATMENT -> findings.stream().anyMatch(f -> f.severity() == Severity.CAUTION);
      case POTASSIUM -> offered.contains(Regenerant.POTASSIUM_CHLORIDE);
      case WELL_TESTS -> home.site().water().source() == WaterSource.PRIVATE_WELL;
      default -> true;
    };
  }
}
