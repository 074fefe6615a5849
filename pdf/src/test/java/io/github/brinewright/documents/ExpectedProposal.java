package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.Revision;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.LocalText;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.OfferText;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Step;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import io.github.brinewright.words.WorkedStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/** What a proposal must say. */
final class ExpectedProposal extends ExpectedComparison {
  private final Dealer dealer;
  private final List<Candidate> columns;

  ExpectedProposal(DemoTown.Home given, Dealer dealer, Wording words) {
    super(given.comparison(), given.service(), words);
    HomeStudy study = given.study();
    this.dealer = dealer;
    columns = comparison.columns(service.isPresent() ? 4 : 5);
    ExpectedHome home = new ExpectedHome(comparison, words);
    values().putAll(home.values());
    labels().putAll(home.labels());
    if (!comparison.verdict().permitsRecommendation()) {
      return;
    }
    candidates("compare/compare", columns);
    present(ExpectedPresent::pageOne);
    columns.forEach(this::setsApart);
    comparison.recommended().ifPresent(this::offered);
    if (study != null) {
      year(study);
    }
    steps();
  }

  /** Every setting under the control of the recommended one. */
  private void everySetting(Control control) {
    String in = "every/every/";
    for (String key :
        new String[] {"dosage", "days", "salt", "water", "cost", "life", "hard", "broken"}) {
      head(in + "every." + key, words.text("every." + key));
    }
    comparison.candidates().stream()
        .filter(c -> c.setup().control() == control)
        .forEach(c -> setting(in + c.softener().id() + "." + c.salt().pounds() + "/every.", c));
  }

  private void setting(String in, Candidate c) {
    String name = c.softener().name();
    value(
        in + "dosage",
        name,
        c.setup().dosage().map(d -> words.figure(Figure.of(d))).orElse(words.text("grid.rated")));
    value(in + "days", name, ofYear(c, y -> words.figure(Figure.days(y.daysBetween(), 1))));
    value(in + "salt", name, ofYear(c, y -> words.figure(Figure.of(y.salt(), 0))));
    value(in + "water", name, ofYear(c, y -> words.figure(Figure.of(y.water()))));
    value(
        in + "cost",
        name,
        ofYear(
            c,
            y ->
                words.about(
                    c.yearly()
                        .total()
                        .minus(c.yearly().of(CostKind.ELECTRICITY))
                        .minus(c.yearly().of(CostKind.SERVICE)))));
    value(in + "life", name, ofYear(c, y -> words.about(c.life().total())));
    value(
        in + "hard",
        name,
        c.hardWater()
            .map(hard -> words.figure(Figure.of(hard.runOut().plus(hard.whileRegenerating()), 0)))
            .orElse("–"));
    value(in + "broken", name, said(c));
  }

  private String said(Candidate c) {
    List<String> said = new ArrayList<>();
    comparison.marks(c).forEach(mark -> said.add(term(mark)));
    if (!c.feasible()) {
      int more = c.limitsBroken() - 1;
      String first = words.text("every.limit", Figure.of(words.finding(c.broken().get(0))));
      said.add(more == 0 ? first : first + " " + words.text("every.limits", Figure.of(more)));
    } else if (c.marginsBroken().isEmpty()) {
      said.add(words.text("compare.keeps"));
    } else {
      c.marginsBroken()
          .forEach(check -> said.add(words.text("every.margin", Figure.of(check.margin()))));
    }
    return String.join("; ", said);
  }

  private void setsApart(Candidate candidate) {
    if (comparison.recommends(candidate)) {
      return;
    }
    value(
        "compare/notes/" + candidate.softener().id(),
        candidate.softener().name(),
        comparison.recommended().isEmpty()
            ? broken(candidate, Integer.MAX_VALUE)
            : words.reason(comparison.against(candidate).orElseThrow()));
  }

  private void offered(Candidate candidate) {
    boolean beside = service.filter(ExpectedPresent::showsRecommended).isPresent();
    if (!keeps() && !beside) {
      facts(candidate);
    }
    costs();
    present(now -> now.costs("cost/cost"));
    saidOfOffers();
    boolean signs = signs(comparison, dealer);
    ExpectedChoices choices = new ExpectedChoices(comparison, service, words, signs);
    if (choices.any()) {
      choices.all(this::control);
      values().putAll(choices.values());
      labels().putAll(choices.labels());
    } else {
      price(candidate.quote(), candidate.softener().name());
    }
    grid("grid/grid", comparison.candidates());
    comparison.smaller().ifPresent(c -> neighbour("opening.smaller", c));
    comparison.larger().ifPresent(c -> neighbour("opening.larger", c));
    everySetting(candidate.setup().control());
    if (signs) {
      sign("customer", "accept.customer", words.text("accept.name"));
      sign("dealer", "accept.forDealer", words.text("accept.dealer", Figure.of(dealer.name())));
    }
  }

  /** In the United States the forms must be attached, and the statement be in the language. */
  static boolean signs(Comparison comparison, Dealer dealer) {
    String language = dealer.locale().getLanguage();
    boolean stated =
        language.equals("en") || dealer.homeSale().statement().byLanguage().containsKey(language);
    boolean free = !comparison.home().site().place().code().startsWith("US");
    return comparison.verdict().permitsSignature()
        && (free || dealer.homeSale().formsAttached() && stated);
  }

  private void neighbour(String key, Candidate candidate) {
    value(
        "grid/notes/" + key,
        words.text(key) + " · " + candidate.softener().name(),
        words.reason(comparison.against(candidate).orElseThrow()));
  }

  private void facts(Candidate candidate) {
    String in = "opening/facts/";
    if (!candidate.offer().isUnpriced()) {
      boolean installed = candidate.offer().installation().isPositive();
      figure(
          in + (installed ? "opening.fact.price" : "opening.fact.equipment"),
          Figure.of(candidate.quote().total()));
      credit(candidate.quote()).ifPresent(credit -> month(in, credit));
    }
    value(in + "opening.fact.year", words.about(candidate.yearly().total()));
    Mass salt = candidate.design().year().orElseThrow().salt();
    boolean metric = dealer.units() == UnitSystem.METRIC;
    Mass bag = metric ? Mass.ofKilograms(20) : Mass.ofPounds(40);
    double bags = metric ? salt.kilograms() / 20 : salt.pounds() / 40;
    value(
        in + "opening.fact.bags",
        words.text("opening.fact.bags", Figure.of(bag, 0)),
        words.text("opening.bags", Figure.of((int) Math.max(1, Math.rint(bags)))));
  }

  private Optional<ExpectedCredit> credit(Quote quote) {
    return ExpectedCredit.of(comparison.priceList(), quote.total());
  }

  private void month(String in, ExpectedCredit credit) {
    value(
        in + "opening.fact.month",
        words.text(
            "opening.fact.month", credit.months(), credit.annualRate(), Figure.of(credit.down())),
        words.money(credit.each().toBigMoney()));
  }

  private void costs() {
    for (CostKind kind : CostKind.values()) {
      line(
          "cost/cost/CostKind." + kind,
          term(kind),
          columns,
          c -> ofYear(c, y -> words.about(c.yearly().lines().get(kind))));
    }
    line(
        "cost/cost/cost.total",
        words.text("cost.total"),
        columns,
        c -> ofYear(c, y -> words.about(c.yearly().total())));
    heads("cost/cost", columns);
  }

  /** What the dealer says of every offer, in the language of the document. */
  private void saidOfOffers() {
    String language = words.locale().getLanguage();
    for (OfferText kind : OfferText.values()) {
      LocalText texts = dealer.offerTexts(kind);
      String text = texts.byLanguage().getOrDefault(language, texts.usual());
      if (!text.isEmpty()) {
        value("price/notes/record." + kind, words.text("record." + kind), text);
      }
    }
  }

  private void price(Quote quote, String name) {
    String in = "price/price/";
    if (quote.offer().isUnpriced()) {
      return;
    }
    value(in + "price.equipment", name, words.money(quote.equipment().toBigMoney()));
    value(in + "price.installation", words.money(quote.offer().installation().toBigMoney()));
    value(in + "price.tax", words.money(quote.tax().toBigMoney()));
    value(in + "price.total", words.money(quote.net().plus(quote.tax()).toBigMoney()));
    if (quote.deposit().isPositive()) {
      value(
          in + "price.deposit",
          words.text("price.deposit", Figure.of(quote.total().minus(quote.deposit()))),
          words.money(quote.deposit().toBigMoney()));
    }
    credit(quote)
        .ifPresent(
            credit ->
                value(
                    in + "price.monthly",
                    words.text(
                        "price.monthly",
                        credit.months(),
                        credit.annualRate(),
                        Figure.of(credit.inAll())),
                    words.money(credit.each().toBigMoney())));
  }

  private void sign(String id, String who, String nameCaption) {
    line("signing/" + id + "_name", "TEXT []", who, "accept.name", nameCaption);
    String signature = words.text("accept.signature");
    line("signing/" + id + "_signature", "SIGNATURE []", who, "accept.signature", signature);
    line("signing/" + id + "_date", "TEXT []", who, "accept.date", words.text("accept.date"));
  }

  private void line(String key, String field, String who, String what, String caption) {
    String label = words.text(who, Figure.of(words.text(what)));
    value(key, label, field);
    value(key + "/caption", label, caption);
  }

  private void year(HomeStudy study) {
    year(study, "year.regenerations", s -> range(s.regenerations(), v -> Figure.of(v, 0)));
    year(study, "year.salt", s -> range(s.saltPounds(), v -> Figure.of(Mass.ofPounds(v), 0)));
    year(study, "year.water", s -> range(s.waterGallons(), v -> Figure.of(Volume.ofGallons(v))));
    causes(
        study,
        "year.hardRunOut",
        s -> range(s.hardGallons(), v -> Figure.of(Volume.ofGallons(v), 0)));
    causes(
        study,
        "year.hardCycle",
        s -> range(s.cycleGallons(), v -> Figure.of(Volume.ofGallons(v), 0)));
    year(study, "year.hardTotal", s -> hard(s.hardWater()));
    causes(study, "year.hardDays", s -> range(s.hardDays(), v -> Figure.of(v, v < 10 ? 1 : 0)));
    causes(study, "year.unused", s -> words.figure(Figure.percent(s.unusedShare())));
    present(now -> now.year("year/year"));
    for (Control control : study.controls().keySet()) {
      value(
          "year/year/year.cost/Control." + control,
          words.text("year.cost"),
          words.about(study.costs().get(control)));
      boolean best = control == study.candidate().setup().control();
      String name = best ? words.text("year.recommended", Figure.of(term(control))) : term(control);
      head("year/year/Control." + control, name);
      head("changes/causes/Control." + control, name);
    }
  }

  private void year(HomeStudy study, String key, Function<SimulatedYears, String> cell) {
    ofYears(study, "year/year/" + key, cell);
  }

  private void causes(HomeStudy study, String key, Function<SimulatedYears, String> cell) {
    ofYears(study, "changes/causes/" + key, cell);
  }

  private void ofYears(HomeStudy study, String key, Function<SimulatedYears, String> cell) {
    String label = words.text(key.substring(key.lastIndexOf('/') + 1));
    service.ifPresent(now -> value(key + "/now", label, cell.apply(now.asFound().years())));
    study
        .controls()
        .forEach((control, years) -> value(key + "/Control." + control, label, cell.apply(years)));
  }

  private String range(Spread spread, DoubleFunction<Figure> unit) {
    String mean = words.figure(unit.apply(spread.mean()));
    return spread.high() - spread.low() < 0.5
        ? mean
        : words.text(
            "year.range",
            Figure.of(mean),
            Figure.of(words.number(unit.apply(Math.round(spread.low())))),
            Figure.of(words.number(unit.apply(Math.round(spread.high())))));
  }

  private void steps() {
    List<Step> steps = comparison.closest().steps();
    List<String> cited = steps.stream().map(s -> words.source(s.source())).distinct().toList();
    for (Step step : steps) {
      WorkedStep worked = words.step(step);
      String key = "worked/worked/" + step.kind();
      String label = worked.name() + " = " + worked.formula();
      value(key + "/worked.numbers", label, worked.numbers());
      value(key + "/worked.result", label, worked.result());
      value(
          key + "/worked.source",
          label,
          String.valueOf(cited.indexOf(words.source(step.source())) + 1));
    }
    for (String head : new String[] {"worked.numbers", "worked.result", "worked.source"}) {
      head("worked/worked/" + head, words.text(head));
    }
  }

  /** Adds what the section on changes must say. */
  ExpectedProposal revised(Revision revision) {
    for (Revision.Item item : revision.changes()) {
      String key = "revision/revision/revision." + item.kind();
      String label = words.text("revision." + item.kind());
      value(key + "/revision.before", label, words.figure(item.before()));
      value(key + "/revision.now", label, words.figure(item.now()));
    }
    if (!revision.changes().isEmpty()) {
      head("revision/revision/revision.before", words.text("revision.before"));
      head("revision/revision/revision.now", words.text("revision.now"));
    }
    return this;
  }
}
