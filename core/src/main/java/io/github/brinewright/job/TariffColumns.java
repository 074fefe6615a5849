package io.github.brinewright.job;

import io.github.brinewright.cost.BlockRate;
import io.github.brinewright.cost.Escalation;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/** The columns of tariffs.csv: one row for each tariff; rates in steps are lists. */
public final class TariffColumns {
  private static final double HIGHEST_PRICE = 1_000;
  private static final Bounds<Volume> STEPS =
      Bounds.of(Volume.ofGallons(1), Volume.ofGallons(1_000_000));

  /** What is taken for empty cells; the numbers are the same in every currency. */
  private static final Tariff USUAL = Tariff.placeholder(CurrencyUnit.USD);

  /** All of them. */
  static final Columns<TariffDraft, Tariff> COLUMNS =
      new Columns<TariffDraft, Tariff>("tariffs.csv")
          .always(Typed.shortName("tariff_id").needed(), (draft, id) -> draft.id = id, Tariff::id)
          .always(
              prices("water_price_per_1000_gal").needed(),
              (draft, prices) -> draft.waterPrices = prices,
              tariff -> prices(tariff.water()))
          .always(Typed.text("name"), (draft, name) -> draft.name = name, Tariff::name)
          .add(
              steps("water_steps_gal_per_month"),
              (draft, steps) -> draft.waterSteps = steps,
              tariff -> steps(tariff.water()))
          .always(
              prices("sewer_price_per_1000_gal").usual(List.of(BigDecimal.ZERO)),
              (draft, prices) -> draft.sewerPrices = prices,
              tariff -> prices(tariff.sewer()))
          .add(
              steps("sewer_steps_gal_per_month"),
              (draft, steps) -> draft.sewerSteps = steps,
              tariff -> steps(tariff.sewer()))
          .always(
              price("salt_price_per_lb").usual(USUAL.salt().getAmount()),
              (draft, price) -> draft.salt = price,
              amount(Tariff::salt))
          .always(
              price("potassium_price_per_lb").usual(USUAL.potassium().getAmount()),
              (draft, price) -> draft.potassium = price,
              amount(Tariff::potassium))
          .always(
              price("electricity_price_per_kwh").usual(USUAL.perKilowattHour().getAmount()),
              (draft, price) -> draft.electricity = price,
              amount(Tariff::perKilowattHour))
          .always(
              Typed.percent("salt_rise_percent", -5, 20).usual(Escalation.USUAL.salt()),
              (draft, rise) -> draft.saltRise = rise,
              tariff -> tariff.escalation().salt())
          .always(
              Typed.percent("water_rise_percent", -5, 20).usual(Escalation.USUAL.water()),
              (draft, rise) -> draft.waterRise = rise,
              tariff -> tariff.escalation().water());

  private TariffColumns() {}

  /** {@return all columns, those that must be there first} */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Typed<List<BigDecimal>> prices(String name) {
    return Typed.amounts(name, 0, HIGHEST_PRICE);
  }

  private static Typed<BigDecimal> price(String name) {
    return Typed.amount(name, 0, HIGHEST_PRICE);
  }

  private static Typed<List<Volume>> steps(String name) {
    return Typed.numbers(name, STEPS, Volume::ofGallons, Volume::gallons).unit("gal");
  }

  private static List<BigDecimal> prices(BlockRate rate) {
    return rate.blocks().stream().map(block -> block.perThousandGallons().getAmount()).toList();
  }

  /** The uses at which the next price begins. */
  private static Optional<List<Volume>> steps(BlockRate rate) {
    List<BlockRate.Block> stepped = rate.blocks().subList(0, rate.blocks().size() - 1);
    return Optional.of(stepped.stream().map(BlockRate.Block::upTo).toList())
        .filter(steps -> !steps.isEmpty());
  }

  private static Function<Tariff, BigDecimal> amount(Function<Tariff, BigMoney> get) {
    return tariff -> get.apply(tariff).getAmount();
  }
}
