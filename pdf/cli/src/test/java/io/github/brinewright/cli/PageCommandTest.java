package io.github.brinewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The command that serves a page: its address on a line of its own, until it is interrupted. */
class PageCommandTest {
  private static final Pattern ADDRESS = Pattern.compile("(?m)^(http://127\\.0\\.0\\.1:\\d+/)$");

  @TempDir Path temporary;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return Main.run(line, args);
  }

  @Test
  void itPrintsItsAddressAndAnswersThereUntilItIsEnded() throws Exception {
    Thread command = new Thread(() -> run("page", "../../samples/job"));
    command.start();
    try {
      var found = ADDRESS.matcher("");
      for (int i = 0; i < 200 && !found.reset(out.toString()).find(); i++) {
        Thread.sleep(50);
      }
      URI address = URI.create(found.group(1));
      HttpResponse<String> page =
          HttpClient.newHttpClient()
              .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
      assertThat(page.statusCode()).isEqualTo(200);
      assertThat(page.body()).contains("Noughtmarl Water Works");
    } finally {
      command.interrupt();
      command.join(10_000);
    }
    assertThat(command.isAlive()).isFalse();
  }

  @Test
  void aFolderWhoseFilesAreWrongIsNotServed() throws Exception {
    Files.writeString(temporary.resolve("units.csv"), "nothing\nx\n");

    assertThat(run("page", temporary.toString())).isEqualTo(1);
    assertThat(err.toString()).contains("units.csv");
    assertThat(out.toString()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "65536", "x"})
  void aPortThatIsNoneIsWrongUsage(String port) {
    assertThat(run("page", "../../samples/job", "--port", port)).isEqualTo(2);
  }

  @Test
  void whatIsNoFolderIsWrongUsage() {
    assertThat(run("page", temporary.resolve("nowhere").toString())).isEqualTo(2);
  }

  @Test
  void aPortThatIsTakenIsSaid() throws Exception {
    try (var taken = new java.net.ServerSocket(0, 1, java.net.InetAddress.getByName("127.0.0.1"))) {
      assertThat(run("page", "../../samples/job", "--port", "" + taken.getLocalPort()))
          .isEqualTo(2);
    }
    assertThat(err.toString()).contains("cannot be used", "name another one");
  }
}
