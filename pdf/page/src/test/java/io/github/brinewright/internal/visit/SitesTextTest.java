package io.github.brinewright.internal.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Cells by RFC 4180; a row written anew, with all others as they were. */
class SitesTextTest {
  private static final List<String> ORDER = List.of("site_id", "people", "notes");

  private static String with(String text, String id, Map<String, String> cells) {
    return new SitesText(text).with(id, cells, ORDER);
  }

  @Test
  void theSameCellsAreTheSameText() {
    String text = "site_id,people,notes\r\n\"A\" , 3 ,\"x, \"\"y\"\"\"\r\n\r\nB,2,\r\n";

    assertThat(with(text, "A", Map.of("site_id", "A", "people", "3", "notes", "x, \"y\"")))
        .isEqualTo(text);
  }

  /** A comma or an end of line within quotes ends neither cell nor row. */
  @Test
  void whatIsQuotedIsOneCell() {
    String text = "site_id,notes,people\nA,\"one, two\nB,\",3\nB,\"x\ny\",4\n";

    assertThat(with(text, "A", Map.of("site_id", "A", "notes", "one, two\nB,", "people", "5")))
        .isEqualTo(text.replace(",3", ",5"));
    assertThat(with(text, "B", Map.of("site_id", "B", "notes", "x\ny", "people", "6")))
        .isEqualTo(text.replace(",4", ",6"));
  }

  @Test
  void aCellIsQuotedWhereItMustBe() {
    assertThat(with("site_id,notes\nA,\n", "A", Map.of("site_id", "A", "notes", "a,b\n\"c\"")))
        .isEqualTo("site_id,notes\nA,\"a,b\n\"\"c\"\"\"\n");
  }

  @Test
  void aCellThatIsGoneIsEmptied() {
    assertThat(with("site_id,people\nA,3\nB,4\n", "A", Map.of("site_id", "A")))
        .isEqualTo("site_id,people\nA,\nB,4\n");
  }

  @Test
  void aLineWithoutAnEndGetsOneBeforeANewRow() {
    assertThat(with("site_id,people\nA,3", "", Map.of("site_id", "B", "people", "1")))
        .isEqualTo("site_id,people\nA,3\nB,1\n");
  }

  @Test
  void aShortRowStaysShortInTheCellsThatItHas() {
    assertThat(with("site_id,people\nA,3\nB\n", "A", Map.of("site_id", "A", "people", "5")))
        .isEqualTo("site_id,people\nA,5\nB\n");
  }

  @Test
  void anEmptyTextGetsAHeader() {
    assertThat(with("", "", Map.of("site_id", "B", "people", "1")))
        .isEqualTo("site_id,people\nB,1\n");
  }
}
