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
import java.util.Objects;

/** Invented homes with a softener, named after what is wrong with it, in a town of its own. */
final class PresentHomes {
  private static final String FILE = "present-homes.csv";

  private PresentHomes() {}

  /** Them, at the prices of the demo town. */
  static Job job() {
    JobReading reading = JobFolder.read(JobFiles.in(DemoTown.FOLDER).with("sites.csv", sites()));
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
