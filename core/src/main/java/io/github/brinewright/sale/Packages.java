package io.github.brinewright.sale;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.Item;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceStudy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * The packages of a home side by side, and what may be added to any of them. Made of a comparison:
 * the recommended candidate, the one that the customer wished, the cheapest that keeps every limit,
 * the next bigger one, and the softener that is there, so far as they differ and have a price; the
 * first four of these, kept before cheaper, cheaper before bigger. Immutable.
 */
public final class Packages {
  /** The most that stand side by side. */
  public static final int MOST = 4;

  /** The most totals that are laid out in a table. */
  public static final int MOST_TOTALS = 16;

  private final List<SalePackage> all;
  private final List<Item> extras;

  private Packages(List<SalePackage> all, List<Item> extras) {
    this.all = all;
    this.extras = extras;
  }

  /**
   * {@return the packages of a home without a softener}
   *
   * @param comparison of the home; without a recommended candidate there is no package
   */
  public static Packages of(Comparison comparison) {
    return of(comparison, null, null);
  }

  /**
   * {@return the packages of a home}
   *
   * @param comparison of the home; without a recommended candidate there is no package
   * @param service the study of the softener that is there; null where there is none
   * @param wished a candidate of the comparison that keeps every limit; null where nothing was
   *     wished
   */
  public static Packages of(
      Comparison comparison, @Nullable ServiceStudy service, @Nullable Candidate wished) {
    List<SalePackage> found = new ArrayList<>();
    comparison.recommended().ifPresent(chosen -> found.add(of(PackageKind.RECOMMENDED, chosen)));
    if (!found.isEmpty()) {
      Optional.ofNullable(wished).ifPresent(each -> add(found, PackageKind.WISHED, each));
      Optional.ofNullable(service).flatMap(Packages::kept).ifPresent(found::add);
      comparison
          .cheapestThatFits()
          .ifPresent(cheapest -> add(found, PackageKind.CHEAPEST, cheapest));
      comparison
          .larger()
          .filter(Candidate::feasible)
          .ifPresent(bigger -> add(found, PackageKind.BIGGER, bigger));
    }
    List<SalePackage> chosen =
        found.stream()
            .limit(MOST)
            .sorted(Comparator.comparing(each -> place(each.kind(), service)))
            .toList();
    return new Packages(chosen, comparison.priceList().extras());
  }

  /** The softener that is there comes first where it should be kept. */
  private static int place(PackageKind kind, @Nullable ServiceStudy service) {
    boolean kept = service != null && service.advice() != Advice.REPLACE;
    return kind == PackageKind.KEEP && kept ? -1 : kind.ordinal();
  }

  private static SalePackage of(PackageKind kind, Candidate candidate) {
    return SalePackage.of(kind, candidate);
  }

  private static void add(List<SalePackage> packages, PackageKind kind, Candidate candidate) {
    if (packages.stream().noneMatch(each -> each.candidate().equals(candidate))) {
      packages.add(of(kind, candidate));
    }
  }

  /** The softener that is there, as is advised or set right, where that has a price. */
  private static Optional<SalePackage> kept(ServiceStudy study) {
    ServiceOption.Kind way =
        study.advice() == Advice.ADD_METER
            ? ServiceOption.Kind.METERED
            : ServiceOption.Kind.SET_RIGHT;
    return study
        .option(way)
        .filter(option -> option.price().isPresent())
        .flatMap(
            option ->
                option
                    .candidate()
                    .map(
                        bed ->
                            new SalePackage(
                                PackageKind.KEEP,
                                bed,
                                option.cost(),
                                Optional.of(option.hardWater()))));
  }

  /**
   * {@return the packages in the order of their kinds, the softener that is there first where it
   * should be kept; none where nothing is recommended}
   */
  public List<SalePackage> all() {
    return all;
  }

  /**
   * {@return the package of a kind; empty when it is not offered}
   *
   * @param kind why it is offered
   */
  public Optional<SalePackage> of(PackageKind kind) {
    return all.stream().filter(each -> each.kind() == kind).findFirst();
  }

  /** {@return what the customer may add to any of them} */
  public List<Item> extras() {
    return extras;
  }

  /**
   * {@return each way to choose a package and some of the extras, with its total; empty where there
   * are more than {@value #MOST_TOTALS}, or no extra at all}
   */
  public List<Combination> combinations() {
    int ways = extras().isEmpty() || extras().size() > 4 ? 0 : 1 << extras().size();
    if (ways * all.size() > MOST_TOTALS) {
      return List.of();
    }
    List<Combination> combinations = new ArrayList<>();
    for (int ticks = 0; ticks < ways; ticks++) {
      List<Item> ticked = ticked(ticks);
      all.forEach(each -> combinations.add(new Combination(each, ticked, each.total(ticked))));
    }
    return List.copyOf(combinations);
  }

  private List<Item> ticked(int bits) {
    List<Item> ticked = new ArrayList<>();
    for (int i = 0; i < extras().size(); i++) {
      if ((bits >> i & 1) == 1) {
        ticked.add(extras().get(i));
      }
    }
    return ticked;
  }

  /**
   * A package with what is added, and its total.
   *
   * @param chosen the package
   * @param ticked what is added to it
   * @param total what the customer pays, tax included
   */
  public record Combination(SalePackage chosen, List<Item> ticked, Money total) {
    /**
     * Keeps its own copy of {@code ticked}.
     *
     * @param chosen the package
     * @param ticked what is added to it
     * @param total what the customer pays, tax included
     */
    public Combination {
      ticked = List.copyOf(ticked);
    }
  }
}
