package io.github.brinewright.internal.section;

import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.trace.Figure;
import java.util.Optional;

/**
 * A softener beside a door, to scale: how high it stands, and how wide.
 *
 * @param softener drawn
 */
record UnitDrawn(Softener softener) {
  Chart chart() {
    Optional<BrineTank> tank = softener.brineTank();
    Phrase high = figure(softener.vessel().height());
    Phrase wide = figure(width());
    Phrase said =
        tank.isPresent()
            ? Phrase.text("drawing.alt", high, wide)
            : Phrase.text("drawing.altNoTank", high, wide);
    Phrase below = Phrase.text(tank.isPresent() ? "drawing.width" : "drawing.widthNoTank", wide);
    return new Chart.UnitDrawing(
        said,
        softener.tanks(),
        softener.vessel(),
        tank.orElse(null),
        Phrase.text("drawing.height", high),
        below);
  }

  private static Phrase figure(Length length) {
    return Phrase.of(Figure.of(length, 0));
  }

  /** All side by side, without room between. */
  private Length width() {
    Length vessels = softener.vessel().diameter().times(softener.tanks());
    return softener.brineTank().map(tank -> vessels.plus(tank.diameter())).orElse(vessels);
  }
}
