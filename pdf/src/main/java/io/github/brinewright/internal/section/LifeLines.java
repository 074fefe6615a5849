package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.trace.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Price and running costs added up over the years, as lines: of the chosen one and its neighbours
 * or, where a softener is in the house, of that as it is and set right.
 *
 * @param subject they belong to
 */
record LifeLines(Subject subject) {
  private static final int MOST = 3;

  /** One line, before it is drawn. */
  private record Sum(String key, Phrase name, Phrase said, IntFunction<Money> after) {
    private static Sum of(Candidate candidate) {
      Phrase name = Phrase.plain(candidate.softener().name());
      return new Sum(candidate.softener().id(), name, name, candidate.life()::after);
    }

    private static Sum of(PresentColumn now) {
      return new Sum(
          PresentColumn.KEY,
          PresentColumn.name(),
          PresentColumn.said(),
          now.study().runningAsFound()::after);
    }

    private static Optional<Sum> setRight(ServiceStudy study) {
      return study
          .option(ServiceOption.Kind.SET_RIGHT)
          .filter(right -> study.advice() != Advice.LEAVE)
          .flatMap(ServiceOption::candidate)
          .map(Sum::setRight);
    }

    private static Sum setRight(Candidate candidate) {
      String key = Row.key(ServiceOption.Kind.SET_RIGHT);
      return new Sum(
          key, PresentTable.name(key), Phrase.text("now.said.SET_RIGHT"), candidate.life()::after);
    }

    private Chart.Series series(int years) {
      return new Chart.Series(key, name, IntStream.rangeClosed(0, years).mapToObj(after).toList());
    }

    private Phrase inWords(int years) {
      return Phrase.text("cost.chart.series", said, start(), about(years));
    }

    /** A price to the cent, as it stands elsewhere; nothing where nothing is bought. */
    private Phrase start() {
      Money price = after.apply(0);
      return price.isZero() ? about(0) : Phrase.of(Figure.of(price));
    }

    private Phrase about(int year) {
      return Phrase.of(Figure.about(after.apply(year)));
    }
  }

  Chart chart() {
    List<Sum> sums = sums();
    int years = subject.explained().life().years();
    List<Phrase> inWords = sums.stream().map(sum -> sum.inWords(years)).toList();
    return new Chart.RunningTotal(
        Phrase.text("cost.chart.alt", Phrase.of(Figure.of(years)), Phrase.sentences(inWords)),
        sums.stream().map(sum -> sum.series(years)).toList(),
        Phrase.text("cost.chart.years"));
  }

  private List<Sum> sums() {
    Optional<PresentColumn> now = subject.present();
    Stream<Sum> present =
        Stream.of(now.map(Sum::of), now.map(PresentColumn::study).flatMap(Sum::setRight))
            .flatMap(Optional::stream);
    Stream<Sum> neighbours =
        Stream.of(subject.comparison().smaller(), subject.comparison().larger())
            .flatMap(Optional::stream)
            .filter(candidate -> candidate.design().feasible())
            .map(Sum::of);
    Stream<Sum> chosen =
        Stream.of(subject.explained())
            .filter(candidate -> candidate.design().feasible())
            .map(Sum::of);
    return Stream.of(chosen, present, neighbours).flatMap(Function.identity()).limit(MOST).toList();
  }
}
