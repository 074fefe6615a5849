package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.PaymentPlan;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.sale.PackageKind;
import io.github.brinewright.sale.Packages;
import io.github.brinewright.sale.SalePackage;
import io.github.brinewright.service.Advice;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * What may be added, and what the packages come to with what is ticked.
 *
 * @param look how it is read
 * @param packages of the home
 * @param ticked ids of items
 * @param credit the dealer's way to pay by month; empty where there is none
 * @param advice on the softener in the house; to replace it where there is none
 */
record ExtrasView(
    Look look, Packages packages, Set<String> ticked, Optional<PaymentWay> credit, Advice advice) {

  Html ticks() {
    Html html = new Html();
    if (packages.all().isEmpty() || packages.extras().isEmpty()) {
      return html;
    }
    html.open("fieldset", "class", "part").element("legend", look.text("choices.extras"));
    packages.extras().forEach(item -> html.add(tick(item)));
    return html.close("fieldset");
  }

  private Html tick(Item item) {
    String id = "extra-" + item.id();
    String name = "extra." + item.id();
    Html html = new Html().open("div", "class", "tick");
    if (ticked.contains(item.id())) {
      html.open("input", "type", "checkbox", "id", id, "name", name, "checked", "");
    } else {
      html.open("input", "type", "checkbox", "id", id, "name", name);
    }
    SalePackage first = packages.all().get(0);
    Money price = first.total(List.of(item)).minus(first.total());
    String said = item.text().in(look.words().locale());
    return html.open("label", "for", id)
        .element("span", item.name().in(look.words().locale()), "class", "strong")
        .text(" ")
        .element("span", look.words().figure(Figure.of(price)), "class", "price")
        .element("span", said, "class", "voice-quiet")
        .close("label")
        .close("div");
  }

  Html totals() {
    Html html = new Html();
    if (packages.all().isEmpty()) {
      return html;
    }
    String name = look.text("choices.totals");
    html.open("div", "class", "scroll", "role", "group", "tabindex", "0", "aria-label", name);
    html.open("table").open("thead").open("tr").element("td", "");
    html.element("th", look.text("choices.withTax"), "scope", "col", "class", "value");
    credit.ifPresent(
        way ->
            html.element(
                "th",
                look.words()
                    .text(
                        "choices.monthly",
                        Figure.of(way.months()),
                        new Figure.Share(way.yearlyRate().doubleValue(), 2)),
                "scope",
                "col",
                "class",
                "value"));
    html.close("tr").close("thead").open("tbody");
    packages.all().stream()
        .filter(each -> !each.isUnpriced())
        .forEach(each -> html.add(line(each)));
    return html.close("tbody").close("table").close("div");
  }

  private Html line(SalePackage each) {
    List<Item> chosen =
        packages.extras().stream().filter(item -> ticked.contains(item.id())).toList();
    Quote quote = each.quote().with(chosen);
    Html html = new Html().open("tr").element("th", name(each), "scope", "row");
    html.element("td", look.words().figure(Figure.of(quote.total())), "class", "value");
    credit.ifPresent(
        way -> {
          Money monthly = new PaymentPlan(way, quote.total()).monthly().get(0);
          html.element("td", look.words().figure(Figure.of(monthly)), "class", "value");
        });
    return html.close("tr");
  }

  private String name(SalePackage each) {
    String unit =
        look.words().text(why(each.kind()), Figure.of(each.candidate().softener().name()));
    return each.kind() == PackageKind.KEEP ? unit : unit + " · " + setting(each.candidate());
  }

  /** Why it is offered, where the softener in the house is kept among new ones. */
  private String why(PackageKind kind) {
    String key = "choices." + kind.name();
    boolean amongNew = kind == PackageKind.RECOMMENDED || kind == PackageKind.CHEAPEST;
    if (kind == PackageKind.KEEP && advice == Advice.ADD_METER) {
      return "choices.KEEP_METER";
    }
    return amongNew && advice != Advice.REPLACE ? key + "_NEW" : key;
  }

  /** What tells two settings of one unit apart. */
  private String setting(Candidate candidate) {
    String control = look.words().term(candidate.setup().control());
    return candidate.byRating()
        ? control
        : look.words().figure(Figure.of(candidate.dosage())) + ", " + control;
  }
}
