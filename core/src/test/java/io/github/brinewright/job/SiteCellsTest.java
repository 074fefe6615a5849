package io.github.brinewright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.NotBlank;
import org.junit.jupiter.api.Test;

class SiteCellsTest {
  @Property(tries = 200)
  void whatIsWrittenIsReadBack(
      @ForAll @NotBlank @CharRange(from = ' ', to = '~') @Chars({'"', ',', ';', 'é', '₃'})
          String customer,
      @ForAll @NotBlank @CharRange(from = '0', to = '9') String people)
      throws IOException {
    Map<String, String> cells =
        Map.of("site_id", "A", "customer", customer.strip(), "people", people);

    JobFiles files = JobFiles.of(Map.of(SiteCells.FILE, SiteCells.csv(cells)));

    assertThat(SiteCells.of(files, "A")).contains(cells);
    assertThat(SiteCells.of(files, "B")).isEmpty();
  }

  @Test
  void columnsThatMustBeThereAreThereThoughEmpty() {
    assertThat(SiteCells.csv(Map.of())).startsWith("site_id,people\n");
    assertThat(SiteCells.csv(Map.of("ph", "7", "customer", " ")))
        .isEqualTo("site_id,people,ph\n,,7\n");
  }

  @Test
  void aJobWithoutHomesSaysSo() {
    JobFiles none = JobFiles.of(Map.of());
    JobFiles broken = JobFiles.of(Map.of(SiteCells.FILE, "site_id,people\n\"A,1\n"));

    assertThatThrownBy(() -> SiteCells.of(broken, "A")).isInstanceOf(IOException.class);
    assertThat(JobFolder.readWithoutHomes(none).job()).isPresent();
    assertThat(JobFolder.read(none).problems()).hasSize(1);
  }
}
