package io.github.brinewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.internal.visit.Folder;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.ProblemWords;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.proposal.CandidateChoice;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.sizing.ControlOptions;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the page answers is what the library says of the same row. */
class DeskTest {
  @TempDir Path temporary;
  private Served served;

  @BeforeEach
  void start() throws Exception {
    served = new Served(temporary);
  }

  @AfterEach
  void end() {
    served.close();
  }

  private static Map<String, String> of(String home, String... more) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("home", home.isEmpty() ? "" : Folder.nameOf(home));
    values.put("view", "visit");
    for (int i = 0; i < more.length; i += 2) {
      values.put(more[i], more[i + 1]);
    }
    return values;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, String> map(Map<String, Object> answer, String name) {
    return (Map<String, String>) answer.get(name);
  }

  private Job job() {
    return JobFolder.read(served.folder).job().orElseThrow();
  }

  private QuotedHome home(String id) {
    return job().home(id).orElseThrow();
  }

  @Test
  void anAnswerTellsWhatTheLibraryRecommends() throws Exception {
    String name = job().compare(home("H01")).recommended().orElseThrow().softener().name();

    Map<String, Object> answer = served.ask("answer", of("H01"));

    assertThat(answer.get("said").toString()).contains(name);
    assertThat(map(answer, "parts").get("answer")).contains(name, "Ready for a softener");
    assertThat(map(answer, "wrong")).isEmpty();
  }

  @Test
  void aChangedAnswerChangesWhatFollows() throws Exception {
    QuotedHome home = home("H01");
    Job job = job();
    String with7 =
        job.prices()
            .compare(home.site().withPeople(7), home.tariff())
            .recommended()
            .orElseThrow()
            .softener()
            .name();
    assertThat(served.ask("answer", of("H01")).get("said").toString()).doesNotContain(with7);

    Map<String, Object> answer = served.ask("answer", of("H01", "field.people", "7"));

    assertThat(answer.get("said").toString()).contains(with7);
  }

  /** The words of the reader, without the place. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "fr"})
  void aWrongAnswerGetsTheReadersWordsBesideItsField(String language) throws Exception {
    Files.writeString(served.folder.resolve("sites.csv"), "site_id,people,hardness_gpg\nA,0,abc\n");
    ProblemWords words = new ProblemWords(Locale.forLanguageTag(language));
    List<String> said = JobFolder.read(served.folder).problems().stream().map(words::say).toList();

    Map<String, String> wrong = map(served.ask("answer", of("A", "language", language)), "wrong");

    assertThat(wrong).containsOnlyKeys("people", "hardness_gpg");
    assertThat(said.get(0)).endsWith(wrong.get("people"));
    assertThat(wrong.values()).noneMatch(each -> each.contains("sites.csv"));
    assertThat(said).anyMatch(each -> each.endsWith(wrong.get("hardness_gpg")));
  }

  @Test
  void aReportingLimitIsAnAnswer() throws Exception {
    assertThat(map(served.ask("answer", of("H01", "field.iron_mg_per_l", "<0.05")), "wrong"))
        .isEmpty();
    assertThat(map(served.ask("answer", of("H01", "field.iron_mg_per_l", "~5")), "wrong"))
        .containsOnlyKeys("iron_mg_per_l");
  }

  @Test
  void aCommaIsADecimalPointWhereTheLanguageWritesOne() throws Exception {
    Map<String, String> comma = of("H01", "field.iron_mg_per_l", "0,8");

    assertThat(map(served.ask("answer", comma), "wrong")).containsKey("iron_mg_per_l");
    comma.put("language", "fr");
    assertThat(map(served.ask("answer", comma), "wrong")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"H01", "H03", "H06", "H08", "H09", "H11", "S01", "S05"})
  void documentsAreTheBytesThatTheCommandWrites(String id) throws Exception {
    Proposals proposals = Proposals.of(job());

    assertThat(served.post("document/proposal", of(id)).body())
        .isEqualTo(proposals.write(home(id), Served.DAY));
    assertThat(served.post("document/three-sizes", of(id)).body())
        .isEqualTo(proposals.onePage().write(home(id), Served.DAY));
  }

  @Test
  void sheetsAndReportsAreTheBytesThatTheCommandWrites() throws Exception {
    Proposals proposals = Proposals.of(job());
    HttpResponse<byte[]> sheet = served.post("document/settings", of("H01", "unit", "ALDER-15"));

    assertThat(sheet.body())
        .isEqualTo(
            proposals
                .settings(home("H01"), CandidateChoice.ofSoftener("ALDER-15"), Served.DAY)
                .orElseThrow());
    assertThat(sheet.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename*=UTF-8''settings-H01.pdf");
    assertThat(served.post("document/service", of("S02")).body())
        .isEqualTo(proposals.serviceReport(home("S02"), Served.DAY).pdf());
    assertThat(served.post("document/settings", of("S02", "unit", ":METERED")).body())
        .isEqualTo(
            proposals
                .presentSettings(
                    home("S02"),
                    ServiceOption.Kind.METERED,
                    Served.DAY,
                    ControlOptions.on(Served.DAY))
                .orElseThrow());
    assertThat(served.post("document/settings", of("H01", "unit", ":METERED")).statusCode())
        .isEqualTo(422);
    assertThat(served.post("document/service", of("H01")).statusCode()).isEqualTo(422);
    assertThat(served.post("document/settings", of("H01", "unit", "NONE")).statusCode())
        .isEqualTo(422);
  }

  /** What is not yet saved is in the document, as if it stood in the row. */
  @Test
  void aDocumentHasWhatStandsOnThePage() throws Exception {
    byte[] taken = served.post("document/proposal", of("H02", "field.people", "4")).body();
    Path sites = served.folder.resolve("sites.csv");
    String changed = Files.readString(sites).replace("2026-09-15,1,1,", "2026-09-15,4,1,");
    Files.writeString(sites, changed);

    assertThat(taken).isEqualTo(Proposals.of(job()).write(home("H02"), Served.DAY));
  }

  /** All fields as the page shows them, sent back unchanged, are the row as it is written. */
  @Test
  void fieldsSentBackUnchangedChangeNothing() throws Exception {
    for (String id : List.of("H01", "H03", "H08", "S03", "S05")) {
      Map<String, String> all = of(id);
      String page = served.ask("show", of(id)).get("body").toString();
      all.putAll(Fields.in(page));
      assertThat(all).hasSizeGreaterThan(60);

      assertThat(served.post("document/proposal", all).body())
          .as(id)
          .isEqualTo(Proposals.of(job()).write(home(id), Served.DAY));
    }
  }

  @Test
  void twoHundredAskAtOnceAndAllAreAnswered() throws Exception {
    List<CompletableFuture<HttpResponse<byte[]>>> asked = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      Map<String, String> values = of(i % 2 == 0 ? "H01" : "H03", "field.people", "" + (i % 9 + 1));
      asked.add(
          served.client.sendAsync(
              served.request("answer", values), HttpResponse.BodyHandlers.ofByteArray()));
    }
    for (int i = 0; i < 200; i++) {
      HttpResponse<byte[]> answer = asked.get(i).join();
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).isEqualTo(asked.get(i % 18).join().body());
    }
  }

  @Test
  void aTrialChangesNoDocument() throws Exception {
    Map<String, String> tried = of("H01", "try.people", "7", "view", "compare");
    String with7 =
        job()
            .prices()
            .compare(home("H01").site().withPeople(7), home("H01").tariff())
            .recommended()
            .orElseThrow()
            .softener()
            .name();

    assertThat(served.ask("answer", tried).get("said").toString()).contains(with7);
    assertThat(served.post("document/proposal", tried).body())
        .isEqualTo(Proposals.of(job()).write(home("H01"), Served.DAY));
  }
}
