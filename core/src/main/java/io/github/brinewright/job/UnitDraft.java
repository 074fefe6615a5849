package io.github.brinewright.job;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What a row of units.csv says, column by column, until the unit can be built from it. */
final class UnitDraft {
  String id = "";
  String resinId = "";
  List<SaltDosage> dosages = List.of();
  Set<Control> controls = Set.of();
  Arrangement arrangement = Arrangement.SINGLE;
  @Nullable Integer tanks;
  @Nullable Volume resinVolume;
  @Nullable HardnessAmount rated;
  @Nullable FlowRate refillRate;
  @Nullable Duration refillStep;
  @Nullable Length vesselDiameter;
  @Nullable Length vesselHeight;
  @Nullable Length tankDiameter;
  @Nullable Length tankHeight;
  @Nullable FlowRate serviceFlow;
  @Nullable FlowRate peakFlow;
  BigDecimal price = BigDecimal.ZERO;
  BigDecimal installation = BigDecimal.ZERO;
  BigDecimal service = BigDecimal.ZERO;
  BigDecimal meterExtra = BigDecimal.ZERO;

  private final List<Consumer<Softener.Builder>> settings = new ArrayList<>();

  /** Says something of the unit; it is asked once resin and volume are known. */
  void unit(Consumer<Softener.Builder> setting) {
    settings.add(setting);
  }

  /** Tanks as stated, or the fewest of the arrangement. */
  int tanks() {
    return tanks == null ? arrangement.tanks().low() : tanks;
  }

  Offer build(Resin resin, CurrencyUnit currency) {
    Softener.Builder unit =
        bed()
            .resin(resin)
            .arrangement(arrangement, tanks())
            .refill(Objects.requireNonNull(refillRate), Objects.requireNonNull(refillStep));
    settings.forEach(setting -> setting.accept(unit));
    if (!controls.isEmpty()) {
      unit.controls(controls);
    }
    if (vesselDiameter != null && vesselHeight != null) {
      unit.vessel(new Vessel(vesselDiameter, vesselHeight));
    }
    if (tankDiameter != null && tankHeight != null) {
      unit.brineTank(new BrineTank(tankDiameter, tankHeight));
    }
    if (serviceFlow != null && peakFlow != null) {
      unit.serviceFlow(serviceFlow, peakFlow);
    }
    return Offer.of(unit.build(), money(price, currency))
        .installation(money(installation, currency))
        .yearlyService(money(service, currency))
        .meterExtra(money(meterExtra, currency))
        .build();
  }

  private Softener.Builder bed() {
    if (rated == null) {
      return Softener.withResin(id, Objects.requireNonNull(resinVolume)).dosages(dosages);
    }
    Softener.Builder unit = Softener.withRating(id, rated);
    return resinVolume == null ? unit : unit.resinVolume(resinVolume);
  }

  private static Money money(BigDecimal amount, CurrencyUnit currency) {
    return Money.of(currency, amount, RoundingMode.HALF_EVEN);
  }
}
