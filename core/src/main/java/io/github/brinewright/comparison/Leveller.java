package io.github.brinewright.comparison;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What decides among candidates whose costs are level, in this order. */
enum Leveller {
  /** Lower price to buy. */
  PRICE(Comparator.comparing(Ranking::price)) {
    @Override
    List<Figure> figures(Candidate candidate) {
      return List.of(Figure.of(Ranking.price(candidate)));
    }
  },
  /** Less hard water, compared at two figures. */
  HARD_WATER(Comparator.comparing(candidate -> twoFigures(Ranking.hardWater(candidate)))) {
    @Override
    List<Figure> figures(Candidate candidate) {
      return List.of(Figure.of(Ranking.hardWater(candidate), 0));
    }
  },
  /** Less salt a year. */
  SALT(Comparator.comparing(Ranking::yearlySalt)) {
    @Override
    List<Figure> figures(Candidate candidate) {
      return List.of(Figure.of(Ranking.yearlySalt(candidate), 0));
    }
  },
  /** Less regeneration water a year. */
  WATER(Comparator.comparing(Ranking::yearlyWater)) {
    @Override
    List<Figure> figures(Candidate candidate) {
      return List.of(Figure.of(Ranking.yearlyWater(candidate), 0));
    }
  },
  /** The order of the names, so that the choice is the same each time. */
  NAME(Comparator.comparing(Ranking::id)) {
    @Override
    List<Figure> figures(Candidate candidate) {
      return List.of(Figure.of(candidate.softener().name()));
    }
  };

  private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);

  private final Comparator<Candidate> less;

  Leveller(Comparator<Candidate> less) {
    this.less = less;
  }

  abstract List<Figure> figures(Candidate candidate);

  /** What both have of it. */
  List<Figure> figures(Candidate chosen, Candidate other) {
    return Stream.of(other, chosen).flatMap(one -> figures(one).stream()).toList();
  }

  /** All of them one after the other. */
  static Comparator<Candidate> order() {
    return Stream.of(values()).map(each -> each.less).reduce(Comparator::thenComparing).get();
  }

  /** The first in which the chosen one is better. */
  static Leveller between(Candidate chosen, Candidate other, Candidate leader) {
    if (!Ranking.littleSalt(other, leader)) {
      return SALT;
    }
    return Stream.of(values())
        .filter(each -> each.less.compare(chosen, other) < 0)
        .findFirst()
        .orElse(NAME);
  }

  private static double twoFigures(Volume hard) {
    return BigDecimal.valueOf(hard.gallons()).round(TWO_FIGURES).doubleValue();
  }
}
