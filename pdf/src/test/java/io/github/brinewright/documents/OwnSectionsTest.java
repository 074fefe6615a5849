package io.github.brinewright.documents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.model.Columns;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Facts;
import io.github.brinewright.model.Field;
import io.github.brinewright.model.Fields;
import io.github.brinewright.model.Heading;
import io.github.brinewright.model.Items;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Row;
import io.github.brinewright.model.Rows;
import io.github.brinewright.model.Section;
import io.github.brinewright.model.Table;
import io.github.brinewright.model.Topic;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** An embedder's own sections in a proposal. */
class OwnSectionsTest {
  private static final Set<String> APPENDIX = Set.of("worked", "every");
  private static final Proposal PROPOSAL =
      new Proposal(DemoTown.compare("H01"), DemoTown.JOB.dealer(), DemoTown.DAY);

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static Section own() {
    Phrase name = Phrase.plain("What we do each spring");
    return Section.of(
        "own.spring",
        Phrase.plain("Service in your street"),
        Paragraph.of(Phrase.plain("We come by every second Tuesday.")),
        Heading.of(name),
        new Items(List.of(Phrase.plain("Salt level"), Phrase.plain("Hardness")), false),
        new Rows(
            "own.rows",
            List.of(Phrase.plain("Visit"), Phrase.plain("Price")),
            List.of(Row.of("own.visit", Phrase.plain("Spring"), Phrase.of(Figure.of(89))))),
        new Facts(
            List.of(Row.of("own.fact", Phrase.plain("visits a year"), Phrase.of(Figure.of(2))))),
        new Topic(Phrase.plain("By phone"), List.of(Paragraph.of(Phrase.plain("At any hour.")))),
        new Columns(
            List.of(
                List.<Element>of(Paragraph.quiet(Phrase.plain("Left"))),
                List.<Element>of(Paragraph.quiet(Phrase.plain("Right"))))),
        new Fields(
            2,
            List.of(
                Fields.Entry.of(Field.of(Field.Kind.TEXT, "own_phone", Phrase.plain("Phone"))))));
  }

  private static List<String> keys(Proposal proposal) {
    return proposal.sections().stream().map(Section::key).toList();
  }

  private static void assertFit(byte[] pdf) throws Exception {
    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    assertThat(StandardsTest.failures(pdf, PDFAFlavour.PDFA_3_A)).isEmpty();
    assertThat(TextBoxes.of(pdf).overlaps()).isEmpty();
    assertThat(TextBoxes.of(pdf).outsideTheMargins()).isEmpty();
    assertThat(ReadAloud.of(pdf).outOfOrder()).isEmpty();
  }

  @Test
  void aSectionMayBeAdded() throws Exception {
    Proposal more =
        PROPOSAL.withSections(
            all -> {
              List<Section> mine = new ArrayList<>(all);
              mine.add(1, own());
              return mine;
            });

    assertThat(keys(more)).startsWith("verdict", "own.spring", "opening");
    byte[] pdf = more.toPdf();
    assertFit(pdf);
    assertThat(ReadAloud.of(pdf).toString())
        .contains(
            "H2: Service in your street", "H3: What we do each spring", "TH: Spring", "TD: 89");
  }

  @Test
  void aSectionMayBeLeftOut() throws Exception {
    Proposal less =
        PROPOSAL.withSections(
            all -> all.stream().filter(section -> !APPENDIX.contains(section.key())).toList());

    assertThat(keys(less)).doesNotContain("worked").hasSize(keys(PROPOSAL).size() - 2);
    assertFit(less.toPdf());
    assertThat(ReadAloud.of(less.toPdf()).toString()).doesNotContain("How it was worked out");
  }

  @Test
  void sectionsAreReadInTheOrderGiven() throws Exception {
    Proposal reversed =
        PROPOSAL.withSections(
            all -> {
              List<Section> mine = new ArrayList<>(all);
              Collections.reverse(mine);
              return mine;
            });

    assertThat(keys(reversed)).startsWith("every", "worked", "cost").endsWith("verdict");
    byte[] pdf = reversed.toPdf();
    assertFit(pdf);
    String aloud = ReadAloud.of(pdf).toString();
    assertThat(aloud.indexOf("Every size")).isLessThan(aloud.indexOf("Your water and your home"));
  }

  @Test
  void aLongTableOfOnesOwnIsDividedOverPages() throws Exception {
    List<Table.Line> lines =
        IntStream.range(0, 120)
            .mapToObj(i -> Table.Line.of("l" + i, Phrase.plain("line " + i), List.of(Phrase.NONE)))
            .toList();
    Table long120 =
        new Table(
            "own.table",
            Phrase.plain("Line"),
            List.of(new Table.Column("c", Phrase.plain("Left blank"), Table.Kind.VALUES)),
            lines);
    Section section = Section.of("own.long", Phrase.plain("A long list"), long120);
    byte[] pdf = PROPOSAL.withSections(all -> List.of(section)).toPdf();

    assertFit(pdf);
    assertThat(TextBoxes.of(pdf).pages()).isEqualTo(4);
    assertThat(ReadAloud.of(pdf).said())
        .filteredOn(said -> said.role().equals("TH"))
        .as("120 labels and two heads, those repeated on each page being ornament")
        .hasSize(122);
  }

  @Test
  void twoSectionsOfOneKeyAreRefused() {
    Proposal twice = PROPOSAL.withSections(all -> List.of(own(), own()));

    assertThatThrownBy(twice::toPdf)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"own.spring\"");
  }
}
