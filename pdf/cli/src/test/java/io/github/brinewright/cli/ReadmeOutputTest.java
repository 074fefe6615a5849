package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What the README shows as printed is what the command above it prints. Renew it with {@code
 * -Dbrinewright.pages=write}.
 */
class ReadmeOutputTest extends CommandTest {
  private static final Path PAGE = Path.of("..", "..", "README.md");
  private static final Pattern SERVICE =
      Pattern.compile(
          "(<!-- service -->\n\n```\n(.*?)```\n\n```\n).*?(```\n\n<!-- end -->)", Pattern.DOTALL);

  @Test
  void theServiceCommandPrintsWhatIsShown() throws IOException {
    String page = Files.readString(PAGE);
    Matcher shown = SERVICE.matcher(page);
    assertThat(shown.find()).as("a command between <!-- service --> and its output").isTrue();
    assertThat(run(shown.group(2).strip().split("\\s+"))).as(err.toString()).isZero();

    String renewed =
        page.substring(0, shown.start())
            + shown.group(1)
            + out.toString().replace("\r\n", "\n")
            + shown.group(3)
            + page.substring(shown.end());
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(PAGE, renewed);
    }
    assertThat(PAGE).content().as("renew it with -Dbrinewright.pages=write").isEqualTo(renewed);
  }
}
