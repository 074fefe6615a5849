package io.github.brinewright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.exchange.ReopenException;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.JobReading;
import io.github.brinewright.job.Logo;
import io.github.brinewright.job.Problem;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.Reopened;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A place where bytes of others come in. Whatever they are, it ends in words or in a result. */
enum Target {
  SITES("sites.csv"),
  UNITS("units.csv"),
  ITEMS("items.csv"),
  PAYMENTS("payments.csv"),
  TARIFFS("tariffs.csv"),
  RESINS("resins.csv"),
  DEALER("dealer.properties"),
  CARRIED {
    @Override
    byte[] seed() {
      return new CarriedJob("H01", LocalDate.of(2026, 5, 2), DemoFiles.texts()).toJson();
    }

    @Override
    void tryOut(byte[] data) {
      try {
        CarriedJob carried = CarriedJob.fromJson(data);
        assertThat(CarriedJob.fromJson(carried.toJson())).isEqualTo(carried);
        reading(JobFolder.read(JobFiles.of(carried.files())));
      } catch (ReopenException inWords) {
        assertThat(inWords.getMessage()).isNotBlank();
      }
    }
  },
  LOGO {
    @Override
    byte[] seed() {
      return Pixels.png();
    }

    @Override
    void tryOut(byte[] data) {
      try {
        Logo logo = Logo.of("logo.png", data);
        assertThat(Logo.of("logo.png", logo.content())).isEqualTo(logo);
      } catch (Logo.RefusedException inWords) {
        assertThat(inWords.reason()).isNotNull();
      }
    }
  },
  ARGUMENTS {
    @Override
    byte[] seed() {
      return Arguments.SEED.getBytes(StandardCharsets.UTF_8);
    }

    @Override
    void tryOut(byte[] data) {
      Arguments.run(new String(data, StandardCharsets.UTF_8));
    }
  },
  DOCUMENT {
    @Override
    byte[] seed() {
      return new byte[0];
    }

    @Override
    boolean takesDecisions() {
      return true;
    }

    @Override
    void tryOut(byte[] data) {
      try {
        Reopened again = Reopened.read(ChangedDocument.of(new Choices(data)));
        reading(again.reading());
        again.problems().forEach(each -> again.describe(each, "x.pdf"));
        again.comparison();
        again.atPricesOf(JobFiles.of(DemoFiles.texts())).comparison();
      } catch (ReopenException inWords) {
        assertThat(inWords.getMessage()).isNotBlank();
      }
    }
  };

  private final String file;

  Target() {
    this("");
  }

  Target(String file) {
    this.file = file;
  }

  /** A good input. */
  byte[] seed() {
    return DemoFiles.texts().get(file).getBytes(StandardCharsets.UTF_8);
  }

  /** Whether its input is decisions that change a good one, not the input itself. */
  boolean takesDecisions() {
    return false;
  }

  /** Fails with what the library should not have thrown. */
  void tryOut(byte[] data) {
    reading(JobFolder.read(DemoFiles.with(file, data)));
  }

  private static void reading(JobReading reading) {
    for (Locale locale : List.of(Locale.ENGLISH, Locale.FRENCH)) {
      ProblemWords words = new ProblemWords(locale);
      for (Problem problem : reading.problems()) {
        assertThat(words.say(problem)).isNotBlank();
      }
    }
    reading.job().filter(job -> !job.homes().isEmpty()).ifPresent(Target::worked);
  }

  /** One home in ten gets its proposal too, since that takes a hundred times as long. */
  private static void worked(Job job) {
    for (QuotedHome home : job.homes()) {
      var comparison = job.compare(home);
      comparison.whyRecommended();
    }
    QuotedHome first = job.homes().get(0);
    if (Math.floorMod(Map.of(first.site().id(), job.homes().size()).hashCode(), 10) == 0) {
      Proposals.of(job).write(first, LocalDate.of(2026, 5, 2));
    }
  }
}
