package consumers;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.github.brinewright.job.Job;
import io.github.brinewright.proposal.Proposals;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executors;

/** Proposals over HTTP, 64 asked for at once. */
final class ProposalServer implements Consumer {
  private static final int REQUESTS = 64;

  @Override
  public String run(Path out) throws Exception {
    var here = new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
    HttpServer server = HttpServer.create(here, REQUESTS);
    var workers = Executors.newFixedThreadPool(REQUESTS);
    server.setExecutor(workers);
    server.createContext("/proposal", ProposalServer::answer);
    server.start();
    try {
      List<byte[]> answers = ProposalClient.ask(server.getAddress().getPort(), REQUESTS);
      byte[] first = answers.get(0);
      Files.write(out.resolve("served.pdf"), first);
      Consumer.require(
          answers.stream().allMatch(pdf -> Arrays.equals(pdf, first)), "all answers are the same");
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
    }
  }

  static byte[] proposal() {
    Job job = JobInMemory.job();
    return Proposals.of(job).write(job.homes().get(0), Homes.DAY);
  }
}
