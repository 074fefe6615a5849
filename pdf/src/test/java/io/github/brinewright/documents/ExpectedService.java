package io.github.brinewright.documents;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.sizing.FoundSoftener;
import io.github.brinewright.sizing.FoundUnknowns;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.RoundingMode;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.joda.money.Money;

/** What a report on a present softener must say. */
final class ExpectedService extends Expected {
  private final ServiceStudy study;
  private final FoundSoftener found;
  private final PresentSoftener present;
  private final ServiceOption asFound;

  ExpectedService(ServiceStudy study, Wording words) {
    super(words);
    this.study = study;
    found = study.found();
    present = study.present();
    asFound = study.asFound();
    boolean crowded = study.faults().size() > 4;
    facts(crowded ? "service.now/service.does/service.row." : "service.now/facts/service.fact.");
    whatItIs("service.now/service.is/");
    whatItDoes("service.now/service.does/");
    table("service.compared/service");
  }

  private void facts(String in) {
    figure(in + "days", Figure.roughDays(365 / asFound.years().regenerations().mean()));
    figure(in + "salt", Figure.roughly(asFound.salt()));
    figure(in + "out", Figure.roughDays(asFound.years().hardDays().mean()));
    figure(in + "cost", Figure.about(Money.total(asFound.costLines().values())));
  }

  private void whatItIs(String in) {
    String bed = words.resin(found.resinVolume());
    value(in + "service.bed", present.resinVolume().isPresent() ? bed : assumed(bed));
    present.rated().ifPresent(rated -> figure(in + "service.rated", Figure.of(rated)));
    value(
        in + "service.age",
        present.ageYears().isEmpty()
            ? words.text("service.unknown")
            : words.text("service.years", Figure.of(present.ageYears().getAsInt())));
    value(in + "service.control", term(found.control()));
    setting(in);
    if (found.control() != Control.METERED_AT_ONCE) {
      String hour = hour(present.hour().orElse(2));
      value(in + "service.hour", present.hour().isPresent() ? hour : assumed(hour));
    }
    value(in + "service.each", salt());
    if (present.regenerant() == Regenerant.POTASSIUM_CHLORIDE) {
      value(in + "service.regenerant", term(present.regenerant()));
    }
  }

  private String assumed(String value) {
    return words.text("service.taken", Figure.of(value));
  }

  private String hour(int hour) {
    return words.figure(Figure.of(LocalTime.of(hour, 0)));
  }

  private void setting(String in) {
    PresentControl control = present.control();
    if (control instanceof PresentControl.Clock clock) {
      value(in + "service.setting", words.text("service.every", Figure.days(clock.days(), 0)));
    } else if (control instanceof PresentControl.Weekdays weekdays) {
      value(in + "service.setting", words.weekdays(weekdays.days()));
    } else if (control instanceof ByVolume volume) {
      value(in + "service.setting", words.text("service.after", Figure.of(volume.set())));
    } else if (control instanceof ByHardness told) {
      figure(in + "service.told", Figure.of(told.hardness()));
      told.capacity().ifPresent(set -> figure(in + "service.capacity", Figure.of(set)));
    }
    if (control instanceof PresentControl.Metered meter) {
      meter.reserve().ifPresent(held -> figure(in + "service.held", Figure.of(held)));
      meter.longestDays().ifPresent(days -> figure(in + "service.latest", Figure.days(days, 0)));
    }
  }

  private String salt() {
    Figure mass = Figure.of(found.saltPerRegeneration(), 1);
    if (present.salt().isEmpty()) {
      return found.saltKnown()
          ? words.figure(mass)
          : range(mass, Figure.of(saltAt(0), 1), Figure.of(saltAt(1), 1));
    } else if (present.salt().get() instanceof PresentSalt.Refill refill) {
      return words.text("service.given", mass, Figure.of(refill.time()));
    } else if (present.salt().get() instanceof PresentSalt.Dosed dosed) {
      return words.text("service.dosed", mass, Figure.of(dosed.dosage()));
    }
    return words.figure(mass);
  }

  private Mass saltAt(double place) {
    return found.settings(FoundUnknowns.at(0, place)).salt();
  }

  private void whatItDoes(String in) {
    figure(in + "service.usable", Figure.roughly(found.usable()));
    figure(in + "service.unused", Figure.percent(asFound.years().unusedShare()));
    figure(in + "service.water", Figure.roughly(asFound.years().water()));
    Volume hard =
        Volume.ofGallons(
            asFound.years().hardGallons().mean() + asFound.years().cycleGallons().mean());
    figure(in + "service.hard", Figure.roughly(hard));
    present.saltBought().ifPresent(salt -> figure(in + "service.bought", Figure.of(salt, 0)));
    present.hardnessAfter().ifPresent(left -> figure(in + "service.behind", Figure.of(left)));
  }

  private void table(String in) {
    List<ServiceOption> columns = new ArrayList<>(List.of(asFound));
    study
        .option(Kind.SET_RIGHT)
        .filter(right -> !right.bed().equals(asFound.bed()))
        .ifPresent(columns::add);
    if (!found.control().metered()) {
      study.option(Kind.METERED).ifPresent(columns::add);
    }
    study.option(Kind.REPLACED).ifPresent(columns::add);
    columns.forEach(option -> head(in + "/" + option.kind(), heading(option)));
    lines(in, columns);
  }

  private void lines(String in, List<ServiceOption> columns) {
    row(in, "setting", columns, this::set);
    boolean waits = columns.stream().anyMatch(each -> !hour(each).equals("–"));
    if (waits && columns.stream().map(each -> each.bed().hour()).distinct().count() > 1) {
      row(in, "hour", columns, this::hour);
    }
    row(in, "days", columns, o -> words.figure(days(365 / o.years().regenerations().mean())));
    row(in, "each", columns, o -> words.figure(Figure.of(o.bed().salt(), 1)));
    row(in, "salt", columns, o -> ranged(o.saltPounds(), v -> Figure.roughly(Mass.ofPounds(v))));
    row(in, "water", columns, o -> ranged(o.waterGallons(), this::gallons));
    row(in, "out", columns, o -> ranged(o.runOutDays(), this::days));
    row(in, "hard", columns, o -> ranged(o.hardGallons(), this::gallons));
    row(in, "cost", columns, o -> ranged(o.costs(), v -> money(o, v)));
    if (columns.size() > 1) {
      prices(in, columns);
    }
  }

  private void prices(String in, List<ServiceOption> columns) {
    row(in, "price", columns, this::price);
    Function<ServiceOption, String> right = o -> o.payback().map(words::payback).orElse("–");
    if (columns.stream().anyMatch(o -> o.kind() == Kind.SET_RIGHT) && said(columns, right)) {
      row(in, "payback", columns, right);
    }
    Function<ServiceOption, String> was =
        o -> o.paybackAgainstFound().map(words::payback).orElse("–");
    if (said(columns, was)) {
      row(in, "paybackFound", columns, was);
    }
  }

  private static boolean said(List<ServiceOption> columns, Function<ServiceOption, String> cell) {
    return columns.stream().anyMatch(option -> !cell.apply(option).equals("–"));
  }

  private void row(
      String in, String key, List<ServiceOption> columns, Function<ServiceOption, String> cell) {
    String line = "service.row." + key;
    for (ServiceOption option : columns) {
      value(in + "/" + line + "/" + option.kind(), words.text(line), cell.apply(option));
    }
  }

  private String heading(ServiceOption option) {
    Kind advised =
        switch (study.advice()) {
          case LEAVE -> Kind.AS_FOUND;
          case SET_RIGHT -> Kind.SET_RIGHT;
          case ADD_METER -> Kind.METERED;
          case REPLACE -> Kind.REPLACED;
        };
    String key = "service.kind." + option.kind();
    String head =
        option.kind() == Kind.REPLACED
            ? words.text(key, Figure.of(option.candidate().orElseThrow().softener().name()))
            : words.text(key);
    return advised == option.kind() ? words.text("service.advised", Figure.of(head)) : head;
  }

  private String set(ServiceOption option) {
    BedSettings bed = option.bed();
    return switch (bed.control()) {
      case CLOCK -> words.text("service.every", Figure.days(bed.days(), 0));
      case WEEKDAYS -> words.weekdays(bed.weekdays());
      default -> words.text("service.after", Figure.of(bed.set()));
    };
  }

  private String hour(ServiceOption option) {
    return option.bed().control() == Control.METERED_AT_ONCE ? "–" : hour(option.bed().hour());
  }

  private String price(ServiceOption option) {
    if (option.kind() == Kind.AS_FOUND) {
      return "–";
    }
    return option
        .price()
        .map(Money::toBigMoney)
        .map(words::money)
        .orElseGet(() -> words.text("service.unpriced"));
  }

  private Figure days(double days) {
    return Figure.roughDays(days);
  }

  private Figure gallons(double gallons) {
    return Figure.roughly(Volume.ofGallons(gallons));
  }

  private static Figure money(ServiceOption option, double units) {
    return Figure.about(Money.of(option.cost().getCurrencyUnit(), units, RoundingMode.HALF_UP));
  }

  /** Without a range that is narrower than a fiftieth of what it is about. */
  private String ranged(Spread spread, DoubleFunction<Figure> figure) {
    Figure middle = figure.apply(spread.mean());
    return spread.high() - spread.low() < spread.mean() / 50
        ? words.figure(middle)
        : range(middle, figure.apply(spread.low()), figure.apply(spread.high()));
  }

  private String range(Figure middle, Figure low, Figure high) {
    String from = words.number(low);
    String to = words.number(high);
    return from.equals(to)
        ? words.figure(middle)
        : words.text("year.range", middle, Figure.of(from), Figure.of(to));
  }

  /** What is advised, in words: nothing is to be set where nothing is set wrong. */
  static String advice(ServiceStudy study, Wording words) {
    boolean other =
        study
            .option(Kind.SET_RIGHT)
            .filter(right -> !right.bed().equals(study.asFound().bed()))
            .isPresent();
    if (other || study.advice() == Advice.LEAVE || study.advice() == Advice.REPLACE) {
      return words.advice(study.advice());
    }
    return words.text(study.advice() == Advice.ADD_METER ? "service.meterAlone" : "service.check");
  }
}
