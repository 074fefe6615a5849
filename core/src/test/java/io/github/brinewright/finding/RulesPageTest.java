package io.github.brinewright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.GeneratedPage;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of all rules. */
class RulesPageTest {
  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  private static List<Rule<?>> rules() {
    return Stream.<Rule<?>>concat(
            Arrays.stream(HomeRule.values()), Arrays.stream(DesignRule.values()))
        .toList();
  }

  @Test
  void aPageOfAllRulesIsKept() throws IOException {
    StringBuilder page = new StringBuilder("# Rules\n\n");
    page.append("Written from the code. A figure stands where a number in braces is.\n\n");
    reasons(page);
    page.append("\n# Findings\n\nThe first look at the home, the others at an option.\n\n");
    page.append("| code | means | words | source |\n|---|---|---|---|\n");
    Properties texts = texts();
    for (Rule<?> rule : rules()) {
      page.append("| ").append(rule.code());
      page.append(" | ").append(words.term(rule.severity()).toLowerCase(Locale.ROOT));
      page.append(" | ").append(texts.getProperty("finding." + rule.code()));
      page.append(" | ").append(words.source(rule.source())).append(" |\n");
    }
    page.append("\n# Cautions\n\nThe first two and one on sodium stand on every proposal.\n\n");
    for (Caution caution : Caution.values()) {
      page.append("- ").append(words.caution(caution)).append('\n');
    }
    GeneratedPage.keep("RULES.md", page.toString());
  }

  private void reasons(StringBuilder page) throws IOException {
    page.append("# Reasons of a verdict\n\nThe gravest decides; all are listed.\n\n");
    page.append("| code | verdict | words | what would change it | source |\n");
    page.append("|---|---|---|---|---|\n");
    Properties texts = texts();
    for (VerdictRule rule : VerdictRule.values()) {
      String key = "finding." + rule.code();
      page.append("| ").append(rule.code());
      page.append(" | ").append(words.term(rule.kind()).toLowerCase(Locale.ROOT));
      page.append(" | ").append(texts.getProperty(key));
      page.append(" | ").append(texts.getProperty(key + ".change"));
      page.append(" | ").append(words.source(rule.source())).append(" |\n");
    }
  }

  @Test
  void codesAreUnique() {
    assertThat(Stream.concat(rules().stream(), Arrays.stream(VerdictRule.values())))
        .extracting(Rule::code)
        .doesNotHaveDuplicates();
  }

  private static Properties texts() throws IOException {
    Properties texts = new Properties();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(Wording.class.getResourceAsStream("messages.properties")),
            StandardCharsets.UTF_8)) {
      texts.load(in);
    }
    return texts;
  }
}
