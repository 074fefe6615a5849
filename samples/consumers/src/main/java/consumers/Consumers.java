package consumers;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs all of them. */
public final class Consumers {
  private static final List<Consumer> ALL =
      List.of(
          new FirstHome(),
          new FirstProposal(),
          new ThreeDosages(),
          new OwnResin(),
          new OwnPriceLines(),
          new OwnRules(),
          new OwnSections(),
          new GermanProposal(),
          new Json(),
          new SoftenerInTheHouse(),
          new JobInMemory(),
          new JobWithProblems(),
          new PersistAndReopen(),
          new ParallelStreams(),
          new ProposalServer(),
          new StockInDatabase());

  private Consumers() {}

  /**
   * @param args the folder to write to
   */
  public static void main(String[] args) throws Exception {
    Path out = Files.createDirectories(Path.of(args[0]));
    for (Consumer consumer : ALL) {
      System.out.println(consumer.getClass().getSimpleName() + ": " + consumer.run(out));
    }
  }
}
