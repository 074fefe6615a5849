package io.github.brinewright.documents;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.CostKind;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.ItemNeed;
import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.cost.PaymentKind;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * What the choices, the payments and the acceptance of a proposal must say: which packages there
 * are is found here anew, and totals are added up here in plain decimals.
 */
final class ExpectedChoices extends Expected {
  /** A package: its bed, what a year costs, and its hard water with the days that it is. */
  private record Offered(Candidate candidate, Money year, String hard) {}

  private final Comparison comparison;
  private final Optional<ServiceStudy> service;
  private final Map<String, Offered> packages = new LinkedHashMap<>();
  private final List<Item> extras;
  private final boolean signs;

  ExpectedChoices(
      Comparison comparison, Optional<ServiceStudy> service, Wording words, boolean signs) {
    super(words);
    this.signs = signs;
    this.comparison = comparison;
    this.service = service;
    extras =
        comparison.priceList().items().stream()
            .filter(item -> item.need() == ItemNeed.OFFERED)
            .toList();
    find();
  }

  private void find() {
    Candidate chosen = comparison.recommended().orElseThrow();
    Map<String, Offered> others = new LinkedHashMap<>();
    service.flatMap(this::kept).ifPresent(kept -> others.put("keep", kept));
    add(others, chosen, "cheapest", comparison.cheapestThatFits());
    add(others, chosen, "bigger", comparison.larger().filter(Candidate::feasible));
    boolean first = keeps() && others.containsKey("keep");
    if (first) {
      packages.put("keep", others.get("keep"));
    }
    packages.put("recommended", offered(chosen));
    for (String kind : new String[] {"cheapest", "bigger", "keep"}) {
      if (others.containsKey(kind)) {
        packages.putIfAbsent(kind, others.get(kind));
      }
    }
  }

  private boolean keeps() {
    return service.filter(study -> study.advice() != Advice.REPLACE).isPresent();
  }

  private void add(
      Map<String, Offered> others, Candidate chosen, String kind, Optional<Candidate> candidate) {
    candidate
        .filter(each -> !each.equals(chosen))
        .filter(each -> others.values().stream().noneMatch(o -> o.candidate().equals(each)))
        .ifPresent(each -> others.put(kind, offered(each)));
  }

  private Offered offered(Candidate candidate) {
    return new Offered(
        candidate,
        candidate.yearly().total(),
        candidate
            .hardWater()
            .map(
                hard ->
                    words.text(
                        "compare.hardOf",
                        Figure.of(hard.runOut().plus(hard.whileRegenerating()), 0),
                        Figure.days(candidate.hardWaterDays().orElseThrow(), 1)))
            .orElse("–"));
  }

  private Optional<Offered> kept(ServiceStudy study) {
    ServiceOption.Kind kind =
        study.advice() == Advice.ADD_METER
            ? ServiceOption.Kind.METERED
            : ServiceOption.Kind.SET_RIGHT;
    return study
        .option(kind)
        .filter(option -> option.price().isPresent() && option.candidate().isPresent())
        .map(
            option ->
                new Offered(
                    option.candidate().orElseThrow(),
                    option.cost(),
                    words.text(
                        "compare.hardOf",
                        Figure.of(option.hardWater().total(), 0),
                        Figure.days(
                            option.hardWater().daysOf(comparison.home().softenedExpected()), 1))));
  }

  /** Whether there is anything to choose, at known prices. */
  boolean any() {
    boolean priced = packages.values().stream().noneMatch(o -> o.candidate().offer().isUnpriced());
    return priced && (packages.size() > 1 || !extras.isEmpty());
  }

  void all(Function<Candidate, String> control) {
    heads("choices/choices");
    line("choices/choices/", "compare.bed", o -> words.resin(o.candidate().resin()));
    line("choices/choices/", "compare.control", o -> control.apply(o.candidate()));
    line("choices/choices/", "choices.equipment", o -> money(o.candidate().quote().equipment()));
    line(
        "choices/choices/", "price.installation", o -> money(o.candidate().offer().installation()));
    items();
    if (packages.values().stream().anyMatch(o -> tax(o.candidate().quote()).signum() != 0)) {
      line("choices/choices/", "price.tax", o -> amount(o, tax(o.candidate().quote())));
    }
    line("choices/choices/", "price.total", o -> amount(o, total(o, List.of())));
    credit()
        .ifPresent(
            credit ->
                row(
                    "choices/choices/choices.monthly",
                    words.text("choices.monthly", credit.months(), credit.nominal()),
                    o -> money(credit(o).orElseThrow().each())));
    line("choices/choices/", "choices.yearly", o -> words.about(o.year()));
    row(
        "choices/choices/compare.life",
        words.text("compare.life", Figure.of(terms().years())),
        o -> words.about(o.candidate().life().total()));
    line("choices/choices/", "compare.hard", Offered::hard);
    notes();
    extras();
    totals();
    if (comparison.priceList().ways().isEmpty()) {
      payments();
    } else {
      ways();
    }
    if (signs) {
      fields();
    }
  }

  private Terms terms() {
    return comparison.priceList().terms();
  }

  private Optional<ExpectedCredit> credit() {
    return credit(packages.values().iterator().next());
  }

  private Optional<ExpectedCredit> credit(Offered offered) {
    return ExpectedCredit.of(comparison.priceList(), offered.candidate().quote().total());
  }

  private String money(Money money) {
    return words.money(money.toBigMoney());
  }

  private String amount(Offered offered, BigDecimal amount) {
    return money(
        Money.of(offered.candidate().offer().currency(), amount, RoundingMode.UNNECESSARY));
  }

  private String name(String kind) {
    if (kind.equals("keep")) {
      boolean meter = service.orElseThrow().advice() == Advice.ADD_METER;
      return words.text(meter ? "choices.KEEP_METER" : "choices.KEEP");
    }
    String among = keeps() && !kind.equals("bigger") ? "_NEW" : "";
    String key = "choices." + kind.toUpperCase(Locale.ROOT) + among;
    return words.text(key, Figure.of(packages.get(kind).candidate().softener().name()));
  }

  private void heads(String where) {
    packages.keySet().forEach(kind -> head(where + "/" + kind, name(kind)));
  }

  private void line(String where, String key, Function<Offered, String> cell) {
    row(where + key, words.text(key), cell);
  }

  private void row(String key, String label, Function<Offered, String> cell) {
    packages.forEach((kind, offered) -> value(key + "/" + kind, label, cell.apply(offered)));
  }

  private void items() {
    Map<String, Item> all = new LinkedHashMap<>();
    packages
        .values()
        .forEach(o -> o.candidate().quote().items().forEach(item -> all.put(item.id(), item)));
    all.forEach(
        (id, item) ->
            row(
                "choices/choices/item." + id,
                item.name(words.locale()),
                o -> o.candidate().quote().items().contains(item) ? money(item.amount()) : "–"));
  }

  private void notes() {
    packages.forEach(
        (kind, offered) ->
            comparison
                .against(offered.candidate())
                .filter(reason -> !kind.equals("keep"))
                .ifPresent(
                    reason -> value("choices/notes/" + kind, name(kind), words.reason(reason))));
  }

  /** Each taxed line on its own, to the cent. */
  private static BigDecimal tax(Quote quote) {
    BigDecimal rate = quote.terms().taxRate();
    BigDecimal tax = cents(quote.equipment().getAmount().multiply(rate));
    if (quote.terms().taxOnInstallation()) {
      tax = tax.add(cents(quote.offer().installation().getAmount().multiply(rate)));
    }
    for (Item item : quote.items()) {
      tax = tax.add(tax(item, rate));
    }
    return tax;
  }

  private static BigDecimal tax(Item item, BigDecimal rate) {
    return item.taxed() ? cents(item.amount().getAmount().multiply(rate)) : cents(BigDecimal.ZERO);
  }

  private static BigDecimal cents(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_EVEN);
  }

  private static BigDecimal total(Offered offered, List<Item> added) {
    Quote quote = offered.candidate().quote();
    BigDecimal sum = quote.equipment().getAmount().add(quote.offer().installation().getAmount());
    sum = sum.add(tax(quote));
    for (Item item : quote.items()) {
      sum = sum.add(item.amount().getAmount());
    }
    for (Item item : added) {
      sum = sum.add(item.amount().getAmount()).add(tax(item, quote.terms().taxRate()));
    }
    return sum;
  }

  private void extras() {
    if (extras.isEmpty()) {
      return;
    }
    head("choices/extras/what", words.text("choices.what"));
    head("choices/extras/price", words.text("choices.withTax"));
    for (Item item : extras) {
      String key = "choices/extras/extra." + item.id();
      value(key + "/what", item.name(words.locale()), said(item));
      value(key + "/price", item.name(words.locale()), price(item));
    }
  }

  private String price(Item item) {
    return money(
        Money.of(
            item.price().getCurrencyUnit(),
            item.amount().getAmount().add(tax(item, terms().taxRate()))));
  }

  private String said(Item item) {
    List<String> said = new ArrayList<>();
    said.add(item.text().in(words.locale()));
    item.renewedEvery()
        .ifPresent(
            years ->
                said.add(
                    words.text("choices.renewed", Figure.of(years), Figure.of(item.renewal()))));
    return String.join(" ", said).strip();
  }

  /** Every way to tick, by counting in binary. */
  private void totals() {
    if (extras.isEmpty() || packages.size() << extras.size() > 16) {
      return;
    }
    heads("choices/totals");
    for (int ticks = 0; ticks < 1 << extras.size(); ticks++) {
      List<Item> added = new ArrayList<>();
      StringBuilder key = new StringBuilder("choices/totals/total");
      for (int i = 0; i < extras.size(); i++) {
        if ((ticks & 1 << i) != 0) {
          added.add(extras.get(i));
          key.append('.').append(extras.get(i).id());
        }
      }
      row(key.toString(), listed(added), o -> amount(o, total(o, added)));
    }
  }

  private String listed(List<Item> added) {
    List<String> names = added.stream().map(item -> item.name(words.locale())).toList();
    int last = names.size() - 1;
    return switch (names.size()) {
      case 0 -> words.text("choices.nothing");
      case 1 -> names.get(0);
      default ->
          String.join(", ", names.subList(0, last))
              + " "
              + words.text("and")
              + " "
              + names.get(last);
    };
  }

  /** Each way to pay for the recommended one, added up here. */
  private void ways() {
    for (String key : new String[] {"down", "after", "month", "rate", "total"}) {
      head("price/ways/ways." + key, words.text("ways." + key));
    }
    head("price/ways/ways.years", words.text("ways.years", Figure.of(terms().years())));
    comparison.priceList().ways().forEach(this::way);
  }

  private void way(PaymentWay way) {
    Offered bought = packages.get("recommended");
    BigDecimal price = total(bought, List.of());
    BigDecimal down = cents(price.multiply(way.depositShare()));
    List<BigDecimal> monthly = monthly(way, price, price.subtract(down));
    BigDecimal all = monthly.stream().reduce(down, BigDecimal::add);
    all = way.months() == 0 ? price : all;
    all =
        all.add(
            way.endShare()
                .map(share -> cents(price.multiply(share)))
                .orElse(cents(BigDecimal.ZERO)));
    String key = "price/ways/way." + way.id() + "/ways.";
    String name = way.name().in(words.locale());
    boolean cash = way.months() == 0;
    value(key + "down", name, amount(bought, down));
    value(key + "after", name, cash ? amount(bought, price.subtract(down)) : "–");
    value(
        key + "month",
        name,
        cash
            ? "–"
            : words.text(
                "choices.several",
                Figure.of(monthly.size()),
                Figure.of(amount(bought, monthly.get(0)))));
    value(key + "rate", name, rate(way, price.subtract(down), monthly));
    value(key + "total", name, amount(bought, all));
    LifeCost life = bought.candidate().life();
    BigDecimal span = life.total().getAmount().subtract(price).add(all);
    if (way.serviceIncluded()) {
      span = span.subtract(life.of(CostKind.SERVICE, way.months() / 12).getAmount());
    }
    value(key + "years", name, words.about(Money.of(life.total().getCurrencyUnit(), span)));
  }

  /** Level payments up to the cent, the last one what is left. */
  private static List<BigDecimal> monthly(PaymentWay way, BigDecimal price, BigDecimal balance) {
    List<BigDecimal> payments = new ArrayList<>();
    if (way.kind() == PaymentKind.RENTAL) {
      return Collections.nCopies(way.months(), cents(price.multiply(way.monthlyShare())));
    }
    if (way.kind() == PaymentKind.CASH) {
      return payments;
    }
    double i = way.yearlyRate().doubleValue() / 12;
    double level = balance.doubleValue() * i / (1 - Math.pow(1 + i, -way.months()));
    BigDecimal each = BigDecimal.valueOf(level).setScale(2, RoundingMode.CEILING);
    BigDecimal owed = balance;
    for (int month = 1; month <= way.months(); month++) {
      owed = owed.add(cents(owed.multiply(BigDecimal.valueOf(i))));
      BigDecimal paid = month < way.months() ? each : owed;
      payments.add(paid);
      owed = owed.subtract(paid);
    }
    return payments;
  }

  /** By bisection of what the payments are worth. */
  private String rate(PaymentWay way, BigDecimal financed, List<BigDecimal> payments) {
    if (way.kind() != PaymentKind.CREDIT) {
      return "–";
    }
    double low = 0;
    double high = 1;
    for (int n = 0; n < 80; n++) {
      double middle = (low + high) / 2;
      double worth = 0;
      for (int k = 0; k < payments.size(); k++) {
        worth += payments.get(k).doubleValue() * Math.pow(1 + middle, -k - 1);
      }
      low = worth > financed.doubleValue() ? middle : low;
      high = worth > financed.doubleValue() ? high : middle;
    }
    return words.figure(new Figure.Share(12 * low, 2));
  }

  private void payments() {
    heads("price/pay");
    line("price/pay/", "price.total", o -> amount(o, total(o, List.of())));
    if (terms().depositShare().signum() > 0) {
      line("price/pay/", "pay.deposit", o -> money(o.candidate().quote().deposit()));
      line(
          "price/pay/",
          "pay.balance",
          o -> money(o.candidate().quote().total().minus(o.candidate().quote().deposit())));
    }
    credit().ifPresent(this::monthly);
  }

  private void monthly(ExpectedCredit credit) {
    row(
        "price/pay/pay.monthly",
        words.text("pay.monthly", credit.months(), credit.nominal()),
        o -> money(credit(o).orElseThrow().each()));
    row(
        "price/pay/pay.financed",
        words.text("pay.financed", credit.months()),
        o -> money(credit(o).orElseThrow().inAll()));
  }

  /** The same fields where the choice is made and in the acceptance. */
  private void fields() {
    for (String where : List.of("choices/choices", "signing")) {
      if (packages.size() > 1) {
        packages.forEach(
            (kind, offered) ->
                value(
                    where + "/package=" + kind,
                    words.text(
                        "choices.priced",
                        Figure.of(name(kind)),
                        Figure.of(amount(offered, total(offered, List.of())))),
                    "ONE_OF [" + kind + "]"));
      }
    }
    for (PaymentWay way : comparison.priceList().ways()) {
      for (String where : List.of("price/ways", "signing")) {
        value(
            where + "/way=" + way.id(), way.name().in(words.locale()), "ONE_OF [" + way.id() + "]");
      }
    }
    for (Item item : extras) {
      String label =
          words.text(
              "choices.priced", Figure.of(item.name(words.locale())), Figure.of(price(item)));
      value("choices/extras/extra_" + item.id(), label, "TICK []");
      value("signing/extra_" + item.id(), label, "TICK []");
    }
  }
}
