package consumers;

import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.ProblemWords;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A job that never was a folder, with mistakes in it, told in three languages. */
final class JobWithProblems implements Consumer {
  private static final String HOMES =
      """
      site_id,customer,hardness_gpg,people,bathrooms
      A1,Invented family,18,3,2
      A2,Another invented family,twenty,400,2
      """;

  @Override
  public String run(Path out) {
    JobReading reading = JobFolder.read(JobFiles.of(Map.of("sites.csv", HOMES)));
    Consumer.require(reading.problems().size() == 2, "two cells are wrong");
    Consumer.require(reading.job().orElseThrow().homes().size() == 1, "the other home is read");
    return Stream.of("en-US", "es-US", "fr-CA")
        .map(tag -> new ProblemWords(Locale.forLanguageTag(tag)))
        .flatMap(words -> reading.problems().stream().map(words::say))
        .collect(Collectors.joining("\n  "));
  }
}
