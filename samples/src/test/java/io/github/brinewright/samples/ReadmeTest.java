package io.github.brinewright.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * What the README shows to programmers is taken from the project of the consumers, which is built
 * and run. Renew it with {@code -Dbrinewright.pages=write}.
 */
class ReadmeTest {
  private static final Path PAGE = Path.of("../README.md");
  private static final String END = "<!-- end -->";

  @Test
  void theExampleIsTheConsumerOfThatName() throws IOException {
    String source =
        Files.readString(Path.of("consumers/src/main/java/consumers/FirstProposal.java"));
    String example = block(between(source, "    // example\n", "    // end\n"));
    assertThat(example.lines().filter(line -> !line.isBlank()).count()).isLessThanOrEqualTo(15);

    keep("example", "java", between(source, "package consumers;\n\n", "/** ") + example);
  }

  @Test
  void theCoordinatesAreThoseOfTheConsumers() throws IOException {
    String pom = Files.readString(Path.of("consumers/pom.xml"));
    String start = "  <dependencyManagement>\n";
    String database = "    <dependency>\n      <groupId>com.h2database</groupId>\n";
    String lines = start + between(pom, start, database) + "  </dependencies>";
    keep("coordinates", "xml", block(lines));
  }

  /** Lines without what all of them are set in by. */
  private static String block(String lines) {
    return lines.stripTrailing().stripIndent() + "\n";
  }

  private static String between(String text, String start, String end) {
    assertThat(text).contains(start);
    int from = text.indexOf(start) + start.length();
    int to = text.indexOf(end, from);
    assertThat(to).as("a line after \"%s\" that reads \"%s\"", start, end).isPositive();
    return text.substring(from, to);
  }

  private static void keep(String name, String language, String block) throws IOException {
    String page = Files.readString(PAGE);
    String start = "<!-- " + name + " -->\n";
    String old = between(page, start, END);
    String fresh = "\n```" + language + "\n" + block + "```\n\n";
    String renewed = page.replace(start + old + END, start + fresh + END);
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(PAGE, renewed);
    }
    assertThat(PAGE).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(renewed);
  }
}
