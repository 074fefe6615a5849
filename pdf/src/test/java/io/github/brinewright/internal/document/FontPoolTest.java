package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Parsed fonts are lent to one document at a time and kept. */
@Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class FontPoolTest {
  private final FontPool pool = new FontPool(1);

  private ParsedFonts once() {
    try (FontPool.Loan loan = pool.borrow()) {
      return loan.fonts();
    }
  }

  @Test
  void whatWasGivenBackIsLentAgain() {
    assertThat(once()).isSameAs(once());
  }

  @Test
  void givenBackTwiceItIsKeptOnce() {
    FontPool two = new FontPool(2);
    FontPool.Loan first = two.borrow();
    first.close();
    first.close();

    try (FontPool.Loan left = two.borrow();
        FontPool.Loan right = two.borrow()) {
      assertThat(left.fonts()).isNotSameAs(right.fonts());
    }
  }

  @Test
  void whoeverComesLaterWaits() throws InterruptedException {
    CountDownLatch lent = new CountDownLatch(1);
    FontPool.Loan loan = pool.borrow();
    Thread later =
        new Thread(
            () -> {
              once();
              lent.countDown();
            });
    later.start();

    assertThat(lent.await(200, TimeUnit.MILLISECONDS)).isFalse();
    loan.close();
    assertThat(lent.await(10, TimeUnit.SECONDS)).isTrue();
  }
}
