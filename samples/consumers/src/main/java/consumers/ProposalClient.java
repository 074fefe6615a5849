package consumers;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

/** Asks a {@link ProposalServer}. */
final class ProposalClient {
  private ProposalClient() {}

  /** The bodies of all answers; a request without an answer stops the program. */
  static List<byte[]> ask(int port, int requests) {
    URI address = URI.create("http://localhost:" + port + "/proposal");
    HttpRequest request = HttpRequest.newBuilder(address).build();
    HttpClient client = HttpClient.newHttpClient();
    var asked =
        Stream.generate(() -> client.sendAsync(request, BodyHandlers.ofByteArray()))
            .limit(requests)
            .toList();
    return asked.stream().map(CompletableFuture::join).map(HttpResponse::body).toList();
  }
}
