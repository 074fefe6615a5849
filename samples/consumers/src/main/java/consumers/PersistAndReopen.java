package consumers;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.proposal.Reopened;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** A proposal and a filled form, kept as bytes and opened again. */
final class PersistAndReopen implements Consumer {
  private static final Job JOB = JobInMemory.job();
  private static final QuotedHome HOME = JOB.homes().get(0);

  private static Reopened kept(Path file, byte[] pdf) throws Exception {
    Files.write(file, pdf);
    Reopened again = Reopened.read(Files.readAllBytes(file));
    Consumer.require(again.problems().isEmpty(), "it opens without problems");
    return again;
  }

  @Override
  public String run(Path out) throws Exception {
    byte[] pdf = Proposals.of(JOB).write(HOME, Homes.DAY);
    Reopened proposal = kept(out.resolve("kept.pdf"), pdf);
    Consumer.require(proposal.job().orElseThrow().equals(JOB), "the job is the same");
    Consumer.require(
        proposal.comparison().orElseThrow().equals(JOB.compare(HOME)), "so are its candidates");
    byte[] anew = Proposals.of(proposal.job().orElseThrow()).write(HOME, Homes.DAY);
    Consumer.require(Arrays.equals(anew, pdf), "and the proposal written from it");

    Map<String, String> cells = new HashMap<>(SiteCells.of(HOME));
    cells.put("people", "5");
    Reopened form = kept(out.resolve("visit.pdf"), Proposals.of(JOB).form(cells, Homes.DAY));
    byte[] revised =
        Proposals.of(JOB).since(proposal).write(form.home().orElseThrow(), Homes.DAY.plusDays(7));
    Files.write(out.resolve("revised.pdf"), revised);
    return "reopened for " + form.home().orElseThrow().site().household().people() + " people";
  }
}
