package io.github.brinewright.job;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.Customer;
import io.github.brinewright.home.FoulingAllowances;
import io.github.brinewright.home.Household;
import io.github.brinewright.home.Place;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** What a row of sites.csv says, column by column, until the home can be built from it. */
final class SiteDraft {
  String id = "";
  String customer = "";
  String customerLatin = "";
  String street = "";
  String town = "";
  String phone = "";
  String email = "";
  String quoteNumber = "";
  int revision = 1;
  String rep = "";
  String notes = "";
  int people = 1;
  int guests;
  int guestDays;
  int billDays;
  String tariffId = "";
  @Nullable Volume billed;
  @Nullable Locale language;
  @Nullable Hardness hardness;
  @Nullable Pressure pressure;
  @Nullable FlowRate flow;
  @Nullable Hardness target;
  @Nullable Hardness treatedHardness;
  @Nullable Pressure flowingPressure;
  @Nullable Temperature brineTankTemperature;
  @Nullable Place place;
  boolean softerWanted;
  @Nullable FoulingAllowance iron;
  @Nullable FoulingAllowance manganese;
  final PresentDraft present = new PresentDraft();

  private final List<Consumer<WaterAnalysis.Builder>> water = new ArrayList<>();
  private final List<Consumer<Household.Builder>> household = new ArrayList<>();
  private final List<UnaryOperator<TreatedWater>> treated = new ArrayList<>();

  /** Says something of the water; it is asked once the hardness is known. */
  void water(Consumer<WaterAnalysis.Builder> setting) {
    water.add(setting);
  }

  /** Says something of the household; it is asked once the number of people is known. */
  void household(Consumer<Household.Builder> setting) {
    household.add(setting);
  }

  /** Says something of the treated water; it is asked once its hardness is known. */
  void treated(UnaryOperator<TreatedWater> setting) {
    treated.add(setting);
  }

  /** Whether anything is said of the treated water besides its hardness. */
  boolean saysTreated() {
    return !treated.isEmpty();
  }

  /** Hardness of the water that is softened; null when it is not known. */
  @Nullable Hardness softenedHardness() {
    return treatedHardness == null ? hardness : treatedHardness;
  }

  /** The home, at the dealer's place where it names none. */
  Site build(Place dealers) {
    Site.Builder site =
        Site.of(id, builtWater(), builtHousehold())
            .contact(contact())
            .supply(builtSupply())
            .allowances(
                new FoulingAllowances(
                    Objects.requireNonNull(iron), Objects.requireNonNull(manganese)))
            .target(Objects.requireNonNull(target))
            .place(place == null ? dealers : place)
            .brineTankTemperature(Objects.requireNonNull(brineTankTemperature))
            .softerWanted(softerWanted);
    if (treatedHardness != null) {
      site.treated(builtTreated(treatedHardness));
    }
    if (present.found) {
      site.present(present.build());
    }
    return site.build();
  }

  private Customer contact() {
    return new Customer(customer.isEmpty() ? id : customer, street, town)
        .reachedBy(phone, email)
        .printedAs(customerLatin);
  }

  /** What the quote is known by. */
  QuoteRecord record() {
    return new QuoteRecord(quoteNumber, revision, rep, notes);
  }

  private TreatedWater builtTreated(Hardness after) {
    TreatedWater water = TreatedWater.ofHardness(after);
    for (UnaryOperator<TreatedWater> setting : treated) {
      water = setting.apply(water);
    }
    return water;
  }

  private Supply builtSupply() {
    Supply supply = Supply.NOT_MEASURED;
    supply = pressure == null ? supply : supply.withPressure(pressure);
    supply = flowingPressure == null ? supply : supply.withFlowingPressure(flowingPressure);
    return flow == null ? supply : supply.withFlow(flow);
  }

  private WaterAnalysis builtWater() {
    WaterAnalysis.Builder builder = WaterAnalysis.ofHardness(Objects.requireNonNull(hardness));
    water.forEach(setting -> setting.accept(builder));
    return builder.build();
  }

  private Household builtHousehold() {
    Household.Builder builder = Household.of(people).guests(guests, guestDays);
    household.forEach(setting -> setting.accept(builder));
    if (billed != null) {
      builder.bill(new Bill(billed, billDays));
    }
    return builder.build();
  }
}
