package io.github.brinewright.internal.screen;

import io.github.brinewright.cost.LifeCost;
import io.github.brinewright.home.Household;
import io.github.brinewright.internal.visit.Trial;
import io.github.brinewright.internal.visit.Trial.Knob;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.joda.money.BigMoney;

/**
 * Sliders for what may turn out other than the visit says.
 *
 * @param look how it is read
 * @param trial what they stand at
 */
public record KnobsView(Look look, Trial trial) {
  private static final int USUAL_MOST_PEOPLE = 10;
  private static final int USUAL_MOST_GRAINS = 60;

  /** From where to where, and by how much. */
  private record Way(BigDecimal low, BigDecimal high, BigDecimal step) {
    static Way of(double low, double high, double step) {
      return new Way(BigDecimal.valueOf(low), BigDecimal.valueOf(high), BigDecimal.valueOf(step));
    }
  }

  private Way way(Knob knob) {
    double told = trial.told(knob).doubleValue();
    return switch (knob) {
      case PEOPLE ->
          Way.of(1, Math.min(Math.max(USUAL_MOST_PEOPLE, told * 2), Household.PEOPLE.high()), 1);
      case HARDNESS -> Way.of(1, Math.min(Math.max(USUAL_MOST_GRAINS, told * 1.5), 200), 0.5);
      case SALT -> Way.of(0.01, Math.max(0.5, Math.ceil(told * 4 * 100) / 100), 0.01);
      case YEARS -> Way.of(1, LifeCost.MOST_YEARS, 1);
    };
  }

  Html html() {
    Html html = new Html().open("div", "class", "knobs");
    for (Knob knob : Knob.values()) {
      html.add(knob(knob));
    }
    html.close("div").open("p", "id", "trial").text(said()).close("p");
    return html.element("button", look.text("page.reset"), "type", "button", "id", "reset");
  }

  private Html knob(Knob knob) {
    Way way = way(knob);
    String id = id(knob);
    return new Html()
        .open("div", "class", "knob")
        .element("label", look.text("page." + knob.name()), "for", id)
        .open(
            "input",
            "type",
            "range",
            "id",
            id,
            "name",
            knob.field(),
            "min",
            plain(way.low()),
            "max",
            plain(way.high()),
            "step",
            plain(way.step()),
            "value",
            plain(trial.value(knob)),
            "data-told",
            plain(trial.told(knob)),
            "aria-valuetext",
            shown(knob))
        .element("output", shown(knob), "for", id, "id", id + "-shown")
        .close("div");
  }

  private static String id(Knob knob) {
    return "knob-" + knob.name().toLowerCase(Locale.ROOT);
  }

  private static String plain(BigDecimal number) {
    return number.setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }

  /** What each slider stands at, in words, by the name of its place. */
  public Map<String, String> shown() {
    Map<String, String> all = new LinkedHashMap<>();
    for (Knob knob : Knob.values()) {
      all.put(id(knob), shown(knob));
    }
    return all;
  }

  private String shown(Knob knob) {
    BigDecimal value = trial.value(knob);
    return switch (knob) {
      case PEOPLE, YEARS -> look.words().number(Figure.of(value.intValue()));
      case HARDNESS ->
          look.words().figure(Figure.of(Hardness.ofGrainsPerGallon(value.doubleValue())));
      case SALT -> salt(value);
    };
  }

  /** The price of a usual bag, which is what people pay. */
  private String salt(BigDecimal perPound) {
    UnitSystem system = look.system();
    double pounds = system.bag().pounds();
    BigMoney price =
        BigMoney.of(trial.home().tariff().currency(), perPound.multiply(BigDecimal.valueOf(pounds)))
            .rounded(2, RoundingMode.HALF_UP);
    return look.words().text("page.bag", Figure.of(price), Figure.of(Mass.ofPounds(pounds), 0));
  }

  /** What is tried, in a sentence. */
  public String said() {
    return look.text(trial.differs() ? "page.tried" : "page.told");
  }
}
