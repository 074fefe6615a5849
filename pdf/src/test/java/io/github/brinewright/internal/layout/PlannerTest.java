package io.github.brinewright.internal.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.internal.document.Box;
import io.github.brinewright.internal.document.PdfDocument;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlannerTest {
  private static final Box ROOM = new Box(0, 10, 100, 100);

  private static Slice slice(double height) {
    return Slice.of(0, height, (pen, x, y) -> {});
  }

  private static Block block(Slice... slices) {
    return width -> List.of(slices);
  }

  private static List<List<Planner.Placed>> plan(Slice... slices) {
    return Planner.plan(ROOM, List.of(block(slices)));
  }

  @Test
  void slicesFollowEachOtherAndBreakBeforeTheBottom() {
    List<List<Planner.Placed>> pages = plan(slice(60), slice(40), slice(1));

    assertThat(pages).hasSize(2);
    assertThat(pages.get(0)).extracting(Planner.Placed::y).containsExactly(10.0, 70.0);
    assertThat(pages.get(1)).extracting(Planner.Placed::y).containsExactly(10.0);
  }

  @Test
  void aHeadingIsNeverLeftAloneAtTheBottom() {
    List<List<Planner.Placed>> pages = plan(slice(80), slice(10).kept(), slice(20));

    assertThat(pages.get(0)).hasSize(1);
    assertThat(pages.get(1)).hasSize(2);
  }

  @Test
  void anIntroductionStaysWithWhatItIntroduces() {
    Block both = Block.together(List.of(block(slice(5), slice(5)), block(slice(70), slice(9))), 80);
    List<List<Planner.Placed>> pages =
        Planner.plan(ROOM, List.of(Block.stack(List.of(block(slice(50)), both))));

    assertThat(pages.get(0)).hasSize(1);
    assertThat(pages.get(1)).hasSize(4);
    assertThat(Block.together(List.of(block(slice(5)), block(slice(70))), 80).slices(9)).hasSize(1);
  }

  @Test
  void aGapIsDroppedAtTheTopOfAPage() {
    List<List<Planner.Placed>> pages = plan(slice(90), slice(50).after(30));

    assertThat(pages.get(1).get(0).y()).isEqualTo(10);
  }

  @Test
  void aChainTallerThanAPageBreaksSomewhereInsteadOfNowhere() {
    Slice[] chain = IntStream.range(0, 30).mapToObj(i -> slice(9).kept()).toArray(Slice[]::new);

    assertThat(plan(chain)).hasSizeBetween(3, 4);
  }

  @Test
  void aSliceTallerThanAPageIsRefusedWithItsHeight() {
    assertThatThrownBy(() -> plan(slice(101)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("101 points");
  }

  @Test
  void theHeaderOfATableStandsOnEachPage() {
    TableBlock table = table(40, "row");
    double width = 300;
    Box room = new Box(0, 0, width, 200);
    List<List<Planner.Placed>> pages = Planner.plan(room, List.of(table));
    double header = table.slices(width).get(0).height();

    assertThat(pages.size()).isGreaterThan(3);
    assertThat(pages)
        .allSatisfy(page -> assertThat(page.get(0).slice().height()).isEqualTo(header));
    int rows = pages.stream().mapToInt(page -> page.size() - 1).sum();
    assertThat(rows).isEqualTo(40);
  }

  @Test
  void aRowTallerThanAPageIsDivided() {
    TableBlock table = table(1, "word ".repeat(2_000));
    List<List<Planner.Placed>> pages = Planner.plan(new Box(0, 0, 120, 400), List.of(table));

    assertThat(pages.size()).isGreaterThan(5);
  }

  @Test
  void aParagraphLeavesTwoLinesOnEitherSide() {
    TextBlock paragraph =
        new TextBlock(Part.of(Tag.Role.PARAGRAPH), "word ".repeat(60), TextStyle.BODY);
    List<Slice> lines = paragraph.slices(100);

    assertThat(lines.size()).isGreaterThan(4);
    assertThat(lines.get(0).keepWithNext()).isTrue();
    assertThat(lines.get(lines.size() - 2).keepWithNext()).isTrue();
    assertThat(lines.get(1).keepWithNext()).isFalse();
  }

  @Test
  void measuringOpensNoTagAndPartsOnTwoPagesShareOne() {
    TableBlock table = table(40, "row");
    table.slices(300);
    table.slices(300);
    var description = new PdfDocument.Description("t", "a", Locale.US, LocalDate.of(2026, 10, 1));
    try (PdfDocument document = new PdfDocument(description)) {
      Tags tags = new Tags();
      assertThat(tags.root().kids()).isEmpty();
      List<List<Planner.Placed>> pages = Planner.plan(new Box(0, 0, 300, 200), List.of(table));
      assertThat(tags.root().kids()).isEmpty();
      for (List<Planner.Placed> page : pages) {
        Pen pen = new Pen(document.addPage(300, 200), tags);
        page.forEach(placed -> placed.draw(pen, 0));
      }
      assertThat(pages.size()).isGreaterThan(3);
      assertThat(tags.root().kids()).as("one table").hasSize(1);
      assertThat(((Tag) tags.root().kids().get(0)).kids()).as("header and rows").hasSize(41);
    }
  }

  private static TableBlock table(int rows, String text) {
    List<List<Cell>> cells = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      cells.add(List.of(Cell.of(text, TextStyle.SMALL), Cell.of("1", TextStyle.SMALL).right()));
    }
    List<Cell> header =
        List.of(Cell.of("Name", TextStyle.SMALL), Cell.of("Number", TextStyle.SMALL));
    return new TableBlock(Part.of(Tag.Role.TABLE), 3, List.of(0.7, 0.3), header, cells, -1);
  }
}
