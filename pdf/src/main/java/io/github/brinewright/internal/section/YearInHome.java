package io.github.brinewright.internal.section;

import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.DosageStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.Sensitivity;
import io.github.brinewright.study.WhatIf;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** The simulated year: what each control would take, and whether the recommendation holds. */
public final class YearInHome {
  private final Kit kit;
  private final HomeStudy study;
  private final Wording words;
  private final Tag tag;

  /** The section of a proposal. */
  public YearInHome(Kit kit, HomeStudy study) {
    this.kit = kit;
    this.study = study;
    words = kit.words();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(kit.heading(tag, kit.text("year.heading")));
    blocks.add(
        kit.body(tag, kit.text("year.lead", Figure.of(study.years()))).after(8).keptWithNext());
    blocks.add(table().whole().after(10).keptWithNext());
    blocks.add(new RegenerationDays(kit, study, tag).block().whole().after(12));
    sentences().forEach(text -> blocks.add(kit.body(tag, text).after(6)));
    blocks.add(new CostParts(kit, tag, kit.columns()).block().whole().after(18));
    return Block.stack(blocks);
  }

  private Block table() {
    List<Control> controls = List.copyOf(study.controls().keySet());
    List<Cell> header = new ArrayList<>(List.of(kit.strong(kit.text("year.control"))));
    for (Control control : controls) {
      header.add(kit.strong(name(control)).right());
    }
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(
        row("year.regenerations", o -> range(o.regenerations(), value -> Figure.of(value, 0))));
    rows.add(
        row("year.salt", o -> range(o.saltPounds(), value -> Figure.of(Mass.ofPounds(value), 0))));
    rows.add(
        row(
            "year.water",
            o -> range(o.waterGallons(), value -> Figure.of(Volume.ofGallons(value)))));
    rows.add(
        row(
            "year.hardDays",
            o -> range(o.hardDays(), value -> Figure.of(value, value < 10 ? 1 : 0))));
    rows.add(row("year.unused", o -> words.figure(Figure.percent(o.unusedShare()))));
    rows.add(row("year.cost", o -> words.about(study.costs().get(o.bed().control()))));
    List<Double> shares = new ArrayList<>(List.of(0.25));
    controls.forEach(control -> shares.add(0.75 / controls.size()));
    int marked = 1 + controls.indexOf(study.recommended());
    return new Table(tag.child(Tag.Role.TABLE), shares, header, rows, marked);
  }

  private String name(Control control) {
    return control == study.recommended()
        ? kit.text("year.recommended", Figure.of(control))
        : words.term(control);
  }

  private List<Cell> row(String key, Function<SimulatedYears, String> text) {
    List<Cell> row = new ArrayList<>(List.of(kit.cell(kit.text(key)).heading()));
    study
        .controls()
        .forEach(
            (control, outcome) -> {
              String value = text.apply(outcome);
              boolean bold = control == study.recommended();
              row.add((bold ? kit.strong(value) : kit.cell(value)).right());
            });
    return row;
  }

  private String range(Spread spread, DoubleFunction<Figure> unit) {
    String mean = words.figure(unit.apply(spread.mean()));
    if (spread.high() - spread.low() < 0.5) {
      return mean;
    }
    return kit.text(
        "year.range",
        Figure.of(mean),
        Figure.of(words.number(unit.apply(Math.round(spread.low())))),
        Figure.of(words.number(unit.apply(Math.round(spread.high())))));
  }

  private List<String> sentences() {
    List<String> all = new ArrayList<>();
    study.meter().map(this::savings).ifPresent(all::add);
    immediateNote().ifPresent(all::add);
    study.dosage().map(this::dosage).ifPresent(all::add);
    all.add(sensitivity());
    return all;
  }

  private String savings(Control meter) {
    Money saves = study.meterSaves().orElseThrow();
    if (!saves.isPositive()) {
      return kit.text("year.savesNothing", Figure.about(saves.abs()));
    }
    SimulatedYears clock = study.controls().get(Control.CLOCK);
    SimulatedYears metered = study.controls().get(meter);
    String text =
        kit.text(
            "year.saves",
            Figure.of(clock.salt().minus(metered.salt()), 0),
            Figure.of(clock.water().minus(metered.water())),
            Figure.about(saves));
    return text + payback(saves).map(more -> " " + more).orElse("");
  }

  private Optional<String> payback(Money saves) {
    Money extra = study.candidate().offer().meterExtra();
    if (extra.isZero()) {
      return Optional.empty();
    }
    double years = ratio(extra, saves);
    int compared = study.candidate().life().years();
    return Optional.of(
        years <= compared
            ? kit.text("year.payback", Figure.about(extra), Figure.of(years, 1))
            : kit.text("year.noPayback", Figure.about(extra), Figure.of(compared)));
  }

  private static double ratio(Money extra, Money saves) {
    BigDecimal dividend = extra.getAmount();
    return dividend.doubleValue() / saves.getAmount().doubleValue();
  }

  private Optional<String> immediateNote() {
    Map<Control, SimulatedYears> controls = study.controls();
    if (study.recommended() != Control.METERED_AT_ONCE
        || !controls.containsKey(Control.METERED_AT_NIGHT)) {
      return Optional.empty();
    }
    return Optional.of(
        kit.text(
            "year.immediateNote",
            Figure.of(hardDuringCycle(controls.get(Control.METERED_AT_ONCE))),
            Figure.of(hardDuringCycle(controls.get(Control.METERED_AT_NIGHT)))));
  }

  private static Volume hardDuringCycle(SimulatedYears outcome) {
    return Volume.ofGallons(outcome.cycleGallons().mean());
  }

  private String dosage(DosageStudy dosage) {
    return kit.text(
        "year.dosage",
        Figure.of(dosage.best().dosage()),
        Figure.of(dosage.flat().low()),
        Figure.of(dosage.flat().high()));
  }

  private String sensitivity() {
    List<String> holding =
        study.changes().stream()
            .filter(Sensitivity::holds)
            .map(change -> words.term(change.change()))
            .toList();
    List<String> parts = new ArrayList<>();
    if (!holding.isEmpty()) {
      parts.add(kit.text("year.holds", Figure.of(listed(holding))));
    }
    Map<Optional<String>, List<WhatIf>> others =
        study.changes().stream()
            .filter(change -> !change.holds())
            .collect(
                Collectors.groupingBy(
                    Sensitivity::recommended,
                    LinkedHashMap::new,
                    Collectors.mapping(Sensitivity::change, Collectors.toList())));
    others.forEach(
        (unit, changes) -> {
          String list = listed(changes.stream().map(words::term).toList());
          parts.add(
              unit.map(name -> kit.text("year.becomes", Figure.of(list), Figure.of(name)))
                  .orElseGet(() -> kit.text("year.becomesNone", Figure.of(list))));
        });
    return String.join(" ", parts);
  }

  private String listed(List<String> items) {
    if (items.size() == 1) {
      return items.get(0);
    }
    String last = items.get(items.size() - 1);
    return String.join(", ", items.subList(0, items.size() - 1))
        + " "
        + kit.text("year.and")
        + " "
        + last;
  }
}
