package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.job.Printable;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The library and the fonts of documents agree on what can be printed. */
class PrintableTest {
  @Test
  void whatTheLibraryTakesForPrintableIsWhatBothWeightsHave() {
    for (Typeface.Weight weight : Typeface.Weight.values()) {
      assertThat(IntStream.rangeClosed(' ', Character.MAX_CODE_POINT))
          .filteredOn(c -> Printable.has(c) != weight.typeface().has(c))
          .as(weight.name())
          .isEmpty();
    }
  }
}
