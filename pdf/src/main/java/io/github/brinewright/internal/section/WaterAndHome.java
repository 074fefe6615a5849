package io.github.brinewright.internal.section;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.demand.UseBasis;
import io.github.brinewright.finding.HomeRule;
import io.github.brinewright.finding.Rule;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.internal.chart.HardnessScale;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was found in the water, and what the home asks of a softener. */
public final class WaterAndHome {
  private static final Map<Substance, List<HomeRule>> SPOKEN_OF_BY =
      Map.of(
          Substance.IRON,
              List.of(HomeRule.IRON_ABOVE_BED, HomeRule.IRON_STAINS, HomeRule.IRON_NOT_TESTED),
          Substance.DISSOLVED_IRON, List.of(HomeRule.IRON_OXIDISED),
          Substance.MANGANESE, List.of(HomeRule.MANGANESE_STAINS, HomeRule.MANGANESE_NOT_TESTED),
          Substance.TOTAL_DISSOLVED_SOLIDS, List.of(HomeRule.SOLIDS_HIGH),
          Substance.FREE_CHLORINE, List.of(HomeRule.CHLORINE_HARMS_RESIN),
          Substance.HYDROGEN_SULFIDE, List.of(HomeRule.HYDROGEN_SULFIDE_PRESENT));

  /** Rules whose notes the table has rows for, or says by "not tested". */
  private static final Set<HomeRule> IN_OTHER_ROWS =
      Set.of(
          HomeRule.PH_NOT_TESTED,
          HomeRule.SOLIDS_NOT_TESTED,
          HomeRule.WATER_COLD,
          HomeRule.TEMPERATURE_NOT_MEASURED);

  private final Kit kit;
  private final HomeLoad home;
  private final WaterAnalysis water;
  private final Tag tag;

  /** The section of a proposal. */
  public WaterAndHome(Kit kit) {
    this.kit = kit;
    home = kit.comparison().home();
    water = home.site().water();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    HardnessClass hardnessClass = HardnessClass.of(water.hardness());
    String lead =
        kit.text(
            "water.lead",
            Figure.of(water.hardness()),
            Figure.of(kit.words().hardnessInOtherUnit(water.hardness())),
            Figure.of(hardnessClass));
    return Block.stack(
        List.of(
            kit.heading(tag, kit.text("water.heading")),
            kit.body(tag, lead + " " + origin()).after(8).keptWithNext(),
            scale(hardnessClass).after(14).keptWithNext(),
            waterTable().whole().after(12),
            notes().after(6),
            kit.subheading(tag, kit.text("home.heading")).after(18),
            homeTable().whole().after(6)));
  }

  private String origin() {
    String from =
        water.source() == WaterSource.PUBLIC_SUPPLY
            ? kit.text("water.sourcePublic")
            : kit.text("water.source", Figure.of(water.source()));
    return water
        .date()
        .map(day -> from + " " + kit.text("water.tested", Figure.of(kit.words().date(day))))
        .orElse(from);
  }

  private Block scale(HardnessClass hardnessClass) {
    List<Double> limits = HardnessClass.limits().stream().map(Hardness::grainsPerGallon).toList();
    double value = water.hardness().grainsPerGallon();
    double highest = Math.max(30, 10 * Math.ceil(value / 10));
    String mark = kit.words().figure(Figure.of(water.hardness()));
    HardnessScale artist =
        new HardnessScale(
            Arrays.stream(HardnessClass.values()).map(kit.words()::term).toList(),
            limits,
            hardnessClass.ordinal(),
            value,
            highest,
            mark,
            kit.accent());
    String alternative =
        kit.text(
            "water.scale.alt",
            Figure.of(Hardness.ofGrainsPerGallon(highest)),
            Figure.of(water.hardness()),
            Figure.of(hardnessClass));
    return kit.drawing(tag, alternative, artist);
  }

  private Block waterTable() {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(
        row(
            kit.text("water.hardness"),
            kit.words().figure(Figure.of(water.hardness())),
            kit.text("water.hardnessMeaning", Figure.of(home.compensatedHardness()))));
    for (Substance substance : Substance.values()) {
      rows.add(row(kit.words().term(substance), found(substance), meaning(substance)));
    }
    rows.add(
        row(
            kit.text("water.ph"),
            water.ph().isPresent()
                ? kit.words().number(water.ph().getAsDouble(), 1)
                : kit.text("water.notTested"),
            or(sentence(List.of(HomeRule.PH_OUTSIDE)), water.ph().isPresent(), "water.phFine")));
    rows.add(
        row(
            kit.text("water.temperature"),
            water
                .temperature()
                .map(t -> kit.words().figure(Figure.of(t)))
                .orElse(kit.text("water.notTested")),
            or(
                sentence(List.of(HomeRule.WATER_COLD, HomeRule.TEMPERATURE_NOT_MEASURED)),
                true,
                "water.temperatureFine")));
    rows.add(
        row(
            kit.text("water.bacteria"),
            kit.words().term(water.bacteria()),
            sentence(List.of(HomeRule.BACTERIA_FOUND, HomeRule.BACTERIA_NOT_TESTED))));
    return table(List.of(0.24, 0.18, 0.58), "water.test", "water.found", "water.meaning", rows);
  }

  private Block table(
      List<Double> shares, String first, String second, String third, List<List<Cell>> rows) {
    List<Cell> header =
        List.of(
            kit.strong(kit.text(first)),
            kit.strong(kit.text(second)).right(),
            kit.strong(kit.text(third)));
    return new Table(tag.child(Tag.Role.TABLE), shares, header, rows, -1);
  }

  private List<Cell> row(String name, String value, String note) {
    return List.of(kit.cell(name).heading(), kit.strong(value).right(), kit.cell(note));
  }

  private String found(Substance substance) {
    return water
        .found(substance)
        .map(amount -> kit.words().figure(Figure.of(amount, decimals(substance))))
        .orElse(kit.text("water.notTested"));
  }

  private static int decimals(Substance substance) {
    return switch (substance) {
      case TOTAL_DISSOLVED_SOLIDS, SODIUM, CHLORIDE -> 0;
      case IRON, DISSOLVED_IRON, MANGANESE -> 2;
      case FREE_CHLORINE, HYDROGEN_SULFIDE -> 1;
    };
  }

  private String meaning(Substance substance) {
    String said = sentence(SPOKEN_OF_BY.getOrDefault(substance, List.of()));
    String counted = counted(substance).orElse("");
    boolean tested = water.found(substance).isPresent();
    return or((said + " " + counted).strip(), tested, "water.fine");
  }

  /** What was said, or else a plain text where it can be said. */
  private String or(String said, boolean tested, String otherwiseKey) {
    return said.isEmpty() && tested ? kit.text(otherwiseKey) : said;
  }

  private Optional<String> counted(Substance substance) {
    var allowances = home.site().allowances();
    return switch (substance) {
      case IRON -> counted(allowances.iron().forConcentration(water.foundOrNone(substance)));
      case MANGANESE ->
          counted(allowances.manganese().forConcentration(water.foundOrNone(substance)));
      default -> Optional.empty();
    };
  }

  private Optional<String> counted(Hardness added) {
    return added.isPositive()
        ? Optional.of(kit.text("water.counted", Figure.of(added)))
        : Optional.empty();
  }

  private String sentence(List<HomeRule> rules) {
    return kit.comparison().homeFindings().stream()
        .filter(finding -> rules.contains(finding.rule()))
        .findFirst()
        .map(kit.words()::finding)
        .orElse("");
  }

  /** Cautions and notes on the home that no row of the table speaks of. */
  private Block notes() {
    Set<Rule<?>> spokenOf = new HashSet<>(IN_OTHER_ROWS);
    SPOKEN_OF_BY.values().forEach(spokenOf::addAll);
    List<String> more =
        kit.comparison().homeFindings().stream()
            .filter(finding -> !spokenOf.contains(finding.rule()))
            .filter(finding -> finding.severity() == Severity.NOTE)
            .map(kit.words()::finding)
            .toList();
    return Block.stack(more.stream().map(text -> kit.quiet(tag, text).after(2)).toList());
  }

  private Block homeTable() {
    Site site = home.site();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(
        row(
            kit.text("home.people"),
            kit.words().number(site.household().people(), 0),
            kit.text("home.visit")));
    rows.add(use("home.design", home.use().design(), home.use().designBasis()));
    rows.add(use("home.expected", home.use().expected(), home.use().expectedBasis()));
    rows.add(
        row(
            kit.text("home.load"),
            kit.words().figure(Figure.of(home.dailyLoad())),
            kit.text("home.load.note")));
    rows.add(
        row(
            kit.text("home.peak"),
            kit.words().figure(Figure.of(home.peakFlow())),
            home.peak().byFixtures()
                ? kit.text("home.peak.fixtures", Figure.of(home.peak().fixtureUnits(), 1))
                : kit.text("home.peak.note", bathrooms(site))));
    rows.add(measured("home.pressure", site.supply().pressure().map(Figure::of)));
    rows.add(measured("home.flow", site.supply().flow().map(Figure::of)));
    return table(List.of(0.36, 0.18, 0.46), "home.item", "home.value", "home.note", rows);
  }

  private static Figure bathrooms(Site site) {
    double bathrooms = site.household().bathrooms();
    return Figure.of(bathrooms, bathrooms == Math.rint(bathrooms) ? 0 : 1);
  }

  private List<Cell> use(String key, Volume daily, UseBasis basis) {
    return row(
        kit.text(key),
        kit.words().figure(Figure.of(daily)),
        kit.text("home.basis", Figure.of(basis)));
  }

  private List<Cell> measured(String key, Optional<Figure> value) {
    return row(
        kit.text(key),
        value.map(kit.words()::figure).orElse(kit.text("water.notTested")),
        value.isPresent() ? kit.text("home.measured") : "");
  }
}
