package consumers;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Section;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.trace.Figure;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A section of one's own, one left out, two in another order. */
final class OwnSections implements Consumer {
  private static final Section SERVICE =
      Section.of(
          "own.service",
          Phrase.plain("Service in your street"),
          Paragraph.of(Phrase.plain("We come by every second Tuesday.")),
          new Rows(
              "own.visits",
              List.of(Phrase.plain("Visit"), Phrase.plain("Price")),
              List.of(
                  Row.of(
                      "own.spring", Phrase.plain("Spring"), Phrase.of(Figure.of(OwnStock.usd(89)))),
                  Row.of(
                      "own.autumn",
                      Phrase.plain("Autumn"),
                      Phrase.of(Figure.of(OwnStock.usd(69)))))));

  private static List<Section> rearranged(List<Section> all) {
    List<Section> mine = new ArrayList<>(all);
    mine.removeIf(section -> section.key().equals("worked"));
    Section price =
        mine.stream().filter(section -> section.key().equals("price")).findFirst().orElseThrow();
    mine.remove(price);
    mine.add(1, price);
    mine.add(2, SERVICE);
    return mine;
  }

  @Override
  public String run(Path out) throws Exception {
    var comparison = OwnStock.prices().compare(Homes.one(), Homes.tariff());
    Proposal own =
        new Proposal(comparison, Dealer.UNNAMED, Homes.DAY).withSections(OwnSections::rearranged);
    Files.write(out.resolve("own-sections.pdf"), own.toPdf());
    return own.sections().stream().map(Section::key).toList().toString();
  }
}
