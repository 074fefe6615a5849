package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.SimulatedYears;
import io.github.brinewright.softener.Control;
import io.github.brinewright.study.DosageStudy;
import io.github.brinewright.study.HomeStudy;
import io.github.brinewright.study.MeterSaving;
import io.github.brinewright.study.Sensitivity;
import io.github.brinewright.study.WhatIf;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What the simulated year says, in sentences.
 *
 * @param study of the home
 * @param subject what the proposal speaks of
 */
record YearFindings(HomeStudy study, Subject subject) {
  List<Phrase> sentences() {
    List<Phrase> all = new ArrayList<>();
    study.meterSaving().map(this::savings).ifPresent(all::add);
    immediateNote().ifPresent(all::add);
    all.add(Phrase.sentences(sensitivity()));
    return all;
  }

  /** What would make it another one, each with its reason, and what the salt setting matters. */
  List<Phrase> reasons() {
    List<Phrase> all = new ArrayList<>();
    study.dosage().map(YearFindings::dosage).ifPresent(all::add);
    study.changes().stream()
        .filter(change -> !change.holds())
        .map(change -> Phrase.sentences(List.of(becomes(change), why(change))))
        .forEach(all::add);
    return all;
  }

  /** Whether only new ones were chosen among. */
  private boolean ofNew() {
    return subject.present().isPresent();
  }

  private SimulatedYears of(Control control) {
    return Objects.requireNonNull(study.controls().get(control));
  }

  private Phrase savings(MeterSaving saving) {
    Phrase saved = new Phrase.Saved(saving);
    return saving.saved().isPositive() && !saving.isLevel()
        ? Phrase.sentences(List.of(saved, payback(saving.saved())))
        : saved;
  }

  private Phrase payback(Money saves) {
    Money extra = study.candidate().offer().meterExtra();
    if (extra.isZero()) {
      return Phrase.NONE;
    }
    double years = extra.getAmount().doubleValue() / saves.getAmount().doubleValue();
    int compared = study.candidate().life().years();
    return years <= compared
        ? Phrase.text("year.payback", Phrase.of(Figure.of(extra)), Phrase.of(Figure.of(years, 1)))
        : Phrase.text(
            "year.noPayback", Phrase.of(Figure.of(extra)), Phrase.of(Figure.of(compared)));
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
      sentences.add(Phrase.text(ofNew() ? "now.holds" : "year.holds", listed(holding)));
    }
    study.changes().stream()
        .filter(change -> !change.holds())
        .map(this::becomes)
        .forEach(sentences::add);
    return sentences;
  }

  /** What would be recommended. */
  private Phrase becomes(Sensitivity change) {
    Phrase what = Phrase.of(change.change());
    String becoming = ofNew() ? "now.becomes" : "year.becomes";
    return change
        .recommended()
        .map(unit -> Phrase.text(becoming, what, Phrase.plain(unit)))
        .orElseGet(() -> Phrase.text("year.becomesNone", what));
  }

  /** By what the unit recommended now falls behind. */
  private Phrase why(Sensitivity change) {
    Phrase now = Phrase.plain(study.candidate().softener().name());
    return change
        .flips()
        .<Phrase>map(reason -> Phrase.text("year.because", now, new Phrase.Because(reason)))
        .orElse(Phrase.NONE);
  }

  private static Phrase listed(List<WhatIf> changes) {
    return new Phrase.Listed(changes.stream().map(Phrase::of).toList());
  }
}
