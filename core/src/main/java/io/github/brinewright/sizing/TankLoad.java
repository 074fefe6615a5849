package io.github.brinewright.sizing;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Explained;
import io.github.brinewright.trace.Sources;
import io.github.brinewright.trace.Step;
import io.github.brinewright.trace.StepKind;
import io.github.brinewright.trace.Worked;
import java.util.List;

/** What each tank of a softener has to serve: all of it, or a share where tanks run in parallel. */
final class TankLoad implements Explained {
  private final HomeLoad home;
  private final int sharing;
  private final Worked<Volume> design;
  private final Worked<Volume> expected;

  TankLoad(HomeLoad home, Softener softener) {
    this.home = home;
    sharing = sharing(softener);
    design = each(StepKind.DESIGN_OF_EACH_TANK, home.softenedDesign());
    expected = each(StepKind.EXPECTED_OF_EACH_TANK, home.softenedExpected());
  }

  /** Tanks that share the flow. */
  static int sharing(Softener softener) {
    return softener.arrangement() == Arrangement.PARALLEL ? softener.tanks() : 1;
  }

  private Worked<Volume> each(StepKind kind, Volume all) {
    return Worked.of(kind, Sources.DEFINITION, all, sharing, (use, tanks) -> use.dividedBy(tanks));
  }

  Volume design() {
    return design.value();
  }

  Volume expected() {
    return expected.value();
  }

  HardnessAmount dailyLoad() {
    return home.compensatedHardness().in(design());
  }

  HardnessAmount expectedLoad() {
    return home.compensatedHardness().in(expected());
  }

  @Override
  public List<Step> steps() {
    return sharing == 1 ? List.of() : List.of(design.step(), expected.step());
  }
}
