package io.github.brinewright.finding;

import static io.github.brinewright.finding.TriedHome.city;
import static io.github.brinewright.finding.TriedHome.gpg;
import static io.github.brinewright.finding.TriedHome.well;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.Household;
import io.github.brinewright.home.SoftenedShare;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.softener.Regenerant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Cautions follow from the home, its verdict and what is offered. */
class CautionTest {
  private static List<Caution> of(TriedHome home) {
    return Caution.applying(home.home(), home.verdict(), Set.of(Regenerant.SODIUM_CHLORIDE));
  }

  @Test
  void theFirstTwoAndOneOnSodiumStandOnEveryProposal() {
    assertThat(of(city(18)))
        .startsWith(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.SODIUM)
        .doesNotContain(Caution.SODIUM_IN_HOT_WATER);
  }

  @Test
  void aHomeThatSoftensHotWaterAloneIsToldThatColdWaterHasNoAddedSodium() {
    Household.Builder hot = Household.of(2).softened(SoftenedShare.HOT_WATER);

    assertThat(of(city(18).people(hot)))
        .contains(Caution.SODIUM_IN_HOT_WATER)
        .doesNotContain(Caution.SODIUM);
  }

  @Test
  void treatmentIsSpokenOfWhereTheVerdictAsksForItOrRestsOnIt() {
    assertThat(of(well(18))).doesNotContain(Caution.PRE_TREATMENT);
    assertThat(of(city(18).water(w -> w.ph(8.9)))).doesNotContain(Caution.PRE_TREATMENT);
    assertThat(of(well(18).water(w -> w.ph(6)))).contains(Caution.PRE_TREATMENT);
    assertThat(of(well(18).site(site -> site.treated(TreatedWater.ofHardness(gpg(18))))))
        .contains(Caution.PRE_TREATMENT);
  }

  @Test
  void aWellIsTestedEveryYear() {
    assertThat(of(well(18))).contains(Caution.WELL_TESTS);
    assertThat(of(city(18))).doesNotContain(Caution.WELL_TESTS);
  }
}
