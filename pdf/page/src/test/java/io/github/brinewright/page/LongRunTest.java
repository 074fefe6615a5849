package io.github.brinewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.internal.visit.Folder;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Ten minutes of answers, views and documents leave the memory as it was ({@code -P long}). */
@EnabledIfSystemProperty(named = "long", matches = "true")
class LongRunTest {
  /** Less than one document of every kind for each hundred asked. */
  private static final long LEAST_LEAK = 8_000_000;

  @TempDir Path temporary;

  @Test
  void memoryStaysFlat() throws Exception {
    Duration all = Duration.parse(System.getProperty("page.run", "PT10M"));
    try (Served served = new Served(temporary)) {
      ask(served, all.dividedBy(5));
      long before = used();
      int asked = ask(served, all.minus(all.dividedBy(5)));
      long after = used();
      System.out.printf(
          "asked %d; %d KB before, %d KB after%n", asked, before / 1000, after / 1000);
      assertThat(after - before).isLessThan(LEAST_LEAK);
    }
  }

  private static int ask(Served served, Duration time) throws Exception {
    Instant end = Instant.now().plus(time);
    int asked = 0;
    while (Instant.now().isBefore(end)) {
      String home = Folder.nameOf(asked % 2 == 0 ? "H01" : "S02");
      String people = String.valueOf(asked % 9 + 1);
      String view = asked % 3 == 0 ? "compare" : "visit";
      Map<String, String> values =
          Map.of("home", home, "view", view, "field.people", people, "also", "year");
      String path = asked % 20 == 0 ? "document/proposal" : asked % 7 == 0 ? "show" : "answer";
      assertThat(served.post(path, values).statusCode()).isEqualTo(200);
      asked++;
    }
    return asked;
  }

  private static long used() throws InterruptedException {
    for (int i = 0; i < 5; i++) {
      System.gc();
      Thread.sleep(200);
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
