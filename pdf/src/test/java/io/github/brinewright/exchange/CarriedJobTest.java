package io.github.brinewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.brinewright.exchange.ReopenException.Reason;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarriedJobTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final Map<String, String> FILES =
      Map.of(
          "sites.csv",
          "site_id\nA1\n",
          "dealer.properties",
          "name=Ünal & Søn\n",
          "logo.png",
          "QUJD");

  @Test
  void whatIsWrittenIsReadBack() throws ReopenException {
    CarriedJob ofHome = new CarriedJob("A1", DAY, FILES);
    CarriedJob ofForm = new CarriedJob("", DAY, FILES);

    assertThat(CarriedJob.fromJson(ofHome.toJson())).isEqualTo(ofHome);
    assertThat(CarriedJob.fromJson(ofForm.toJson())).isEqualTo(ofForm);
    assertThat(ofHome.ofForm()).isFalse();
    assertThat(ofForm.ofForm()).isTrue();
  }

  @Test
  void theVersionStandsFirst() {
    assertThat(new String(new CarriedJob("A1", DAY, FILES).toJson(), StandardCharsets.UTF_8))
        .startsWith("{\n  \"version\" : 1,\n  \"site\" : \"A1\",\n  \"date\" : \"2026-05-02\",");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"version\":2,\"date\":\"2026-05-02\",\"files\":{}}        | NEWER_VERSION",
        "{\"version\":99,\"anything\":true}                          | NEWER_VERSION",
        "{\"version\":1.5,\"date\":\"2026-05-02\",\"files\":{}}      | NEWER_VERSION",
        "{\"version\":3000000000,\"files\":{}}                       | NEWER_VERSION",
        "{\"version\":0,\"date\":\"2026-05-02\",\"files\":{}}        | MALFORMED_DATA",
        "{\"version\":\"1\",\"date\":\"2026-05-02\",\"files\":{}}    | MALFORMED_DATA",
        "{\"date\":\"2026-05-02\",\"files\":{}}                      | MALFORMED_DATA",
        "{\"version\":1,\"date\":\"May 2\",\"files\":{}}             | MALFORMED_DATA",
        "{\"version\":1,\"files\":{}}                                | MALFORMED_DATA",
        "{\"version\":1,\"date\":\"2026-05-02\"}                     | MALFORMED_DATA",
        "{\"version\":1,\"date\":\"2026-05-02\",\"files\":[]}        | MALFORMED_DATA",
        "{\"version\":1,                                             | MALFORMED_DATA",
        "[1, 2]                                                      | MALFORMED_DATA",
        "'null'                                                      | MALFORMED_DATA",
        "''                                                          | MALFORMED_DATA",
      })
  void otherDataAreRefusedWithAReason(String json, Reason reason) {
    ReopenException refused =
        catchThrowableOfType(
            ReopenException.class,
            () -> CarriedJob.fromJson(json.getBytes(StandardCharsets.UTF_8)));
    assertThat(refused.reason()).isEqualTo(reason);
    assertThat(refused).hasMessageNotContaining("null");
  }
}
