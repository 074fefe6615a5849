package io.github.brinewright.page;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A copy of the demo job on a server, as a browser would ask it. */
final class Served implements AutoCloseable {
  static final LocalDate DAY = LocalDate.of(2026, 11, 27);
  private static final Pattern TOKEN = Pattern.compile("name=\"page-token\" content=\"(\\w+)\"");
  private static final Pattern VERSION = Pattern.compile("data-version=\"(\\w+)\"");

  final Path folder;
  final PageServer server;
  final HttpClient client = HttpClient.newHttpClient();
  final String token;

  Served(Path temporary) throws Exception {
    folder = copy(temporary);
    server = PageServer.start(folder, 0, () -> DAY);
    token = found(TOKEN, get("").body());
  }

  static Path demo() {
    return Path.of("../../samples/job");
  }

  static Path copy(Path temporary) throws IOException {
    Path folder = Files.createDirectories(temporary.resolve("job"));
    try (Stream<Path> files = Files.list(demo())) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
    return folder;
  }

  static String found(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    if (!matcher.find()) {
      throw new AssertionError(pattern + " is not in " + text);
    }
    return matcher.group(1);
  }

  URI at(String path) {
    return server.address().resolve("/" + path);
  }

  HttpResponse<String> get(String path, String... headers) throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(at(path));
    return client.send(with(request, headers).build(), HttpResponse.BodyHandlers.ofString());
  }

  static HttpRequest.Builder with(HttpRequest.Builder request, String... headers) {
    return headers.length == 0 ? request : request.headers(headers);
  }

  HttpRequest request(String path, Map<String, String> values) {
    return HttpRequest.newBuilder(at(path))
        .header("X-Page-Token", token)
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(HttpRequest.BodyPublishers.ofString(form(values)))
        .build();
  }

  static String form(Map<String, String> values) {
    return values.entrySet().stream()
        .map(each -> encoded(each.getKey()) + "=" + encoded(each.getValue()))
        .collect(Collectors.joining("&"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  HttpResponse<byte[]> post(String path, Map<String, String> values) throws Exception {
    return client.send(request(path, values), HttpResponse.BodyHandlers.ofByteArray());
  }

  /** The fields of an answer in JSON. */
  Map<String, Object> ask(String path, Map<String, String> values) throws Exception {
    return JSON.std.mapFrom(post(path, values).body());
  }

  /** The state of sites.csv that a page just opened has read. */
  String version() throws Exception {
    return found(VERSION, get("").body());
  }

  @Override
  public void close() {
    server.close();
  }
}
