package io.github.brinewright.page;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Serves the page of a job folder on this machine alone, until it is closed.
 *
 * <pre>{@code
 * try (PageServer server = PageServer.start(Path.of("samples/job"), 0, LocalDate::now)) {
 *   System.out.println(server.address());
 *   System.in.read();
 * }
 * }</pre>
 */
public final class PageServer implements AutoCloseable {
  /** The highest number of a port: RFC 9293. */
  public static final int HIGHEST_PORT = 65_535;

  /** Requests that wait while all threads work. */
  private static final int WAITING = 512;

  private static final int SECONDS_TO_END = 2;

  static {
    // Seconds that a request may take to arrive, and whether short answers wait to be sent
    // together.
    property("sun.net.httpserver.maxReqTime", "30");
    property("sun.net.httpserver.nodelay", "true");
  }

  private final HttpServer server;
  private final ThreadPoolExecutor threads;

  private PageServer(HttpServer server, ThreadPoolExecutor threads) {
    this.server = server;
    this.threads = threads;
  }

  private static void property(String name, String value) {
    if (System.getProperty(name) == null) {
      System.setProperty(name, value);
    }
  }

  /**
   * {@return a server that answers from now on}
   *
   * @param folder of the job, which is read anew for each answer
   * @param port from 1 to {@value #HIGHEST_PORT}, or 0 for any that is free
   * @param today date of documents
   * @throws IOException when the port is taken or may not be used
   * @throws IllegalArgumentException when the port is out of its range
   */
  public static PageServer start(Path folder, int port, Supplier<LocalDate> today)
      throws IOException {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new IllegalArgumentException(
          "the port is " + port + ", but must be from 0 to " + HIGHEST_PORT);
    }
    InetAddress loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    HttpServer server = HttpServer.create(new InetSocketAddress(loopback, port), WAITING);
    String token = Token.next();
    Gate gate = new Gate(server.getAddress().getPort(), token, new Routes(folder, today, token));
    ThreadPoolExecutor threads = threads();
    server.setExecutor(threads);
    server.createContext("/", gate);
    server.start();
    return new PageServer(server, threads);
  }

  private static ThreadPoolExecutor threads() {
    int most = 2 * Runtime.getRuntime().availableProcessors();
    return new ThreadPoolExecutor(
        most,
        most,
        0,
        TimeUnit.SECONDS,
        new ArrayBlockingQueue<>(WAITING),
        work -> {
          Thread thread = new Thread(work, "page");
          thread.setDaemon(true);
          return thread;
        },
        new ThreadPoolExecutor.CallerRunsPolicy());
  }

  /** {@return where the page is, as {@code http://127.0.0.1:8080/}} */
  public URI address() {
    return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
  }

  /** Ends the server; answers that are under way are given up to two seconds. */
  @Override
  public void close() {
    server.stop(0);
    threads.shutdown();
    try {
      threads.awaitTermination(SECONDS_TO_END, TimeUnit.SECONDS);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }
}
