package io.github.brinewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import io.github.brinewright.internal.visit.Folder;
import io.github.brinewright.job.JobFolder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A row is written when that is asked for; everything else stays byte for byte. */
class SavingTest {
  @TempDir Path temporary;
  private Served served;
  private Path sites;

  @BeforeEach
  void start() throws Exception {
    served = new Served(temporary);
    sites = served.folder.resolve("sites.csv");
  }

  @AfterEach
  void end() {
    served.close();
  }

  private Map<String, String> of(String home, String... more) throws Exception {
    Map<String, String> values = new HashMap<>();
    values.put("home", home.isEmpty() ? "" : Folder.nameOf(home));
    values.put("version", served.version());
    for (int i = 0; i < more.length; i += 2) {
      values.put(more[i], more[i + 1]);
    }
    return values;
  }

  private Map<String, Object> fields(HttpResponse<byte[]> response) throws Exception {
    return JSON.std.mapFrom(response.body());
  }

  @Test
  void onlyTheCellThatWasChangedIsWritten() throws Exception {
    String before = Files.readString(sites);

    HttpResponse<byte[]> response = served.post("save", of("H02", "field.people", "2"));

    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(Files.readString(sites))
        .isEqualTo(before.replace("2026-09-15,1,1,,3600", "2026-09-15,2,1,,3600"))
        .isNotEqualTo(before);
    assertThat(fields(response).get("version")).isEqualTo(served.version());
  }

  @Test
  void answeringWritesNothing() throws Exception {
    byte[] before = Files.readAllBytes(sites);

    served.post("answer", of("H02", "field.people", "2"));
    served.post("show", of("H02", "field.people", "2"));
    served.post("document/proposal", of("H02", "field.people", "2"));

    assertThat(sites).hasBinaryContent(before);
    try (var files = Files.list(served.folder)) {
      assertThat(files).hasSize(8);
    }
  }

  /** Endings of lines, quotes, a mark at the beginning and blank lines, as other programs write. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void otherRowsStayByteForByte(String end) throws Exception {
    String head = "\uFEFFpeople,site_id, notes ,hardness_gpg" + end;
    String first = "3,A,\"a \"\"quoted\"\" note, with comma\",18" + end;
    String row = "\"2\",B,plain,20" + end;
    String last = "4,C,\"two" + end + "lines\",22";
    Files.writeString(sites, head + first + row + end + last);

    HttpResponse<byte[]> response =
        served.post("save", of("B", "field.hardness_gpg", "21", "field.notes", "said \"yes\", so"));

    assertThat(response.statusCode())
        .as(new String(response.body(), StandardCharsets.UTF_8))
        .isEqualTo(200);
    String changed = "\"2\",B,\"said \"\"yes\"\", so\",21" + end;
    assertThat(Files.readString(sites)).isEqualTo(head + first + changed + end + last);
  }

  @Test
  void aNewHomeIsANewRowAndANewColumnStandsAtTheEnd() throws Exception {
    Files.writeString(sites, "site_id,people,hardness_gpg\r\nA,3,18");
    Map<String, String> values =
        of("", "field.site_id", "B", "field.people", "2", "field.hardness_gpg", "9");
    values.put("field.fixtures_shower", "2");

    HttpResponse<byte[]> response = served.post("save", values);

    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(Files.readString(sites))
        .isEqualTo("site_id,people,hardness_gpg,fixtures\r\nA,3,18,\r\nB,2,9,2 shower\r\n");
    assertThat(fields(response).get("home")).isEqualTo(Folder.nameOf("B"));
    assertThat(JobFolder.read(served.folder).problems()).isEmpty();
  }

  @Test
  void aFolderWithoutHomesGetsItsFirst() throws Exception {
    Files.delete(sites);

    assertThat(
            served
                .post(
                    "save",
                    of("", "field.site_id", "A", "field.people", "2", "field.hardness_gpg", "9"))
                .statusCode())
        .isEqualTo(200);
    assertThat(JobFolder.read(served.folder).job().orElseThrow().home("A")).isPresent();
  }

  /** Two windows: what the second one would overwrite is told, and both keep their answers. */
  @Test
  void aFileChangedMeanwhileIsNoticed() throws Exception {
    Map<String, String> one = of("H02", "field.people", "2");
    Map<String, String> other = of("H04", "field.people", "5");
    assertThat(served.post("save", one).statusCode()).isEqualTo(200);
    byte[] after = Files.readAllBytes(sites);

    HttpResponse<byte[]> response = served.post("save", other);

    assertThat(response.statusCode()).isEqualTo(409);
    assertThat(sites).hasBinaryContent(after);
    Map<String, Object> told = fields(response);
    assertThat(told.get("said").toString()).contains("has been changed elsewhere");
    other.put("version", told.get("version").toString());
    assertThat(served.post("save", other).statusCode()).isEqualTo(200);
    assertThat(Files.readString(sites)).contains("2026-09-15,2,1,", "2026-09-16,5,1,");
  }

  @Test
  void aRowWithErrorsIsNotWritten() throws Exception {
    byte[] before = Files.readAllBytes(sites);
    for (Map<String, String> wrong :
        List.of(
            of("H02", "field.people", "0"),
            of("H02", "field.site_id", "H01"),
            of("", "field.site_id", "H02", "field.people", "2", "field.hardness_gpg", "9"),
            of("", "field.people", "2", "field.hardness_gpg", "9"),
            of("H02", "field.notes", "=HYPERLINK(1)"))) {
      HttpResponse<byte[]> response = served.post("save", wrong);
      assertThat(response.statusCode()).as(wrong.toString()).isEqualTo(422);
      assertThat((Map<?, ?>) fields(response).get("wrong")).isNotEmpty();
    }
    assertThat(sites).hasBinaryContent(before);
  }

  /** Errors of other homes are theirs. */
  @Test
  void errorsOfOtherRowsDoNotHinder() throws Exception {
    Files.writeString(sites, "site_id,people,hardness_gpg\nA,0,18\nB,2,9\n");

    assertThat(served.post("save", of("B", "field.people", "3")).statusCode()).isEqualTo(200);
    assertThat(Files.readString(sites)).isEqualTo("site_id,people,hardness_gpg\nA,0,18\nB,3,9\n");
  }
}
