package io.github.brinewright.internal.section;

import io.github.brinewright.job.Dealer;
import io.github.brinewright.model.Letterhead;
import java.util.ArrayList;
import java.util.List;

/** The dealer at the head of a document. */
public final class DealerHead {
  private DealerHead() {}

  /** Name, contact, license and logo of a dealer. */
  public static Letterhead of(Dealer dealer) {
    List<String> details = new ArrayList<>(dealer.contact());
    details.add(dealer.license());
    return new Letterhead(dealer.name(), details, dealer.logo().orElse(null));
  }
}
