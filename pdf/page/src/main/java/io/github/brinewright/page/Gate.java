package io.github.brinewright.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Lets in what a page of this server asks, and nothing else: neither another site's page, nor a
 * name that somebody pointed at this machine, nor more than a form can hold.
 */
final class Gate implements HttpHandler {
  /** More than all fields of a visit filled to the brim. */
  static final int LARGEST = 256 * 1024;

  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self';"
          + " img-src 'self' data:; connect-src 'self'; form-action 'self';"
          + " frame-ancestors 'none'; base-uri 'none'";

  private final Set<String> hosts;
  private final Set<String> origins;
  private final String token;
  private final Routes routes;

  Gate(int port, String token, Routes routes) {
    this.token = token;
    this.routes = routes;
    hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    origins = Set.of("http://127.0.0.1:" + port, "http://localhost:" + port);
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      send(exchange, reply(exchange));
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    if (!isOurs(exchange)) {
      return Reply.text(Reply.FORBIDDEN, "This page is for its own machine alone.");
    }
    String path = exchange.getRequestURI().getRawPath();
    return switch (exchange.getRequestMethod()) {
      case "GET", "HEAD" -> routes.get(path);
      case "POST" -> post(exchange, path);
      default -> Reply.text(Reply.WRONG_METHOD, "Only GET and POST are answered.");
    };
  }

  private Reply post(HttpExchange exchange, String path) throws IOException {
    Headers headers = exchange.getRequestHeaders();
    if (!Token.same(token, first(headers, "X-Page-Token"))) {
      return Reply.text(Reply.FORBIDDEN, "This page is of an earlier run; open it again.");
    }
    byte[] body = exchange.getRequestBody().readNBytes(LARGEST + 1);
    return body.length > LARGEST
        ? Reply.text(Reply.TOO_LARGE, "More was sent than a page holds.")
        : routes.post(path, body);
  }

  /** Whether a page of this server asks, or the person at this machine. */
  private boolean isOurs(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String origin = first(headers, "Origin");
    boolean sameHost =
        headers.getOrDefault("Host", java.util.List.of()).size() == 1
            && hosts.contains(first(headers, "Host"));
    return sameHost
        && (origin.isEmpty() || origins.contains(origin))
        && (comesFromUs(headers) || opensPage(exchange));
  }

  /** Browsers say whose page asks: Fetch Metadata Request Headers of the W3C. */
  private static boolean comesFromUs(Headers headers) {
    String site = first(headers, "Sec-Fetch-Site");
    return site.isEmpty() || site.equals("same-origin") || site.equals("none");
  }

  /** A link in a letter may open the page; whoever wrote it cannot read it. */
  private static boolean opensPage(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    return exchange.getRequestMethod().equals("GET")
        && exchange.getRequestURI().getRawPath().equals("/")
        && first(headers, "Sec-Fetch-Mode").equals("navigate")
        && first(headers, "Sec-Fetch-Dest").equals("document");
  }

  private static String first(Headers headers, String name) {
    String value = headers.getFirst(name);
    return value == null ? "" : value;
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Type", reply.type());
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cache-Control", reply.type().startsWith("font/") ? "max-age=3600" : "no-store");
    if (!reply.fileName().isEmpty()) {
      String name = URLEncoder.encode(reply.fileName(), StandardCharsets.UTF_8).replace("+", "%20");
      headers.set("Content-Disposition", "attachment; filename*=UTF-8''" + name);
    }
    boolean head = exchange.getRequestMethod().equals("HEAD");
    exchange.sendResponseHeaders(
        reply.status(), head || reply.content().length == 0 ? -1 : reply.content().length);
    if (!head && reply.content().length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(reply.content());
      }
    }
  }
}
