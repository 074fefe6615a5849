package io.github.brinewright.home;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Softener;
import java.time.Duration;
import java.util.Optional;

/** The salt of a regeneration as the softener in the house is set; one of three ways to say it. */
public sealed interface PresentSalt {
  /** Salt of a regeneration that may be found: 0.2 to 400 lb. */
  Bounds<Mass> EACH_TIME = Bounds.of(Mass.ofPounds(0.2), Mass.ofPounds(400));

  /** Minutes of refill that may be found: 0.1 to 120. */
  Bounds<Duration> REFILL = Bounds.of(Minutes.toDuration(0.1), Minutes.toDuration(120));

  /**
   * So much salt, as sodium chloride, for each volume of resin.
   *
   * @param dosage 1 to 30 lb/ft3
   */
  record Dosed(SaltDosage dosage) implements PresentSalt {
    /**
     * @param dosage 1 to 30 lb/ft3
     * @throws IllegalArgumentException outside that range
     */
    public Dosed {
      CapacityCurve.DOSAGE.require("salt dosage found", dosage);
    }
  }

  /**
   * So much salt each time.
   *
   * @param salt of the kind that is used; 0.2 to 400 lb
   */
  record EachTime(Mass salt) implements PresentSalt {
    /**
     * @param salt of the kind that is used
     * @throws IllegalArgumentException outside 0.2 to 400 lb
     */
    public EachTime {
      EACH_TIME.require("salt of a regeneration", salt);
    }
  }

  /**
   * So many minutes of brine refill.
   *
   * @param time of the refill; 0.1 to 120 minutes
   * @param flow of the refill, 0.05 to 5 gpm; empty when not known
   */
  record Refill(Duration time, Optional<FlowRate> flow) implements PresentSalt {
    /**
     * @param time of the refill
     * @param flow of the refill
     * @throws IllegalArgumentException outside the ranges above
     */
    public Refill {
      REFILL.require("refill minutes found", time);
      flow.ifPresent(rate -> Softener.REFILL_RATE.require("refill flow found", rate));
    }
  }
}
