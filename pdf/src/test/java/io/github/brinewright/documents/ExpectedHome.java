package io.github.brinewright.documents;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.Item;
import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.Verdict;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Site;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the section on water and home must say. */
final class ExpectedHome extends Expected {
  private final List<Finding> findings;
  private final Verdict verdict;
  private final HomeLoad home;
  private final Site site;
  private final WaterAnalysis water;

  ExpectedHome(Comparison comparison, Wording words) {
    super(words);
    findings =
        Stream.concat(comparison.verdict().reasons().stream(), comparison.homeFindings().stream())
            .toList();
    verdict = comparison.verdict();
    home = comparison.home();
    site = home.site();
    water = site.water();
    hardness();
    substance(
        Substance.IRON,
        2,
        "iron-above-bed",
        "iron-form-unknown",
        "iron-stains",
        "iron-above-objective",
        "iron-not-tested");
    substance(Substance.DISSOLVED_IRON, 2, "iron-particles");
    substance(
        Substance.MANGANESE,
        2,
        "manganese-above-advisory",
        "manganese-above-guideline",
        "manganese-stains",
        "manganese-not-tested",
        "manganese-unknown");
    substance(Substance.TOTAL_DISSOLVED_SOLIDS, 0, "solids-high");
    substance(Substance.SODIUM, 0);
    substance(Substance.CHLORIDE, 0);
    substance(Substance.FREE_CHLORINE, 1, "chlorine-wears-resin", "chlorine-present");
    substance(
        Substance.HYDROGEN_SULFIDE, 1, "hydrogen-sulfide-in-water", "hydrogen-sulfide-little");
    seldom(Substance.CHLORAMINE, 1, "chloramine-present");
    seldom(Substance.ALKALINITY, 0);
    seldom(Substance.CARBON_DIOXIDE, 0);
    seldom(Substance.NITRATE, 1, "nitrate-high", "nitrate-not-tested");
    others();
    if (site.treated().filter(TreatedWater::isComputed).isPresent()) {
      onItsWay(comparison);
    }
    if (sized()) {
      home();
    }
  }

  /** Whether a softener is spoken of at all. */
  private boolean sized() {
    return verdict.permitsRecommendation();
  }

  /** Left out where it was not tested and nothing is said of it. */
  private void seldom(Substance substance, int decimals, String... codes) {
    if (water.result(substance).isPresent() || !said(codes).isEmpty()) {
      substance(substance, decimals, codes);
    }
  }

  private String notTested() {
    return words.text("water.notTested");
  }

  private void hardness() {
    figure("water/water/water.hardness", Figure.of(water.hardness()));
    String meaning = words.text("water.hardnessMeaning", Figure.of(home.compensatedHardness()));
    boolean treated = site.treated().isPresent();
    boolean computed = treated && site.treated().orElseThrow().isComputed();
    if (computed) {
      figure("water/water/water.planned", Figure.of(site.treated().orElseThrow().hardness()));
    } else if (treated) {
      value("water/water/water.treated", treated(site.treated().orElseThrow()));
    }
    if (sized()) {
      String behind = computed ? "water.planned" : "water.treated";
      note("water/water/" + (treated ? behind : "water.hardness"), meaning);
    }
  }

  /** Each stage by the shares that its item states; behind the last, what the home is sized on. */
  private void onItsWay(Comparison comparison) {
    Map<Substance, Double> left = new EnumMap<>(Substance.class);
    List<Substance> shown =
        List.of(Substance.IRON, Substance.MANGANESE, Substance.HYDROGEN_SULFIDE);
    shown.forEach(each -> left.put(each, water.foundOrNone(each).milligramsPerLitre()));
    TreatedWater behind = site.treated().orElseThrow();
    head("water/way/raw", words.text("way.raw"));
    way("raw", left, water.hardness(), water.ph().orElseThrow());
    String alkalinity = term(Substance.ALKALINITY);
    LabResult before = water.result(Substance.ALKALINITY).orElseThrow();
    value("water/way/ALKALINITY/raw", alkalinity, result(before, 0));
    for (String id : behind.treatments()) {
      Item item =
          comparison.priceList().items().stream()
              .filter(each -> each.id().equals(id))
              .findFirst()
              .orElseThrow();
      var effect = item.treatment().orElseThrow();
      shown.forEach(
          each -> left.merge(each, 1 - effect.takes(each).orElse(0), (was, share) -> was * share));
      head("water/way/" + id, item.name(words.locale()));
      way(id, left, behind.hardness(), behind.ph().orElseThrow());
      value(
          "water/way/ALKALINITY/" + id,
          alkalinity,
          result(behind.left().get(Substance.ALKALINITY), 0));
    }
  }

  private void way(String stage, Map<Substance, Double> left, Hardness hardness, double ph) {
    value(
        "water/way/way.hardness/" + stage,
        words.text("way.hardness"),
        words.figure(Figure.of(hardness)));
    value("water/way/way.ph/" + stage, words.text("way.ph"), words.figure(Figure.of(ph, 1)));
    left.forEach(
        (substance, amount) ->
            value(
                "water/way/" + substance + "/" + stage,
                term(substance),
                words.figure(Figure.of(Concentration.ofMilligramsPerLitre(amount), 2))));
  }

  private void substance(Substance substance, int decimals, String... codes) {
    String key = "water/water/Substance." + substance;
    Optional<LabResult> found = water.result(substance);
    String value = found.map(result -> result(result, decimals)).orElse(notTested());
    value(key, term(substance), value);
    String said = (said(codes) + " " + counted(substance)).strip();
    note(key, said.isEmpty() && found.isPresent() ? words.text("water.fine") : said);
  }

  /** The gravest finding of the codes. */
  private String said(String... codes) {
    List<String> wanted = List.of(codes);
    for (Finding finding : findings) {
      if (wanted.contains(finding.code())) {
        return words.finding(finding);
      }
    }
    return "";
  }

  private String counted(Substance substance) {
    double found = site.softenedWater().foundOrNone(substance).milligramsPerLitre();
    double perMilligram =
        switch (substance) {
          case IRON -> site.allowances().iron().grainsPerGallonPerMilligramPerLitre();
          case MANGANESE -> site.allowances().manganese().grainsPerGallonPerMilligramPerLitre();
          default -> 0;
        };
    return sized() && found * perMilligram > 0
        ? words.text("water.counted", Figure.of(Hardness.ofGrainsPerGallon(found * perMilligram)))
        : "";
  }

  private void others() {
    boolean acid = water.ph().isPresent();
    value("water/water/water.ph", acid ? plain(water.ph().getAsDouble(), 1) : notTested());
    String outside = said("ph-too-low", "ph-not-tested", "ph-high");
    note("water/water/water.ph", acid && outside.isEmpty() ? words.text("water.phFine") : outside);
    value(
        "water/water/water.temperature",
        water.temperature().map(t -> words.figure(Figure.of(t))).orElse(notTested()));
    String cold = said("water-cold", "temperature-not-measured");
    note(
        "water/water/water.temperature",
        cold.isEmpty() ? words.text("water.temperatureFine") : cold);
    value("water/water/water.bacteria", term(water.bacteria()));
    note(
        "water/water/water.bacteria",
        said("e-coli-found", "bacteria-found", "bacteria-not-tested"));
  }

  private void home() {
    value("water/home/home.people", plain(site.household().people(), 0));
    note("water/home/home.people", words.text("home.visit"));
    figure("water/home/home.design", Figure.of(home.use().design()));
    note(
        "water/home/home.design",
        words.text(
            "home.basisCovers",
            Figure.of(term(home.use().designBasis())),
            Figure.percent(home.use().coverage())));
    figure("water/home/home.expected", Figure.of(home.use().expected()));
    note(
        "water/home/home.expected",
        words.text("home.basis", Figure.of(term(home.use().expectedBasis()))));
    figure("water/home/home.load", Figure.of(home.dailyLoad()));
    note("water/home/home.load", words.text("home.load.note"));
    figure("water/home/home.peak", Figure.of(home.peakFlow()));
    note("water/home/home.peak", peak());
    measured("water/home/home.pressure", site.supply().pressure().map(Figure::of));
    measured("water/home/home.flow", site.supply().flow().map(Figure::of));
  }

  private void measured(String key, Optional<Figure> figure) {
    value(key, figure.map(words::figure).orElse(notTested()));
    note(key, figure.isPresent() ? words.text("home.measured") : "");
  }

  private String peak() {
    double bathrooms = site.household().bathrooms();
    String half = plain(bathrooms, bathrooms % 1 == 0 ? 0 : 1);
    List<String> notes = new ArrayList<>();
    notes.add(
        switch (home.peak().method()) {
          case MEASURED -> words.text("home.measured");
          case FIXTURE_UNITS ->
              words.text("home.peak.fixtures", Figure.of(home.peak().fixtureUnits(), 1));
          case BATHROOMS -> words.text("home.peak.note", Figure.of(half));
        });
    FlowRate bed = home.peakThroughBed();
    if (bed.gallonsPerMinute() < home.peakFlow().gallonsPerMinute()) {
      notes.add(words.text("home.peak.bed", Figure.of(bed)));
    }
    List<FlowRate> flows = home.peak().byMethod().values().stream().sorted().toList();
    if (flows.size() > 1) {
      notes.add(
          words.text(
              "home.peak.range",
              Figure.of(words.number(Figure.of(flows.get(0)))),
              Figure.of(flows.get(flows.size() - 1))));
    }
    return String.join("; ", notes);
  }
}
