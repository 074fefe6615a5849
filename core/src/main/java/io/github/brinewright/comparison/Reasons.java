package io.github.brinewright.comparison;

import io.github.brinewright.comparison.Reason.Kind;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Tells candidates of one ranking apart by what really decides between them. */
final class Reasons {
  private final Ranking ranking;
  private final Candidate chosen;

  /**
   * @param chosen the recommended one
   */
  Reasons(Ranking ranking, Candidate chosen) {
    this.ranking = ranking;
    this.chosen = chosen;
  }

  /** Why the chosen one is recommended. */
  Reason why(int unitsCompared, int unitsThatFit, Candidate cheapest) {
    if (unitsThatFit == 1 && cheapest.equals(chosen)) {
      Kind only = unitsCompared == 1 ? Kind.ONLY_COMPARED : Kind.ONLY_FEASIBLE;
      return Reason.of(only, Figure.of(unitsCompared));
    }
    return cheapest.equals(chosen) ? lowestCost(unitsThatFit) : instead(unitsThatFit, cheapest);
  }

  private Reason lowestCost(int unitsThatFit) {
    Candidate next = next();
    Kind kind =
        chosen.offer().isUnpriced()
            ? Kind.LOWEST_RUNNING_COST
            : Ranking.level(next, chosen) ? Kind.LOWEST_COST_NARROWLY : Kind.LOWEST_COST;
    return Reason.of(kind, figures(unitsThatFit, next));
  }

  /** The cheapest of the other units that keep every limit. */
  private Candidate next() {
    List<Candidate> others =
        ranking.order().stream()
            .filter(Candidate::feasible)
            .filter(one -> !one.softener().equals(chosen.softener()))
            .toList();
    return Ranking.cheapest(others);
  }

  private Reason instead(int unitsThatFit, Candidate cheapest) {
    Figure[] figures = figures(unitsThatFit, cheapest);
    Optional<MarginCheck> margin = margin(cheapest);
    if (margin.isPresent()) {
      return Reason.of(Kind.KEEPS_MARGIN, margin.get(), figures);
    }
    return Reason.of(
        switch (leveller(cheapest)) {
          case PRICE -> Kind.LEVEL_LOWER_PRICE;
          case HARD_WATER -> Kind.LEVEL_LESS_HARD_WATER;
          case SALT -> Kind.LEVEL_LESS_SALT;
          case WATER -> Kind.LEVEL_LESS_WATER;
          case NAME -> Kind.LEVEL_FIRST_NAME;
        },
        figures);
  }

  /** Why the chosen one breaks what it breaks. */
  List<Reason> givenUp() {
    return chosen.marginsBroken().stream().map(this::givenUp).toList();
  }

  private Reason givenUp(MarginCheck check) {
    boolean others = ranking.ranks(check.margin());
    return Reason.of(others ? Kind.GIVES_MARGIN_UP : Kind.NONE_KEEPS_MARGIN, check);
  }

  private Figure[] figures(int unitsThatFit, Candidate other) {
    return new Figure[] {
      Figure.of(unitsThatFit),
      Figure.of(chosen.life().years()),
      Figure.about(chosen.life().total()),
      apart(other),
      named(other)
    };
  }

  /** The other unit by its name, or what sets another setting of the chosen one apart. */
  private Figure named(Candidate other) {
    return other.softener().equals(chosen.softener())
        ? Figure.of(SameUnit.ANOTHER_SETTING)
        : Figure.of(other.softener().name());
  }

  private Figure apart(Candidate other) {
    return Figure.apart(other.life().total(), chosen.life().total());
  }

  /** How another candidate differs from the chosen one, by what decides between them. */
  Reason against(Candidate other) {
    Optional<Finding> limit = other.broken().stream().findFirst();
    if (limit.isPresent()) {
      return Reason.breaksLimit(limit.get());
    }
    return margin(other).map(check -> byMargin(other, check)).orElseGet(() -> byCost(other));
  }

  /** The margin that another candidate breaks, or misses by more; empty when costs decide. */
  private Optional<MarginCheck> margin(Candidate other) {
    if (ranking.burden(other).compareTo(ranking.burden(chosen)) <= 0) {
      return Optional.empty();
    }
    return ranking.broken(other).stream().max(Comparator.comparingDouble(this::further));
  }

  private double further(MarginCheck check) {
    return chosen
        .margin(check.margin())
        .filter(MarginCheck::broken)
        .map(own -> check.excess() - own.excess())
        .orElse(1 + check.excess());
  }

  private Reason byMargin(Candidate other, MarginCheck check) {
    boolean cheaper = other.life().total().isLessThan(chosen.life().total());
    return Reason.of(
        cheaper ? Kind.CHEAPER_BEYOND_MARGIN : Kind.DEARER_BEYOND_MARGIN,
        check,
        differences(other));
  }

  private Reason byCost(Candidate other) {
    Money dearer = Ranking.price(other).minus(Ranking.price(chosen));
    Candidate leader = Ranking.cheapest(ranking.burdenedLike(chosen));
    if (Ranking.level(other, leader)) {
      return byLevel(other);
    }
    Kind kind =
        dearer.isZero()
            ? Kind.SAME_TO_BUY
            : dearer.isNegative() ? Kind.CHEAPER_TO_BUY : Kind.DEARER_TO_BUY;
    return Reason.of(kind, differences(other));
  }

  private Reason byLevel(Candidate other) {
    List<Figure> figures = new ArrayList<>(List.of(differences(other)));
    Leveller leveller = leveller(other);
    figures.addAll(leveller.figures(chosen, other));
    return Reason.of(
        switch (leveller) {
          case PRICE -> Kind.LEVEL_BUT_DEARER_TO_BUY;
          case HARD_WATER -> Kind.LEVEL_BUT_MORE_HARD_WATER;
          case SALT -> Kind.LEVEL_BUT_MORE_SALT;
          case WATER -> Kind.LEVEL_BUT_MORE_WATER;
          case NAME -> Kind.LEVEL_BUT_LATER_NAME;
        },
        figures.toArray(Figure[]::new));
  }

  private Leveller leveller(Candidate other) {
    Candidate leader = Ranking.cheapest(ranking.burdenedLike(chosen));
    return Leveller.between(chosen, other, leader);
  }

  private Figure[] differences(Candidate other) {
    return new Figure[] {
      Figure.of(Ranking.price(other).minus(Ranking.price(chosen)).abs()),
      apart(other),
      Figure.of(chosen.life().years()),
      Figure.days(other.design().year().orElseThrow().daysBetween(), 1),
      Figure.days(chosen.design().year().orElseThrow().daysBetween(), 1)
    };
  }
}
