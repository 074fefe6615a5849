package io.github.brinewright.finding;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.softener.Regenerant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** General cautions that a proposal carries; the first two and one on sodium stand on every one. */
public enum Caution {
  /** Local rules and licensed practice come first. */
  LOCAL_RULES,
  /** A softener does not make unsafe water safe. */
  NOT_A_PURIFIER,
  /** Sodium in diets and infant formula, where the softened water is drunk. */
  SODIUM,
  /** That the cold water carries no added sodium, and the hot water does. */
  SODIUM_IN_HOT_WATER,
  /** The treatment comes before the softener. */
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
   * {@return the cautions that apply}
   *
   * @param home the home
   * @param verdict on the home
   * @param offered the salts of the candidates shown
   */
  public static List<Caution> applying(HomeLoad home, Verdict verdict, Set<Regenerant> offered) {
    return Arrays.stream(values())
        .filter(caution -> caution.applies(home, verdict, offered))
        .toList();
  }

  private boolean applies(HomeLoad home, Verdict verdict, Set<Regenerant> offered) {
    return switch (this) {
      case SODIUM -> drunk(home);
      case SODIUM_IN_HOT_WATER -> !drunk(home);
      case PRE_TREATMENT -> verdict.kind() == VerdictKind.TREAT_FIRST || verdict.isConditional();
      case POTASSIUM -> offered.contains(Regenerant.POTASSIUM_CHLORIDE);
      case WELL_TESTS -> home.site().water().source() == WaterSource.PRIVATE_WELL;
      default -> true;
    };
  }

  private static boolean drunk(HomeLoad home) {
    return home.site().household().softened() == SoftenedShare.WHOLE_HOUSE;
  }
}
