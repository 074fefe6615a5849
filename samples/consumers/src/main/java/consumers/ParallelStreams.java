package consumers;

import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Proposals on the threads of parallel streams, which do not know an executable jar's loader. */
final class ParallelStreams implements Consumer {
  @Override
  public String run(Path out) {
    List<Integer> sizes =
        IntStream.range(0, 8)
            .parallel()
            .mapToObj(i -> ProposalServer.proposal().length)
            .distinct()
            .toList();
    Consumer.require(sizes.size() == 1, "every proposal is the same");
    List<String> names =
        IntStream.range(0, 200)
            .parallel()
            .mapToObj(i -> Wording.of(Locale.CANADA_FRENCH, UnitSystem.METRIC).locale().toString())
            .distinct()
            .toList();
    return sizes.get(0) + " bytes, words of " + names;
  }
}
