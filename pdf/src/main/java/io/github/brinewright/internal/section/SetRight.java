package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Rough;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What setting a softener right changes: also where it costs more, because hard water was cheap.
 *
 * @param found as it was
 * @param right as it is to be
 */
record SetRight(ServiceOption found, ServiceOption right) {
  private static final double MUCH = 0.25;
  private static final double MUCH_GALLONS = 100;

  List<Phrase> sentences() {
    List<Phrase> sentences = new ArrayList<>();
    sentences.add(
        Phrase.text(
            "service.set",
            FoundSetting.of(right.bed()),
            Phrase.of(Figure.of(right.saltPerRegeneration(), 1))));
    if (found.bed().hour() != right.bed().hour()) {
      LocalTime time = LocalTime.of(right.bed().hour(), 0);
      sentences.add(Phrase.text("service.setHour", Phrase.of(Figure.of(time))));
    }
    if (differ(found.salt().pounds(), right.salt().pounds())) {
      sentences.add(change("service.then.salt", salt(right), salt(found)));
    }
    hardWater().ifPresent(sentences::add);
    sentences.addAll(money());
    return sentences;
  }

  /** The days out of soft water or, where those stay, the hard water. */
  private Optional<Phrase> hardWater() {
    Volume now = right.hardWater().total();
    Volume before = found.hardWater().total();
    if (Math.abs(daysOut(found) - daysOut(right)) >= 1) {
      return Optional.of(daysOut());
    }
    double change = Math.abs(now.gallons() - before.gallons());
    return change < Math.max(MUCH_GALLONS, MUCH * before.gallons())
        ? Optional.empty()
        : Optional.of(change("service.then.hard", Figure.roughly(now), Figure.roughly(before)));
  }

  private Phrase daysOut() {
    Figure before = Figure.roughDays(daysOut(found));
    return Rough.of(daysOut(right)).signum() == 0
        ? Phrase.text("service.then.noneOut", Phrase.of(before))
        : change("service.then.out", Figure.roughDays(daysOut(right)), before);
  }

  private List<Phrase> money() {
    if (Rough.alike(found.cost(), right.cost())) {
      return List.of(Phrase.text("service.then.same"));
    }
    Phrase amount = Phrase.of(Figure.apart(found.cost(), right.cost()));
    if (right.cost().isGreaterThan(found.cost())) {
      boolean less = daysOut(found) - daysOut(right) >= 1;
      return List.of(Phrase.text(less ? "service.then.because" : "service.then.more", amount));
    }
    List<Phrase> sentences = new ArrayList<>(List.of(Phrase.text("service.then.saves", amount)));
    right.paybackAgainstFound().ifPresent(payback -> sentences.add(visit(payback)));
    return sentences;
  }

  private Phrase visit(Payback payback) {
    return Phrase.text(
        "service.then.visit",
        Phrase.of(Figure.of(right.price().orElseThrow())),
        new Phrase.Returned(payback));
  }

  private static double daysOut(ServiceOption option) {
    return option.hardWater().runOutDays();
  }

  private static Figure salt(ServiceOption option) {
    return Figure.roughly(option.salt());
  }

  private static Phrase change(String key, Figure now, Figure before) {
    return Phrase.text(key, Phrase.of(now), Phrase.of(before));
  }

  private static boolean differ(double one, double other) {
    return Rough.of(one).compareTo(Rough.of(other)) != 0;
  }
}
