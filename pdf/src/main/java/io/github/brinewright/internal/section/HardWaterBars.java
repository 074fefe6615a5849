package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.trace.Figure;
import java.util.List;

/**
 * The hard water of a year without a softener, and with the one proposed: two bars on one scale.
 *
 * @param candidate proposed
 */
record HardWaterBars(Candidate candidate) {
  Chart chart() {
    HomeLoad home = candidate.design().home();
    Volume now = home.softenedYear();
    HardWater with = candidate.hardWater().orElseThrow();
    Phrase left = HardWaterText.of(with, home);
    return new Chart.Levels(
        Phrase.text("opening.hard.alt", figure(now), left),
        List.of(
            new Chart.Level("now", Phrase.text("opening.hard.now"), 1, figure(now), false),
            new Chart.Level(
                "with",
                Phrase.text("opening.hard.with"),
                Math.min(1, with.total().ratioTo(now)),
                left,
                true)));
  }

  private static Phrase figure(Volume volume) {
    return Phrase.of(Figure.of(volume, 0));
  }
}
