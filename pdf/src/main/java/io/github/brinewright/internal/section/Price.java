package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.cost.Quote;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** The price of the recommended candidate. Empty when nothing can be recommended. */
public final class Price {
  private final Kit kit;
  private final Tag tag;

  /** The section of a proposal. */
  public Price(Kit kit) {
    this.kit = kit;
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The section as a block. */
  public Block block() {
    List<Block> blocks = new ArrayList<>();
    kit.comparison().recommended().ifPresent(candidate -> addPrice(candidate, blocks));
    return Block.stack(blocks);
  }

  private void addPrice(Candidate candidate, List<Block> blocks) {
    blocks.add(kit.heading(tag, kit.text("price.heading")));
    if (candidate.offer().isUnpriced()) {
      blocks.add(kit.body(tag, kit.text("price.unpriced")).after(8));
    } else {
      blocks.add(priceTable(candidate).whole().after(10));
    }
    if (!kit.dealer().terms().isEmpty()) {
      blocks.add(kit.quiet(tag, kit.dealer().terms()).after(10));
    }
  }

  private Block priceTable(Candidate candidate) {
    Quote quote = candidate.quote();
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(line(candidate.softener().name(), quote.equipment()));
    rows.add(line(kit.text("price.installation"), quote.offer().installation()));
    rows.add(line(kit.text("price.tax"), quote.tax()));
    rows.add(
        List.of(
            kit.strong(kit.text("price.total")).heading(),
            kit.strong(kit.words().figure(Figure.of(quote.total()))).right()));
    if (!quote.deposit().isZero()) {
      String deposit = kit.text("price.deposit", Figure.of(quote.balance()));
      rows.add(line(deposit, quote.deposit()));
    }
    quote
        .terms()
        .financing()
        .ifPresent(
            credit -> {
              String monthly =
                  kit.text(
                      "price.monthly",
                      Figure.of(credit.months()),
                      new Figure.Share(credit.yearlyRate().doubleValue(), 2),
                      Figure.of(quote.totalFinanced().orElseThrow()));
              rows.add(line(monthly, quote.monthlyPayment().orElseThrow()));
            });
    List<Cell> header =
        List.of(kit.strong(kit.text("price.item")), kit.strong(kit.text("price.amount")).right());
    return new Table(tag.child(Tag.Role.TABLE), List.of(0.72, 0.28), header, rows, -1);
  }

  private List<Cell> line(String name, Money amount) {
    return List.of(
        kit.cell(name).heading(), kit.cell(kit.words().figure(Figure.of(amount))).right());
  }
}
