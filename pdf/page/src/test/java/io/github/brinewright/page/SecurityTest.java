package io.github.brinewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.internal.visit.Folder;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A page of another site can neither read nor write, and nothing of a path reaches a file. */
class SecurityTest {
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

  /** Sends lines as they are; a client of the library would mend them. */
  private String raw(String... lines) throws Exception {
    try (Socket socket = new Socket("127.0.0.1", served.server.address().getPort())) {
      OutputStream out = socket.getOutputStream();
      String all = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      out.write(all.getBytes(StandardCharsets.US_ASCII));
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String host() {
    return "Host: 127.0.0.1:" + served.server.address().getPort();
  }

  @Test
  void itListensOnLoopbackAlone() throws Exception {
    List<InetAddress> others =
        Collections.list(NetworkInterface.getNetworkInterfaces()).stream()
            .flatMap(each -> Collections.list(each.getInetAddresses()).stream())
            .filter(each -> !each.isLoopbackAddress())
            .toList();
    for (InetAddress other : others) {
      assertThat(opens(other)).as(other.toString()).isFalse();
    }
    assertThat(opens(InetAddress.getByName("127.0.0.1"))).isTrue();
  }

  private boolean opens(InetAddress address) {
    try (Socket socket = new Socket(address, served.server.address().getPort())) {
      return socket.isConnected();
    } catch (java.io.IOException refused) {
      return false;
    }
  }

  /** A name that somebody points at 127.0.0.1 would make another site's page one of ours. */
  @Test
  void anotherHostIsRefused() throws Exception {
    int port = served.server.address().getPort();

    assertThat(raw("GET / HTTP/1.1", host())).startsWith("HTTP/1.1 200");
    assertThat(raw("GET / HTTP/1.1", "Host: localhost:" + port)).startsWith("HTTP/1.1 200");
    for (String other : List.of("evil.example", "evil.example:" + port, "127.0.0.1", "")) {
      assertThat(raw("GET / HTTP/1.1", "Host: " + other)).as(other).startsWith("HTTP/1.1 403");
    }
    assertThat(raw("GET / HTTP/1.1", host(), "Host: evil.example")).startsWith("HTTP/1.1 403");
  }

  @Test
  void anotherOriginIsRefusedEvenWithTheToken() throws Exception {
    for (String origin : List.of("http://evil.example", "null", "http://127.0.0.1:1")) {
      HttpRequest request =
          HttpRequest.newBuilder(served.at("answer"))
              .header("X-Page-Token", served.token)
              .header("Origin", origin)
              .POST(HttpRequest.BodyPublishers.ofString("view=visit"))
              .build();
      HttpResponse<String> response =
          served.client.send(request, HttpResponse.BodyHandlers.ofString());
      assertThat(response.statusCode()).as(origin).isEqualTo(403);
      assertThat(served.get("", "Origin", origin).statusCode()).as(origin).isEqualTo(403);
    }
  }

  @Test
  void anotherSitesPageGetsNothing() throws Exception {
    assertThat(served.get("", "Sec-Fetch-Site", "cross-site").statusCode()).isEqualTo(403);
    assertThat(served.get("page.js", "Sec-Fetch-Site", "same-site").statusCode()).isEqualTo(403);
    assertThat(served.get("", "Sec-Fetch-Site", "same-origin").statusCode()).isEqualTo(200);
    String[] link = {
      "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "navigate", "Sec-Fetch-Dest", "document"
    };
    assertThat(served.get("", link).statusCode()).isEqualTo(200);
    link[5] = "iframe";
    assertThat(served.get("", link).statusCode()).isEqualTo(403);
  }

  @ParameterizedTest
  @ValueSource(strings = {"answer", "show", "save", "document/proposal"})
  void nothingIsDoneWithoutTheToken(String path) throws Exception {
    for (String token : List.of("", "0", served.token.substring(1))) {
      HttpRequest.Builder request =
          HttpRequest.newBuilder(served.at(path))
              .POST(HttpRequest.BodyPublishers.ofString("view=visit"));
      if (!token.isEmpty()) {
        request.header("X-Page-Token", token);
      }
      assertThat(
              served
                  .client
                  .send(request.build(), HttpResponse.BodyHandlers.ofString())
                  .statusCode())
          .as(path + " " + token)
          .isEqualTo(403);
    }
    assertThat(served.post(path, Map.of("home", Folder.nameOf("H01"))).statusCode())
        .isNotEqualTo(403);
  }

  @Test
  void twoRunsHaveTwoTokens() throws Exception {
    try (Served other = new Served(temporary.resolve("other"))) {
      assertThat(other.token).isNotEqualTo(served.token).hasSizeGreaterThanOrEqualTo(32);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/sites.csv",
        "/../sites.csv",
        "/%2e%2e/sites.csv",
        "/page.js/../../../etc/passwd",
        "//page.js",
        "/document/../sites.csv",
        "/PAGE.JS"
      })
  void nothingOfAPathReachesAFile(String path) throws Exception {
    assertThat(raw("GET " + path + " HTTP/1.1", host())).startsWith("HTTP/1.1 404");
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "PATCH", "TRACE"})
  void otherMethodsAreRefused(String method) throws Exception {
    assertThat(raw(method + " / HTTP/1.1", host())).startsWith("HTTP/1.1 405");
  }

  @Test
  void moreThanAFormIsRefused() throws Exception {
    Map<String, String> large = Map.of("field.notes", "x".repeat(Gate.LARGEST));
    Map<String, String> longOne = Map.of("field.notes", "x".repeat(5_000));

    assertThat(served.post("answer", large).statusCode()).isEqualTo(413);
    assertThat(served.post("answer", longOne).statusCode()).isEqualTo(400);
    StringBuilder many = new StringBuilder("a=b");
    for (int i = 0; i < 600; i++) {
      many.append("&f").append(i).append("=1");
    }
    HttpRequest request =
        HttpRequest.newBuilder(served.at("answer"))
            .header("X-Page-Token", served.token)
            .POST(HttpRequest.BodyPublishers.ofString(many.toString()))
            .build();
    assertThat(served.client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode())
        .isEqualTo(400);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "page.js", "page.css", "accent.css", "regular.ttf", "nowhere"})
  void everyAnswerHasTheStrictPolicy(String path) throws Exception {
    HttpResponse<String> response = served.get(path);

    assertThat(response.headers().firstValue("Content-Security-Policy").orElse(""))
        .startsWith("default-src 'none'; script-src 'self'; style-src 'self';")
        .contains("frame-ancestors 'none'", "base-uri 'none'", "form-action 'self'")
        .doesNotContain("unsafe", "*");
    assertThat(response.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    assertThat(response.headers().firstValue("Referrer-Policy")).contains("no-referrer");
    assertThat(response.headers().map())
        .doesNotContainKeys("access-control-allow-origin", "set-cookie");
  }

  /** What is typed comes back as text and never as a tag. */
  @Test
  void whatIsTypedIsNeverATag() throws Exception {
    String evil = "<img src=x onerror=alert(1)>\"'&";
    Map<String, Object> answer =
        served.ask(
            "show",
            Map.of(
                "home",
                Folder.nameOf("H01"),
                "field.customer",
                evil,
                "field.people",
                "<script>3",
                "view",
                "visit"));

    assertThat(answer.get("body").toString())
        .doesNotContain("<img", "<script")
        .contains("&lt;img src=x onerror=alert(1)&gt;&quot;&#39;&amp;");
  }

  @Test
  void thePageTakesNothingFromElsewhere() throws Exception {
    String page = served.get("").body() + served.get("page.css").body();

    assertThat(page).doesNotContainPattern("(src|href)=\"(https?:)?//");
    assertThat(page).doesNotContainPattern("url\\([\"']?(https?:)?//");
    assertThat(page).doesNotContain("@import", " style=\"", "onclick");
  }
}
