package io.github.brinewright.job;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.softener.Resin;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads a job folder. Only sites.csv must be there; units.csv, resins.csv, tariffs.csv and
 * dealer.properties have built-in defaults.
 */
public final class JobFolder {
  private final JobFiles files;
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private JobFolder(JobFiles files) {
    this.files = files;
  }

  /**
   * Reads the folder and reports all problems at once.
   *
   * @param folder of the job
   */
  public static JobReading read(Path folder) {
    return read(JobFiles.in(folder));
  }

  /**
   * Reads the files of a job and reports all problems at once.
   *
   * @param files of the job
   */
  public static JobReading read(JobFiles files) {
    return new JobFolder(files).read(true);
  }

  /**
   * Reads what the homes of a job share, without the homes: sites.csv need not be there.
   *
   * @param files of the job
   */
  public static JobReading readWithoutHomes(JobFiles files) {
    return new JobFolder(files).read(false);
  }

  private JobReading read(boolean withHomes) {
    if (withHomes && !files.has(SiteReader.SHAPE.file())) {
      problems.add(TextFile.whole(SiteReader.SHAPE.file(), "is not in " + files.place()));
      return new JobReading(Optional.empty(), problems, 0);
    }
    DealerReader.Reading dealer = DealerReader.read(files, problems);
    CurrencyUnit currency = dealer.dealer().currency();
    List<Offer> offers = offers(currency);
    Map<String, Tariff> tariffs = tariffs(currency);
    boolean sharedFilesGood = problems.isEmpty();
    Tariff first = tariffs.values().stream().findFirst().orElse(Tariff.placeholder(currency));
    SiteReader sites = new SiteReader(tariffs, first);
    List<QuotedHome> visits = withHomes ? sites.read(files, problems) : List.of();
    Optional<Job> job =
        sharedFilesGood
            ? Optional.of(
                new Job(
                    visits,
                    PriceList.builder(offers).terms(dealer.terms()).limits(dealer.limits()).build(),
                    dealer.dealer(),
                    List.copyOf(tariffs.values()),
                    notes,
                    files))
            : Optional.empty();
    return new JobReading(job, problems, sites.refused());
  }

  private boolean has(TableShape shape, String otherwise) {
    boolean there = files.has(shape.file());
    if (!there) {
      notes.add("no " + shape.file() + ": " + otherwise);
    }
    return there;
  }

  private List<Offer> offers(CurrencyUnit currency) {
    boolean ownResins = files.has(ResinReader.SHAPE.file());
    Map<String, Resin> resins =
        ownResins ? ResinReader.read(files, problems) : ResinReader.shipped();
    return has(UnitReader.SHAPE, "usual bed sizes with placeholder prices stand in for your own")
        ? new UnitReader(resins, currency).read(files, problems)
        : BuiltInOffers.all(currency);
  }

  private Map<String, Tariff> tariffs(CurrencyUnit currency) {
    return has(TariffReader.SHAPE, "round placeholder prices for water, sewer and salt are used")
        ? TariffReader.read(files, currency, problems)
        : Map.of();
  }
}
