package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.ReadUse;
import io.github.brinewright.trace.Figure;
import java.util.Optional;

/**
 * What readings, or the salt that is bought, showed of the use of a home, and how sure that is.
 *
 * @param home with a present softener
 */
record UseTold(HomeLoad home) {
  private static final double ONE_IN_TWENTY = 0.05;

  Optional<Phrase> sentence() {
    PresentSoftener present = home.site().present().orElseThrow();
    boolean read = !present.readings().isEmpty();
    if (home.use().expectedBasis() == UseBasis.READINGS) {
      boolean bought = present.saltBought().isPresent();
      return Optional.of(
          told(read ? "service.read" : bought ? "service.readSalt" : "service.readStated"));
    }
    return read ? leftOut() : Optional.empty();
  }

  private Phrase told(String key) {
    return Phrase.text(
        key,
        Phrase.of(Figure.roughly(home.use().expected())),
        Phrase.of(Figure.roughly(above(ONE_IN_TWENTY))),
        Phrase.of(Figure.roughly(above(1 - ONE_IN_TWENTY))));
  }

  private Volume above(double share) {
    return home.use().expected().times(home.use().likely().highMean(share));
  }

  /** Why readings are left out. */
  private Optional<Phrase> leftOut() {
    return switch (ReadUse.of(home.site()).outcome()) {
      case TOO_FEW_DAYS ->
          Optional.of(
              Phrase.text("service.readTooFew", Phrase.of(Figure.days(ReadUse.LEAST_DAYS, 0))));
      case COUNTER_STOOD_STILL -> Optional.of(Phrase.text("service.readStoodStill"));
      default -> Optional.empty();
    };
  }
}
