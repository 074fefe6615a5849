package io.github.brinewright.job;

import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Item;
import io.github.brinewright.cost.Offer;
import io.github.brinewright.cost.PaymentWay;
import io.github.brinewright.cost.Tariff;
import io.github.brinewright.home.Place;
import io.github.brinewright.job.Problem.Argument;
import io.github.brinewright.softener.Resin;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Reads a job folder. Only sites.csv must be there; units.csv, resins.csv, tariffs.csv and
 * dealer.properties have built-in defaults, and without items.csv nothing is sold beside a unit.
 */
public final class JobFolder {
  private final JobFiles files;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private final TablesAsCsv tables;

  private JobFolder(JobFiles files, boolean keepsHomes) {
    tables = TablesAsCsv.of(files, problems);
    this.files = new FilesOnceRead(tables.files(), keepsHomes);
  }

  /**
   * Reads the folder and reports all problems at once.
   *
   * @param folder of the job
   * @return the job as far as it can be read, with its problems and notes
   */
  public static JobReading read(Path folder) {
    return read(JobFiles.in(folder));
  }

  /**
   * Reads the files of a job and reports all problems at once.
   *
   * @param files of the job
   * @return the job as far as it can be read, with its problems and notes
   */
  public static JobReading read(JobFiles files) {
    OpenJob open = new JobFolder(files, true).open(true);
    List<QuotedHome> homes = new ArrayList<>();
    List<Problem> problems = new ArrayList<>(open.problems());
    OpenJob.Count count = open.each(row -> homes.add(row.home()), problems::add);
    Job job = open.shared().map(shared -> shared.holding(homes)).orElse(null);
    return new JobReading(job, problems, open.notes(), count.refused());
  }

  /**
   * Reads what the homes of a job share, and leaves the homes to be read one by one. Each shared
   * file is read once, and carried as it was then.
   *
   * @param files of the job
   * @return the job, its homes still to be read
   */
  public static OpenJob open(JobFiles files) {
    return new JobFolder(files, false).open(true);
  }

  /**
   * Reads what the homes of a job share, without the homes: sites.csv need not be there.
   *
   * @param files of the job
   * @return the job as far as it can be read, with its problems and notes
   */
  public static JobReading readWithoutHomes(JobFiles files) {
    OpenJob open = new JobFolder(files, true).open(false);
    return new JobReading(open.shared().orElse(null), open.problems(), open.notes(), 0);
  }

  /**
   * {@return the resins that a softener of a job may hold: those that come with the library, and
   * those of its resins.csv so far as they are free of errors}
   *
   * @param files of the job
   */
  public static List<Resin> resins(JobFiles files) {
    return List.copyOf(new JobFolder(files, true).resins().values());
  }

  private OpenJob open(boolean withHomes) {
    if (!problems.isEmpty()) {
      // Without a table, all that names something in it would be called wrong too.
      return opened(null, null);
    }
    if (withHomes && !files.has(SiteCells.FILE)) {
      Argument place = new Argument.Text(files.place());
      problems.add(Problem.whole(SiteCells.FILE, ProblemCode.NO_FILE, place));
      return opened(null, null);
    }
    DealerDraft dealer = DealerReader.read(files, problems);
    CurrencyUnit currency = dealer.builtDealer().currency();
    Map<String, Resin> resins = resins();
    List<Offer> offers = offers(resins, currency);
    List<Item> items = items(currency);
    List<PaymentWay> ways = ways(currency);
    Map<String, Tariff> tariffs = tariffs(currency);
    Job job =
        problems.isEmpty()
            ? Job.of(
                    noted(
                        PriceList.builder(offers)
                            .items(items)
                            .ways(ways)
                            .terms(dealer.builtTerms())
                            .limits(dealer.builtLimits())
                            .margins(dealer.builtMargins())
                            .build()))
                .readFrom(files)
                .dealer(dealer.builtDealer())
                .tariffs(List.copyOf(tariffs.values()))
                .build()
            : null;
    Tariff first = tariffs.values().stream().findFirst().orElse(Tariff.placeholder(currency));
    Place place = dealer.builtDealer().place();
    return opened(job, withHomes ? new SiteReader(files, resins, tariffs, first, place) : null);
  }

  private OpenJob opened(@Nullable Job job, @Nullable SiteReader sites) {
    return new OpenJob(job, named(), notes, sites, tables.really(SiteCells.FILE));
  }

  /** The problems, each with the name of the file that its table was really read from. */
  private List<Problem> named() {
    return problems.stream().map(problem -> problem.in(tables.really(problem.file()))).toList();
  }

  private boolean has(Columns<?, ?> columns, Note otherwise) {
    boolean there = files.has(columns.file());
    if (!there) {
      notes.add(otherwise);
    }
    return there;
  }

  private Map<String, Resin> resins() {
    return files.has(ResinColumns.COLUMNS.file())
        ? ResinReader.read(files, problems)
        : ResinReader.shipped();
  }

  private List<Offer> offers(Map<String, Resin> resins, CurrencyUnit currency) {
    return has(UnitColumns.COLUMNS, Note.BUILT_IN_UNITS)
        ? new UnitReader(resins, currency).read(files, problems)
        : BuiltInOffers.all(currency);
  }

  private List<Item> items(CurrencyUnit currency) {
    return files.has(ItemColumns.COLUMNS.file())
        ? new ItemReader(currency).read(files, problems)
        : List.of();
  }

  private List<PaymentWay> ways(CurrencyUnit currency) {
    return files.has(PaymentColumns.COLUMNS.file())
        ? PaymentReader.read(files, currency, problems)
        : List.of();
  }

  /** Of two credits that differ, that of payments.csv is offered. */
  private PriceList noted(PriceList prices) {
    Optional<PaymentWay> ofTerms = prices.terms().creditWay(Money.zero(prices.currency()));
    boolean same =
        ofTerms.isEmpty() || prices.credit().filter(way -> alike(way, ofTerms.get())).isPresent();
    if (!same) {
      notes.add(Note.CREDIT_OF_PAYMENTS);
    }
    return prices;
  }

  private static boolean alike(PaymentWay one, PaymentWay other) {
    return one.months() == other.months()
        && one.firstDays() == other.firstDays()
        && one.fee().equals(other.fee())
        && one.yearlyRate().equals(other.yearlyRate())
        && one.depositShare().equals(other.depositShare());
  }

  private Map<String, Tariff> tariffs(CurrencyUnit currency) {
    return has(TariffColumns.COLUMNS, Note.PLACEHOLDER_PRICES)
        ? TariffReader.read(files, currency, problems)
        : Map.of();
  }
}
