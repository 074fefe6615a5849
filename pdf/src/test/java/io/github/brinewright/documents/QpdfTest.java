package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every document by {@code qpdf --check}, where qpdf is installed, as it is on the build server.
 */
class QpdfTest {
  @TempDir private Path folder;

  @BeforeAll
  static void installed() {
    boolean there =
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .anyMatch(place -> Files.isExecutable(Path.of(place, "qpdf")));
    assumeTrue(there, "qpdf is not installed");
  }

  private record Check(int code, String said) {}

  private Check check(byte[] pdf) throws IOException, InterruptedException {
    Path file = Files.write(folder.resolve("document.pdf"), pdf);
    Process qpdf =
        new ProcessBuilder(List.of("qpdf", "--check", file.toString()))
            .redirectErrorStream(true)
            .start();
    String said = new String(qpdf.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Check(qpdf.waitFor(), said);
  }

  @ParameterizedTest
  @MethodSource("io.github.brinewright.documents.StandardsTest#homesAndLanguages")
  void everyDocumentIsCleanInSyntaxAndStreams(String id, String tag) throws Exception {
    for (byte[] document : StandardsTest.documents(id, tag)) {
      Check check = check(document);
      assertThat(check.code()).as(check.said()).isZero();
      assertThat(check.said()).contains("No syntax or stream encoding errors");
    }
  }

  @Test
  void aBrokenFileIsFound() throws Exception {
    byte[] pdf = StandardsTest.documents("H01", "en-US").get(0);
    assertThat(check(Arrays.copyOf(pdf, pdf.length / 2)).code()).isNotZero();
  }
}
