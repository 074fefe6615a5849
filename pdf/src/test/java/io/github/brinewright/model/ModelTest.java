package io.github.brinewright.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.proposal.DocumentTexts;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModelTest {

  private static Wording words(String tag) {
    return DocumentTexts.words(Locale.forLanguageTag(tag), UnitSystem.US);
  }

  private static Phrase listed(String... items) {
    return new Phrase.Listed(List.of(items).stream().map(Phrase::plain).toList());
  }

  @ParameterizedTest
  @CsvSource({"en-US, and", "es-US, y", "fr-CA, et"})
  void aListEndsWithTheAndOfTheLanguage(String tag, String and) {
    assertThat(listed("a").in(words(tag))).isEqualTo("a");
    assertThat(listed("a", "b").in(words(tag))).isEqualTo("a " + and + " b");
    assertThat(listed("a", "b", "c").in(words(tag))).isEqualTo("a, b " + and + " c");
  }

  @Test
  void phrasesNestAndAreWordedOnlyWhenALanguageIsKnown() {
    Phrase gap = Phrase.text("home.basis", Phrase.text("water.notTested"));

    assertThat(gap.in(words("en-US"))).isEqualTo("from not tested");
    assertThat(gap.in(words("fr-CA"))).isNotEqualTo(gap.in(words("en-US")));
    assertThat(gap).isEqualTo(Phrase.text("home.basis", Phrase.text("water.notTested")));
  }

  @Test
  void figuresAreWrittenWithAndWithoutTheirUnit() {
    Figure hardness = Figure.of(Hardness.ofGrainsPerGallon(18.25), 1);

    assertThat(Phrase.of(hardness).in(words("en-US"))).isEqualTo("18.3 gpg");
    assertThat(new Phrase.Bare(hardness).in(words("fr-CA"))).isEqualTo("18,3");
    assertThat(new Phrase.Day(LocalDate.of(2026, 5, 1)).in(words("en-US")))
        .isEqualTo("May 1, 2026");
  }

  @Test
  void whatSaysNothingIsLeftOut() {
    Phrase joined = new Phrase.Joined(List.of(Phrase.NONE, Phrase.plain("a"), Phrase.NONE), "·");

    assertThat(joined.in(words("en-US"))).isEqualTo("a");
    assertThat(joined.isEmpty()).isFalse();
    assertThat(Phrase.sentences(List.of(Phrase.NONE, Phrase.NONE)).isEmpty()).isTrue();
  }

  private static void refused(ThrowingCallable made, String because) {
    assertThatThrownBy(made)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(because);
  }

  @Test
  void whatCannotBeDrawnIsRefusedWhenItIsMade() {
    Phrase label = Phrase.plain("label");
    Field text = Field.of(Field.Kind.TEXT, "name", label);
    Table.Column column = new Table.Column("c", label, Table.Kind.VALUES);
    Table.Line line = Table.Line.of("l", label, List.of(label, label));

    refused(() -> new Table("t", label, List.of(column), List.of(line)), "l has 2 cells");
    refused(() -> new Rows("r", List.of(label), List.of()), "2 or 3 heads, not 1");
    refused(() -> new Rows("r", List.of(label, label, label, label), List.of()), "not 4");
    refused(() -> new Topic(label, List.of()), "topic");
    refused(() -> new Phrase.Listed(List.of()), "one at least");
    refused(() -> new Ticks(List.of(text)), "\"name\"");
    refused(() -> Field.of(Field.Kind.TEXT, "a.b", label), "\"a.b\"");
    refused(() -> Field.of(Field.Kind.TEXT, "", label), "\"\"");
    refused(() -> new Fields(2, List.of(new Fields.Entry(text, 3))), "3 of 2");
    refused(() -> new Fields(2, List.of(new Fields.Entry(text, 0))), "0 of 2");
  }

  @Test
  void aModelKeepsItsOwnCopies() {
    List<Element> elements = new ArrayList<>(List.of(Heading.of(Phrase.plain("a"))));
    Section section = new Section("s", Phrase.NONE, elements, false);
    elements.clear();

    assertThat(section.elements()).hasSize(1);
    assertThat(section.onOwnPage().ownPage()).isTrue();
    assertThat(section).isEqualTo(Section.of("s", Phrase.NONE, Heading.of(Phrase.plain("a"))));
  }
}
