package io.github.brinewright.job;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.study.HomeStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Homes to be quoted, with a dealer and a price list: read from files by {@link JobFolder}, or
 * built from objects. Immutable.
 *
 * <pre>{@code
 * Job job = Job.of(PriceList.of(offers)).dealer(dealer).home(new QuotedHome(site, tariff)).build();
 * Comparison comparison = job.compare(job.homes().get(0));
 * JobFiles files = job.files();
 * }</pre>
 */
public final class Job {
  private final List<QuotedHome> homes;
  private final PriceList prices;
  private final Dealer dealer;
  private final List<Tariff> tariffs;
  private final @Nullable JobFiles origin;

  private Job(Builder builder) {
    origin = builder.origin;
    homes = List.copyOf(builder.homes);
    prices = builder.prices;
    dealer = builder.dealer;
    tariffs = builder.allTariffs();
    JobChecks.check(this);
  }

  /**
   * A job without homes, of an unnamed dealer who sells by a price list.
   *
   * @param prices what the dealer sells, and how
   * @return a builder of the job
   */
  public static Builder of(PriceList prices) {
    return new Builder(prices);
  }

  /** {@return the homes, in their order; of a job that was read, those without errors} */
  public List<QuotedHome> homes() {
    return homes;
  }

  /**
   * {@return the home of an id; empty when there is none}
   *
   * @param siteId id of the home
   */
  public Optional<QuotedHome> home(String siteId) {
    return homes.stream().filter(home -> home.site().id().equals(siteId)).findFirst();
  }

  /** {@return the dealer's offers, terms and limits} */
  public PriceList prices() {
    return prices;
  }

  /** {@return who makes the documents} */
  public Dealer dealer() {
    return dealer;
  }

  /**
   * {@return the dealer, writing in the language of a home}
   *
   * @param home whose language is written
   */
  public Dealer dealerFor(QuotedHome home) {
    return home.language().map(dealer::writing).orElse(dealer);
  }

  /** {@return the tariffs that a home may name; none where placeholder prices stand in} */
  public List<Tariff> tariffs() {
    return tariffs;
  }

  /**
   * Compares the candidates of one home.
   *
   * @param home of this job
   * @return all candidates, best first
   */
  public Comparison compare(QuotedHome home) {
    return prices.compare(home.site(), home.tariff());
  }

  /**
   * Studies a year in the home with its recommended candidate; empty when there is none.
   *
   * @param comparison of a home of this job
   * @return the study; empty when nothing is recommended
   */
  public Optional<HomeStudy> study(Comparison comparison) {
    return HomeStudy.of(comparison, HomeStudy.USUAL_YEARS);
  }

  /**
   * Studies the softener that is already in a home, at the dealer's prices of a meter and a visit.
   * Placeholder prices of {@link BuiltInOffers} are nobody's, so no unit takes its place by them.
   *
   * @param home of this job, whose site has a present softener
   * @return what it does, what is wrong, and what comes of mending it
   * @throws IllegalArgumentException when there is no present softener
   */
  public ServiceStudy service(QuotedHome home) {
    return serviceOf(compare(home));
  }

  /**
   * Studies the softener that is already in the home of a comparison, in the same way.
   *
   * @param comparison of a home of this job
   * @return the study; empty when there is no present softener
   */
  public Optional<ServiceStudy> service(Comparison comparison) {
    return comparison.home().site().present().map(present -> serviceOf(comparison));
  }

  private ServiceStudy serviceOf(Comparison comparison) {
    boolean placeholders = prices.offers().equals(BuiltInOffers.all(prices.currency()));
    return placeholders
        ? ServiceStudy.ofBedAlone(comparison, dealer.servicePrices())
        : ServiceStudy.of(comparison, dealer.servicePrices());
  }

  /**
   * {@return a builder that begins with all that this job has but the files that it was read from}
   */
  public Builder change() {
    return of(prices).dealer(dealer).homes(homes).tariffs(tariffs);
  }

  /**
   * {@return the same job with one home alone, whose documents carry the cells of its row}
   *
   * @param row of the sites.csv of this job
   */
  public Job only(HomeRow row) {
    JobFiles files = files().with(SiteCells.FILE, SiteCells.csv(row.cells()));
    return change().readFrom(files).homes(List.of(row.home())).build();
  }

  /** This job, read without homes, with its homes. */
  Job holding(List<QuotedHome> all) {
    return change().readFrom(files()).homes(all).build();
  }

  /**
   * {@return the files that this job is read from again, as a document carries them: those that it
   * was read from or, for a job built from objects, new ones}
   *
   * @throws IllegalArgumentException when something in it cannot stand in a file, as a resin whose
   *     curve is no table, a name of several lines, or a number outside the range of its column
   */
  public JobFiles files() {
    return origin == null ? JobWriter.files(this) : origin;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Job job
        && homes.equals(job.homes)
        && prices.equals(job.prices)
        && dealer.equals(job.dealer)
        && tariffs.equals(job.tariffs);
  }

  @Override
  public int hashCode() {
    return Objects.hash(homes, prices, dealer, tariffs);
  }

  @Override
  public String toString() {
    return "a job of " + dealer.name() + " with homes " + homes.size();
  }

  /** Collects a job. */
  public static final class Builder {
    private final PriceList prices;
    private final List<QuotedHome> homes = new ArrayList<>();
    private final List<Tariff> tariffs = new ArrayList<>();
    private Dealer dealer = Dealer.UNNAMED;
    private @Nullable JobFiles origin;

    private Builder(PriceList prices) {
      this.prices = prices;
    }

    /** The files that the job was read from. */
    Builder readFrom(JobFiles files) {
      origin = files;
      return this;
    }

    /**
     * Who makes the documents; an unnamed dealer unless set.
     *
     * @param maker whose name, language and currency the documents have
     * @return this builder
     */
    public Builder dealer(Dealer maker) {
      dealer = maker;
      return this;
    }

    /**
     * Adds a home; its tariff comes with it.
     *
     * @param home with its tariff
     * @return this builder
     */
    public Builder home(QuotedHome home) {
      homes.add(home);
      return this;
    }

    /**
     * Adds homes in their order.
     *
     * @param several in the order of the job
     * @return this builder
     */
    public Builder homes(List<QuotedHome> several) {
      homes.addAll(several);
      return this;
    }

    /**
     * Adds a tariff that a home may name.
     *
     * @param tariff with an id of its own
     * @return this builder
     */
    public Builder tariff(Tariff tariff) {
      tariffs.add(tariff);
      return this;
    }

    /**
     * Adds tariffs in their order; the first one holds for homes that name none.
     *
     * @param several each with an id of its own
     * @return this builder
     */
    public Builder tariffs(List<Tariff> several) {
      tariffs.addAll(several);
      return this;
    }

    /**
     * {@return the finished job; later calls of this builder do not change it}
     *
     * @throws IllegalArgumentException when two homes or two tariffs have one id, or prices are in
     *     another currency than the dealer's
     */
    public Job build() {
      return new Job(this);
    }

    /** The tariffs named and those of the homes; none where only placeholder prices are used. */
    private List<Tariff> allTariffs() {
      Tariff placeholder = Tariff.placeholder(dealer.currency());
      if (tariffs.isEmpty() && homes.stream().allMatch(home -> home.tariff().equals(placeholder))) {
        return List.of();
      }
      return Stream.concat(tariffs.stream(), homes.stream().map(QuotedHome::tariff))
          .distinct()
          .toList();
    }
  }
}
