package consumers;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.Proposal;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;

/** Proposals over HTTP, 64 asked for at once. */
final class ProposalServer implements Consumer {
  private static final int REQUESTS = 64;

  @Override
  public String run(Path out) throws Exception {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), REQUESTS);
    ExecutorService workers = Executors.newFixedThreadPool(REQUESTS);
    server.setExecutor(workers);
    server.createContext("/proposal", ProposalServer::answer);
    server.start();
    try {
      List<byte[]> answers = ask(server.getAddress().getPort());
      Files.write(out.resolve("served.pdf"), answers.get(0));
      Consumer.require(
          answers.stream().allMatch(pdf -> Arrays.equals(pdf, answers.get(0))),
          "every answer has the same bytes");
      return answers.size() + " equal answers";
    } finally {
      server.stop(0);
      workers.shutdown();
    }
  }

  private static void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      byte[] pdf = proposal();
      exchange.sendResponseHeaders(200, pdf.length);
      exchange.getResponseBody().write(pdf);
    } catch (RuntimeException failure) {
      failure.printStackTrace();
      exchange.sendResponseHeaders(500, -1);
    }
  }

  static byte[] proposal() {
    Job job = JobInMemory.job();
    Comparison comparison = job.compare(job.visits().get(0));
    return new Proposal(comparison, job.dealer(), LocalDate.of(2026, 10, 1)).toPdf();
  }

  private static List<byte[]> ask(int port) {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/proposal")).build();
    HttpClient client = HttpClient.newHttpClient();
    List<CompletableFuture<HttpResponse<byte[]>>> asked =
        IntStream.range(0, REQUESTS)
            .mapToObj(i -> client.sendAsync(request, HttpResponse.BodyHandlers.ofByteArray()))
            .toList();
    return asked.stream()
        .map(CompletableFuture::join)
        .peek(answer -> Consumer.require(answer.statusCode() == 200, "the answer is a proposal"))
        .map(HttpResponse::body)
        .toList();
  }
}
