package io.github.brinewright.job;

import io.github.brinewright.cost.Offer;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.softener.Arrangement;
import io.github.brinewright.softener.BrineTank;
import io.github.brinewright.softener.CapacityCurve;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.CyclePlan;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.softener.RatedCapacityBasis;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Softener;
import io.github.brinewright.softener.Vessel;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.joda.money.Money;

/** The columns of units.csv: one row for each unit that the dealer sells. */
public final class UnitColumns {
  /** All of them. */
  static final Columns<UnitDraft, Offer> COLUMNS =
      prices(drain(flows(valve(bed(new Columns<UnitDraft, Offer>("units.csv"))))));

  private UnitColumns() {}

  /** {@return all columns, those that must be there first} */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Columns<UnitDraft, Offer> bed(Columns<UnitDraft, Offer> columns) {
    return columns
        .always(Typed.shortName("unit_id").needed(), (draft, id) -> draft.id = id, of(Softener::id))
        .always(
            Measures.price("price").needed(),
            (draft, price) -> draft.price = price,
            amount(Offer::equipment))
        .always(
            Typed.text("name"),
            (draft, name) -> draft.unit(unit -> unit.name(name)),
            of(Softener::name))
        .always(
            Typed.reference("resin_id").usual(ShippedResins.STANDARD_GEL.id()),
            (draft, id) -> draft.resinId = id,
            of(softener -> softener.resin().id()))
        .add(
            Measures.cubicFeet("resin_ft3", Softener.RESIN_VOLUME),
            (draft, volume) -> draft.resinVolume = volume,
            of(s -> Optional.of(s.resinVolume()).filter(known -> !s.resinVolumeAssumed())))
        .add(
            Typed.numbers(
                    "dosages_lb_per_ft3",
                    CapacityCurve.DOSAGE,
                    SaltDosage::ofPoundsPerCubicFoot,
                    SaltDosage::poundsPerCubicFoot)
                .unit("lb/ft³"),
            (draft, dosages) -> draft.dosages = dosages,
            of(
                softener ->
                    Optional.of(curves(softener).map(DosageCurveBasis::dosage).toList())
                        .filter(all -> !all.isEmpty())))
        .add(
            Typed.number("design_factor", DosageCurveBasis.DESIGN_FACTOR)
                .usual(DosageCurveBasis.USUAL_DESIGN_FACTOR),
            (draft, factor) -> draft.unit(unit -> unit.designFactor(factor)),
            of(softener -> curves(softener).map(DosageCurveBasis::designFactor).findFirst()))
        .add(
            Measures.grains("rated_grains", RatedCapacityBasis.RATING),
            (draft, rated) -> draft.rated = rated,
            of(Softener::rated));
  }

  private static Stream<DosageCurveBasis> curves(Softener softener) {
    return softener.bases().stream()
        .filter(DosageCurveBasis.class::isInstance)
        .map(DosageCurveBasis.class::cast);
  }

  private static Columns<UnitDraft, Offer> valve(Columns<UnitDraft, Offer> columns) {
    return columns
        .always(
            Typed.choices("controls", Control.class),
            (draft, controls) -> draft.controls = controls,
            of(Softener::controls))
        .always(
            Typed.choice("arrangement", Arrangement.class).usual(Arrangement.SINGLE),
            (draft, arrangement) -> draft.arrangement = arrangement,
            of(Softener::arrangement))
        .always(
            Typed.whole("tanks", 1, 4), (draft, tanks) -> draft.tanks = tanks, of(Softener::tanks))
        .add(
            Typed.number(
                    "certified_grains_per_lb",
                    Softener.CERTIFIED_EFFICIENCY,
                    SaltEfficiency::ofGrainsPerPound,
                    SaltEfficiency::grainsPerPound)
                .unit("grains/lb"),
            (draft, certified) -> draft.unit(unit -> unit.certifiedEfficiency(certified)),
            of(Softener::certifiedEfficiency))
        .add(
            Measures.inches("vessel_diameter_in", Vessel.SIDE),
            (draft, diameter) -> draft.vesselDiameter = diameter,
            of(softener -> ownVessel(softener).map(Vessel::diameter)))
        .add(
            Measures.inches("vessel_height_in", Vessel.SIDE),
            (draft, height) -> draft.vesselHeight = height,
            of(softener -> ownVessel(softener).map(Vessel::height)))
        .always(
            Measures.gpm("refill_gpm", Softener.REFILL_RATE)
                .usual(FlowRate.ofGallonsPerMinute(0.5)),
            (draft, rate) -> draft.refillRate = rate,
            of(Softener::refillRate))
        .always(
            Measures.minutes("refill_step_min", Softener.REFILL_STEP)
                .usual(Minutes.toDuration(0.1)),
            (draft, step) -> draft.refillStep = step,
            of(Softener::refillStep));
  }

  private static Optional<Vessel> ownVessel(Softener softener) {
    return Optional.of(softener.vessel())
        .filter(vessel -> !vessel.equals(Vessel.usualFor(softener.resinVolume())));
  }

  private static Columns<UnitDraft, Offer> flows(Columns<UnitDraft, Offer> columns) {
    return columns
        .add(
            Measures.gpm("service_flow_gpm", Softener.SERVICE_FLOW),
            (draft, flow) -> draft.serviceFlow = flow,
            of(softener -> ownFlow(softener, Softener::serviceFlow)))
        .add(
            Measures.gpm("peak_flow_gpm", Softener.SERVICE_FLOW),
            (draft, flow) -> draft.peakFlow = flow,
            of(softener -> ownFlow(softener, Softener::peakServiceFlow)))
        .always(
            Typed.number("valve_loss_psi", Softener.VALVE_LOSS, Pressure::ofPsi, Pressure::psi)
                .unit("psi")
                .usual(Pressure.ofPsi(0)),
            (draft, loss) -> draft.unit(unit -> unit.valveLoss(loss)),
            of(Softener::valveLoss))
        .always(
            Typed.number("standby_w", Softener.STANDBY, Power::ofWatts, Power::watts)
                .unit("W")
                .usual(Power.ofWatts(3)),
            (draft, power) -> draft.unit(unit -> unit.standby(power)),
            of(Softener::standby));
  }

  /** A flow of a unit whose flows are not those of its volume. */
  private static Optional<FlowRate> ownFlow(Softener softener, Function<Softener, FlowRate> which) {
    Softener usual = ofUsualFlow(softener);
    boolean same =
        usual.serviceFlow().equals(softener.serviceFlow())
            && usual.peakServiceFlow().equals(softener.peakServiceFlow());
    return same ? Optional.empty() : Optional.of(which.apply(softener));
  }

  private static Softener ofUsualFlow(Softener softener) {
    if (softener.rated().isEmpty()) {
      return Softener.withResin("usual", softener.resinVolume()).build();
    }
    Softener.Builder usual = Softener.withRating("usual", softener.rated().get());
    return (softener.resinVolumeAssumed() ? usual : usual.resinVolume(softener.resinVolume()))
        .build();
  }

  private static Columns<UnitDraft, Offer> drain(Columns<UnitDraft, Offer> columns) {
    return columns
        .add(
            Measures.pounds("salt_storage_lb", Softener.SALT_STORAGE),
            (draft, salt) -> draft.unit(unit -> unit.saltStorage(salt)),
            of(UnitColumns::ownStorage))
        .add(
            Typed.numbers(
                    "drain_flows_gpm",
                    Softener.DRAIN_FLOW,
                    FlowRate::ofGallonsPerMinute,
                    FlowRate::gallonsPerMinute)
                .unit("gpm"),
            (draft, flows) -> draft.unit(unit -> unit.drainFlows(flows)),
            of(softener -> Optional.of(softener.drainFlows()).filter(all -> !all.isEmpty())))
        .add(
            Measures.inches("brine_tank_diameter_in", BrineTank.SIDE),
            (draft, diameter) -> draft.tankDiameter = diameter,
            of(softener -> softener.brineTank().map(BrineTank::diameter)))
        .add(
            Measures.inches("brine_tank_height_in", BrineTank.SIDE),
            (draft, height) -> draft.tankHeight = height,
            of(softener -> softener.brineTank().map(BrineTank::height)))
        .add(
            Typed.choice("cycle_plan", CyclePlan.class),
            (draft, plan) -> draft.unit(unit -> unit.plan(plan)),
            of(Softener::plan))
        .always(
            Typed.choice("regenerant", Regenerant.class).usual(Regenerant.SODIUM_CHLORIDE),
            (draft, regenerant) -> draft.unit(unit -> unit.regenerant(regenerant)),
            of(Softener::regenerant));
  }

  private static Optional<Mass> ownStorage(Softener softener) {
    Optional<Mass> ofTank = softener.brineTank().map(BrineTank::storage);
    return softener.saltStorage().filter(salt -> !ofTank.equals(Optional.of(salt)));
  }

  private static Columns<UnitDraft, Offer> prices(Columns<UnitDraft, Offer> columns) {
    return columns
        .always(
            Measures.price("meter_extra_price").usual(BigDecimal.ZERO),
            (draft, price) -> draft.meterExtra = price,
            amount(Offer::meterExtra))
        .always(
            Measures.price("installation_price").usual(BigDecimal.ZERO),
            (draft, price) -> draft.installation = price,
            amount(Offer::installation))
        .always(
            Measures.price("service_price_per_year").usual(BigDecimal.ZERO),
            (draft, price) -> draft.service = price,
            amount(Offer::yearlyService));
  }

  private static <T> Function<Offer, T> of(Function<Softener, T> get) {
    return offer -> get.apply(offer.softener());
  }

  private static Function<Offer, BigDecimal> amount(Function<Offer, Money> get) {
    return offer -> get.apply(offer).getAmount();
  }
}
