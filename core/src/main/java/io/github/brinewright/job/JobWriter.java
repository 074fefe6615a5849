package io.github.brinewright.job;

import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.softener.Resin;
import io.github.brinewright.softener.TableCurve;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a job as the files that it is read from again. */
final class JobWriter {
  private JobWriter() {}

  /**
   * The files of a job, read once to see that they can be.
   *
   * @throws IllegalArgumentException when something in it cannot stand in a file
   */
  static JobFiles files(Job job) {
    job.homes().stream().map(QuotedHome::site).forEach(JobWriter::requireReadings);
    JobFiles files = JobFiles.of(texts(job));
    JobReading again =
        job.homes().isEmpty() ? JobFolder.readWithoutHomes(files) : JobFolder.read(files);
    if (!again.problems().isEmpty()) {
      throw new IllegalArgumentException(
          "the job cannot be written as files: "
              + again.problems().stream().map(Problem::toString).collect(Collectors.joining("; ")));
    }
    return files;
  }

  /** Files hold the readings that a known use follows from. */
  private static void requireReadings(Site site) {
    boolean follows =
        site.present()
            .filter(found -> !found.readings().isEmpty() || found.saltBought().isPresent())
            .isPresent();
    if (site.household().knownUse().isPresent() && !follows) {
      throw new IllegalArgumentException(
          "the use that is known of home "
              + site.id()
              + " cannot stand in a file, which holds the readings it follows from;"
              + " give those of its present softener instead");
    }
  }

  private static Map<String, String> texts(Job job) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(DealerCells.FILE, dealer(job));
    List<ResinColumns.Line> resins = resins(job);
    if (!resins.isEmpty()) {
      texts.put(ResinColumns.COLUMNS.file(), ResinColumns.COLUMNS.csv(resins));
    }
    texts.put(UnitColumns.COLUMNS.file(), UnitColumns.COLUMNS.csv(job.prices().offers()));
    if (!job.prices().items().isEmpty()) {
      texts.put(ItemColumns.COLUMNS.file(), ItemColumns.COLUMNS.csv(job.prices().items()));
    }
    if (!job.prices().ways().isEmpty()) {
      texts.put(PaymentColumns.COLUMNS.file(), PaymentColumns.COLUMNS.csv(job.prices().ways()));
    }
    if (!job.tariffs().isEmpty()) {
      texts.put(TariffColumns.COLUMNS.file(), TariffColumns.COLUMNS.csv(job.tariffs()));
    }
    texts.put(SiteColumns.COLUMNS.file(), SiteColumns.COLUMNS.csv(job.homes()));
    job.dealer()
        .pictures()
        .forEach(
            picture ->
                texts.put(picture.file(), Base64.getEncoder().encodeToString(picture.content())));
    return texts;
  }

  private static String dealer(Job job) {
    return DealerCells.text(
        DealerColumns.COLUMNS.cells(new DealerColumns.Source(job.dealer(), job.prices())));
  }

  /** The resins in what is sold and in what is found at the homes. */
  private static Stream<Resin> used(Job job) {
    return Stream.concat(
        job.prices().offers().stream().map(offer -> offer.softener().resin()),
        job.homes().stream()
            .flatMap(home -> home.site().present().flatMap(PresentSoftener::resin).stream()));
  }

  /** The tables of all resins that do not come with the library. */
  private static List<ResinColumns.Line> resins(Job job) {
    Map<String, Resin> own = new LinkedHashMap<>();
    for (Resin resin : used(job).toList()) {
      Resin known = own.getOrDefault(resin.id(), ResinReader.shipped().get(resin.id()));
      if (known == null) {
        own.put(resin.id(), resin);
      } else if (!known.equals(resin)) {
        throw new IllegalArgumentException("two resins have the id \"" + resin.id() + "\"");
      }
    }
    return own.values().stream()
        .map(JobWriter::lines)
        .<ResinColumns.Line>flatMap(List::stream)
        .toList();
  }

  private static List<ResinColumns.Line> lines(Resin resin) {
    if (resin.curve() instanceof TableCurve curve) {
      return curve.points().stream()
          .map(point -> new ResinColumns.Line(resin, curve, point))
          .toList();
    }
    throw new IllegalArgumentException(
        "the curve of resin \"" + resin.id() + "\" is no table, so that no file can hold it");
  }
}
