package io.github.brinewright.exchange;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Invented homes with a softener, named after what is wrong with it, in a town of its own. */
final class PresentHomes {
  private static final String FILE = "present-homes.csv";

  private PresentHomes() {}

  /** Them, at the prices of the demo town. */
  static Job job() {
    return read(JobFiles.in(DemoTown.FOLDER).with("sites.csv", sites()));
  }

  /** Them, at placeholder prices in yen, without a price list. */
  static Job inYen() {
    return read(JobFiles.of(Map.of("sites.csv", sites(), "dealer.properties", "currency=JPY\n")));
  }

  private static Job read(JobFiles files) {
    JobReading reading = JobFolder.read(files);
    if (!reading.problems().isEmpty()) {
      throw new IllegalStateException(reading.problems().toString());
    }
    return reading.job().orElseThrow();
  }

  private static String sites() {
    try (InputStream in =
        Objects.requireNonNull(PresentHomes.class.getResourceAsStream(FILE), FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }

  /** The study of one of them. */
  static String json(Job job, String id) {
    return ServiceJson.one(
        job.service(job.home(id).orElseThrow()), Wording.of(Locale.US, UnitSystem.US));
  }
}
