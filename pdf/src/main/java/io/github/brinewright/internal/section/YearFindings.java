package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.DosageStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.Sensitivity;
import io.github.brinewright.study.WhatIf;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * What the simulated year says, in sentences.
 *
 * @param study of the home
 */
record YearFindings(HomeStudy study) {
  List<Phrase> sentences() {
    List<Phrase> all = new ArrayList<>();
    study.meter().map(this::savings).ifPresent(all::add);
    immediateNote().ifPresent(all::add);
    study.dosage().map(YearFindings::dosage).ifPresent(all::add);
    all.add(Phrase.sentences(sensitivity()));
    return all;
  }

  private SimulatedYears of(Control control) {
    return Objects.requireNonNull(study.controls().get(control));
  }

  private Phrase savings(Control meter) {
    Money saves = study.meterSaves().orElseThrow();
    if (!saves.isPositive()) {
      return Phrase.text("year.savesNothing", Phrase.of(Figure.about(saves.abs())));
    }
    SimulatedYears clock = of(Control.CLOCK);
    SimulatedYears metered = of(meter);
    Phrase text =
        Phrase.text(
            "year.saves",
            Phrase.of(Figure.of(clock.salt().minus(metered.salt()), 0)),
            Phrase.of(Figure.of(clock.water().minus(metered.water()))),
            Phrase.of(Figure.about(saves)));
    return Phrase.sentences(List.of(text, payback(saves)));
  }

  private Phrase payback(Money saves) {
    Money extra = study.candidate().offer().meterExtra();
    if (extra.isZero()) {
      return Phrase.NONE;
    }
    double years = extra.getAmount().doubleValue() / saves.getAmount().doubleValue();
    int compared = study.candidate().life().years();
    return years <= compared
        ? Phrase.text(
            "year.payback", Phrase.of(Figure.about(extra)), Phrase.of(Figure.of(years, 1)))
        : Phrase.text(
            "year.noPayback", Phrase.of(Figure.about(extra)), Phrase.of(Figure.of(compared)));
  }

  private Optional<Phrase> immediateNote() {
    if (study.recommended() != Control.METERED_AT_ONCE
        || !study.controls().containsKey(Control.METERED_AT_NIGHT)) {
      return Optional.empty();
    }
    return Optional.of(
        Phrase.text(
            "year.immediateNote",
            hardDuringCycle(Control.METERED_AT_ONCE),
            hardDuringCycle(Control.METERED_AT_NIGHT)));
  }

  private Phrase hardDuringCycle(Control control) {
    return Phrase.of(Figure.of(Volume.ofGallons(of(control).cycleGallons().mean())));
  }

  private static Phrase dosage(DosageStudy dosage) {
    return Phrase.text(
        "year.dosage",
        Phrase.of(Figure.of(dosage.best().dosage())),
        Phrase.of(Figure.of(dosage.flat().low())),
        Phrase.of(Figure.of(dosage.flat().high())));
  }

  private List<Phrase> sensitivity() {
    List<Phrase> sentences = new ArrayList<>();
    List<WhatIf> holding =
        study.changes().stream().filter(Sensitivity::holds).map(Sensitivity::change).toList();
    if (!holding.isEmpty()) {
      sentences.add(Phrase.text("year.holds", listed(holding)));
    }
    Map<Optional<String>, List<WhatIf>> others =
        study.changes().stream()
            .filter(change -> !change.holds())
            .collect(
                Collectors.groupingBy(
                    Sensitivity::recommended,
                    LinkedHashMap::new,
                    Collectors.mapping(Sensitivity::change, Collectors.toList())));
    others.forEach((unit, changes) -> sentences.add(becomes(unit, listed(changes))));
    return sentences;
  }

  private static Phrase becomes(Optional<String> unit, Phrase changes) {
    return unit.map(name -> Phrase.text("year.becomes", changes, Phrase.plain(name)))
        .orElseGet(() -> Phrase.text("year.becomesNone", changes));
  }

  private static Phrase listed(List<WhatIf> changes) {
    return new Phrase.Listed(changes.stream().map(Phrase::of).toList());
  }
}
