package io.github.brinewright.job;

import io.github.brinewright.cost.Item;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.treatment.Neutralizer;
import io.github.brinewright.treatment.NeutralizerMineral;
import io.github.brinewright.treatment.Treatment;
import io.github.brinewright.treatment.TreatmentPosition;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The columns of items.csv that say what a treatment does to the water. */
final class TreatmentColumns {
  /** The one that any other needs. */
  static final String POSITION = "treatment_position";

  /** Their names. */
  static final List<String> NAMES = add(new Columns<>("")).names();

  private TreatmentColumns() {}

  /** Adds them to those of an item. */
  static Columns<ItemDraft, Item> add(Columns<ItemDraft, Item> columns) {
    return own(neutralizer(limits(effect(columns))));
  }

  private static Columns<ItemDraft, Item> effect(Columns<ItemDraft, Item> columns) {
    columns.add(
        Typed.choice(POSITION, TreatmentPosition.class),
        (draft, position) -> draft.treatment.position = position,
        of(treatment -> Optional.of(treatment.position())));
    taken(columns, "iron_taken_percent", Substance.IRON);
    taken(columns, "manganese_taken_percent", Substance.MANGANESE);
    taken(columns, "hydrogen_sulfide_taken_percent", Substance.HYDROGEN_SULFIDE);
    taken(columns, "free_chlorine_taken_percent", Substance.FREE_CHLORINE);
    taken(columns, "chloramine_taken_percent", Substance.CHLORAMINE);
    return columns.add(
        percent("turbidity_taken_percent"),
        (draft, share) -> draft.treatment.set(treatment -> treatment.takesTurbidity(share)),
        of(treatment -> boxed(treatment.takesTurbidity())));
  }

  private static Columns<ItemDraft, Item> limits(Columns<ItemDraft, Item> columns) {
    most(columns, "iron_most_mg_per_l", Substance.IRON);
    most(columns, "manganese_most_mg_per_l", Substance.MANGANESE);
    most(columns, "hydrogen_sulfide_most_mg_per_l", Substance.HYDROGEN_SULFIDE);
    return columns.add(
        Typed.number("least_ph", WaterAnalysis.PH),
        (draft, ph) -> draft.treatment.set(treatment -> treatment.leastPh(ph)),
        of(treatment -> boxed(treatment.leastPh())));
  }

  private static Columns<ItemDraft, Item> neutralizer(Columns<ItemDraft, Item> columns) {
    return columns
        .add(
            Typed.choice("neutralizer_mineral", NeutralizerMineral.class),
            (draft, mineral) -> draft.treatment.mineral = mineral,
            of(treatment -> treatment.neutralizer().map(Neutralizer::mineral)))
        .add(
            Typed.number("ph_after", Neutralizer.PH_AFTER),
            (draft, ph) -> draft.treatment.phAfter = ph,
            of(treatment -> treatment.neutralizer().map(Neutralizer::phAfter)));
  }

  private static Columns<ItemDraft, Item> own(Columns<ItemDraft, Item> columns) {
    return columns
        .add(
            Measures.gpm("treated_flow_gpm", Treatment.FLOW),
            (draft, flow) -> draft.treatment.set(treatment -> treatment.serviceFlow(flow)),
            of(Treatment::serviceFlow))
        .add(
            Typed.number("pressure_loss_psi", Treatment.LOSS, Pressure::ofPsi, Pressure::psi)
                .unit("psi"),
            (draft, loss) -> draft.treatment.set(treatment -> treatment.pressureLoss(loss)),
            of(treatment -> Optional.of(treatment.pressureLoss()).filter(Pressure::isPositive)))
        .add(
            Measures.gallons("backwash_gal", Treatment.BACKWASH),
            (draft, volume) -> draft.treatment.backwash = volume,
            of(Treatment::backwash))
        .add(
            Typed.whole("backwash_every_days", Treatment.BACKWASH_DAYS).unit("days"),
            (draft, days) -> draft.treatment.backwashDays = days,
            of(treatment -> treatment.backwash().map(each -> treatment.backwashEveryDays())));
  }

  private static void taken(Columns<ItemDraft, Item> columns, String name, Substance substance) {
    columns.add(
        percent(name),
        (draft, share) -> draft.treatment.set(treatment -> treatment.takes(substance, share)),
        of(treatment -> boxed(treatment.takes(substance))));
  }

  private static void most(Columns<ItemDraft, Item> columns, String name, Substance substance) {
    columns.add(
        Typed.number(
                name,
                Substance.FOUND,
                Concentration::ofMilligramsPerLitre,
                Concentration::milligramsPerLitre)
            .unit("mg/L"),
        (draft, amount) -> draft.treatment.set(treatment -> treatment.most(substance, amount)),
        of(treatment -> treatment.most(substance)));
  }

  private static Typed<Double> percent(String name) {
    return Typed.percent(name, 0, 100);
  }

  private static Optional<Double> boxed(OptionalDouble value) {
    return value.stream().boxed().findFirst();
  }

  private static <T> Function<Item, Optional<T>> of(Function<Treatment, Optional<T>> get) {
    return item -> item.treatment().flatMap(get);
  }
}
