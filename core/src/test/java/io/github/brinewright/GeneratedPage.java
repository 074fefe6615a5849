package io.github.brinewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A page of the docs that the test run writes. It is kept in the module, and a test fails when it
 * is not what the code says: run the tests with {@code -Dbrinewright.pages=write} and commit it.
 */
public final class GeneratedPage {
  private GeneratedPage() {}

  /** Writes the page, or checks the one that is kept. */
  public static void keep(String file, String text) throws IOException {
    Path path = Path.of(file);
    if ("write".equals(System.getProperty("brinewright.pages"))) {
      Files.writeString(path, text);
    }
    assertThat(path).content().as("the kept page; see GeneratedPage").isEqualTo(text);
  }
}
