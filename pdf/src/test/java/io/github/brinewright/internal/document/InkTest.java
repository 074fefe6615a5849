package io.github.brinewright.internal.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class InkTest {
  @Test
  void contrastFollowsTheAccessibilityGuideline() {
    Ink black = Ink.of("#000000");
    assertThat(black.contrastWith(Ink.PAPER)).as("WCAG 2.1: black on white").isEqualTo(21);
    assertThat(Ink.of("#767676").contrastWith(Ink.PAPER))
        .as("WCAG 2.1: the lightest grey that passes AA on white is #767676")
        .isCloseTo(4.54, within(0.01));
    assertThat(Ink.of("#777777").contrastWith(Ink.PAPER)).isLessThan(4.5);
  }

  @Test
  void textColoursCanBeRead() {
    assertThat(Ink.TEXT.contrastWith(Ink.PAPER)).isGreaterThan(7);
    assertThat(Ink.QUIET.contrastWith(Ink.PAPER)).isGreaterThan(4.5);
    assertThat(Ink.of("#FFE000").readable().contrastWith(Ink.PAPER)).isGreaterThanOrEqualTo(4.5);
    assertThat(Ink.TEXT.readable()).isEqualTo(Ink.TEXT);
  }

  @Test
  void otherFormsAreRefused() {
    assertThatThrownBy(() -> Ink.of("teal")).hasMessageContaining("teal");
  }
}
