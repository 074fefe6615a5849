package io.github.brinewright.internal.section;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Severity;
import io.github.brinewright.home.Customer;
import io.github.brinewright.internal.document.Field;
import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Cell;
import io.github.brinewright.internal.layout.Columns;
import io.github.brinewright.internal.layout.FieldBox;
import io.github.brinewright.internal.layout.Overlay;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.internal.layout.Table;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.regeneration.CycleStep;
import io.github.brinewright.regeneration.Schedule;
import io.github.brinewright.sizing.Design;
import io.github.brinewright.softener.Control;
import io.github.brinewright.softener.DosageCurveBasis;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the installer sets, fits and checks for one candidate. */
public final class ControlSettings {
  private static final int CHECKS = 9;
  private static final double BOX = 9.5;
  private static final double TEXT_AFTER_BOX = 17;

  private final Kit kit;
  private final Wording words;
  private final Candidate candidate;
  private final Design design;
  private final Tag tag;

  /** The sheet of a candidate. */
  public ControlSettings(Kit kit, Candidate candidate) {
    this.kit = kit;
    this.candidate = candidate;
    words = kit.words();
    design = candidate.design();
    tag = kit.root().child(Tag.Role.SECTION);
  }

  /** The sheet as a block. */
  public Block block() {
    List<Block> blocks = new ArrayList<>(List.of(title()));
    warnings().forEach(text -> blocks.add(bold(text).after(8)));
    blocks.add(kit.subheading(tag, Tag.Role.H2, kit.text("settings.control")).after(16));
    blocks.add(control().whole().after(4));
    blocks.add(kit.subheading(tag, Tag.Role.H2, kit.text("settings.cycle")).after(14));
    blocks.add(cycle().whole().after(4));
    blocks.add(kit.subheading(tag, Tag.Role.H2, kit.text("settings.fit")).after(14));
    blocks.add(fit().whole().after(4));
    return Block.stack(blocks);
  }

  /** What to check and to write down at start-up, as a block. */
  public Block startUp() {
    List<Block> blocks =
        new ArrayList<>(
            List.of(
                kit.subheading(tag, Tag.Role.H2, kit.text("settings.checks")),
                checks().after(4),
                readings().whole().after(16),
                cautions().after(20)));
    if (design.basis() instanceof DosageCurveBasis basis) {
      blocks.add(new ResinCurve(kit, tag, candidate, basis).block().after(24));
    }
    return Block.stack(blocks);
  }

  private Block title() {
    Customer contact = kit.comparison().home().site().contact();
    Stream<String> details =
        Stream.of(contact.name(), contact.street(), contact.town(), words.date(kit.date()));
    return Block.stack(
        List.of(
            new Masthead(kit, tag).block(),
            new Paragraph(
                    tag.child(Tag.Role.H1),
                    kit.text("settings.heading", Figure.of(candidate.softener().name())),
                    TextStyle.HEADING.sized(21))
                .after(14),
            kit.details(tag, details).after(3)));
  }

  /** Limits that the candidate breaks: an installer must not set it up unasked. */
  private List<String> warnings() {
    return candidate.broken().stream()
        .map(
            finding ->
                kit.text(
                    "settings.warning",
                    Figure.of(Severity.STOP),
                    Figure.of(words.finding(finding))))
        .toList();
  }

  private Block bold(String text) {
    return new Paragraph(tag.child(Tag.Role.PARAGRAPH), text, TextStyle.BODY.bold());
  }

  private Block control() {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("settings.kind", words.term(candidate.setup().control())));
    rows.add(row("settings.hardness", figure(Figure.of(design.home().compensatedHardness()))));
    Schedule schedule = design.schedule();
    schedule
        .setVolume()
        .ifPresentOrElse(
            volume -> rows.add(row("settings.volume", figure(Figure.of(volume)))),
            () -> rows.add(row("settings.days", figure(Figure.days(schedule.designDays(), 0)))));
    rows.add(row("settings.longest", figure(Figure.days(Schedule.LONGEST_DAYS, 0))));
    if (candidate.setup().control() != Control.METERED_AT_ONCE) {
      rows.add(row("settings.hour", kit.text("settings.twoAtNight")));
    }
    rows.add(row("settings.refillExact", figure(Figure.of(design.refill().exact(), 2))));
    rows.add(
        List.of(
            kit.strong(kit.text("settings.refillSet")).heading(),
            kit.strong(
                    kit.text(
                        "settings.refillGives",
                        Figure.of(design.refill().set(), 1),
                        Figure.of(design.refill().saltGiven())))
                .right()));
    return twoColumns(rows, "settings.setting");
  }

  private Block cycle() {
    List<List<Cell>> rows = new ArrayList<>();
    for (CycleStep part : design.cycle().parts()) {
      rows.add(
          List.of(
              kit.cell(words.term(part.kind())).heading(),
              kit.strong(minutes(part)).right(),
              kit.cell(figure(Figure.of(part.flow(), 2))).right(),
              kit.cell(figure(Figure.of(part.water(), 1))).right()));
    }
    rows.add(
        List.of(
            kit.strong(kit.text("settings.together")).heading(),
            kit.strong(words.number(minutesTogether(), 1)).right(),
            kit.cell("").right(),
            kit.strong(figure(Figure.of(design.cycle().water(), 1))).right()));
    List<Cell> header =
        List.of(
            kit.strong(kit.text("settings.step")),
            kit.strong(kit.text("settings.minutes")).right(),
            kit.strong(kit.text("settings.flow")).right(),
            kit.strong(kit.text("settings.water")).right());
    return new Table(tag.child(Tag.Role.TABLE), List.of(0.4, 0.2, 0.2, 0.2), header, rows, -1);
  }

  private String minutes(CycleStep part) {
    boolean refill = part.kind() == CycleStep.Kind.BRINE_REFILL;
    return words.number(minutesToSet(part), refill ? 1 : 0);
  }

  /** Whole minutes, rounded up, but for the refill, whose step the control has. */
  private static double minutesToSet(CycleStep part) {
    double exact = Minutes.of(part.time());
    return part.kind() == CycleStep.Kind.BRINE_REFILL ? exact : Math.ceil(exact - 1e-9);
  }

  private double minutesTogether() {
    return design.cycle().parts().stream().mapToDouble(ControlSettings::minutesToSet).sum();
  }

  private Block fit() {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("settings.resin", words.resin(candidate.resin())));
    rows.add(row("settings.backwash", figure(Figure.of(design.flow().backwash(), 1))));
    rows.add(row("settings.drain", figure(Figure.of(design.flow().drain().chosen(), 1))));
    rows.add(row("settings.refillFlow", figure(Figure.of(design.refill().rate(), 2))));
    rows.add(row("settings.salt", words.term(candidate.softener().regenerant())));
    candidate
        .softener()
        .brineTank()
        .ifPresent(
            tank ->
                rows.add(
                    row(
                        "settings.level",
                        figure(Figure.of(tank.level(design.refill().water()), 1)))));
    if (kit.comparison().home().site().target().isPositive()) {
      rows.add(row("settings.blend", figure(Figure.of(kit.comparison().home().site().target()))));
    }
    return twoColumns(rows, "settings.part");
  }

  private Block twoColumns(List<List<Cell>> rows, String headerKey) {
    List<Cell> header =
        List.of(kit.strong(kit.text(headerKey)), kit.strong(kit.text("settings.value")).right());
    return new Table(tag.child(Tag.Role.TABLE), List.of(0.62, 0.38), header, rows, -1);
  }

  private List<Cell> row(String key, String value) {
    return List.of(kit.cell(kit.text(key)).heading(), kit.strong(value).right());
  }

  private Block checks() {
    Tag list = tag.child(Tag.Role.LIST);
    return Block.stack(
        IntStream.rangeClosed(1, CHECKS).mapToObj(i -> check(list, i).after(4)).toList());
  }

  private Block check(Tag list, int number) {
    String text = kit.text("settings.check" + number);
    Tag item = list.child(Tag.Role.LIST_ITEM).child(Tag.Role.LIST_BODY);
    Tag form = item.child(Tag.Role.FORM);
    Block box = new FieldBox(form, Field.tick("check_" + number, text), BOX);
    Block body = new Paragraph(item, text, TextStyle.SMALL).indented(TEXT_AFTER_BOX).whole();
    return width -> List.of(Overlay.of(box.slices(BOX), body.slices(width)));
  }

  private Block readings() {
    return new Columns(
        List.of(
            blank("hardness_before", "settings.hardnessBefore"),
            blank("hardness_after", "settings.hardnessAfter"),
            blank("installer", "settings.installer"),
            blank("date", "accept.date")),
        18);
  }

  private Block blank(String name, String key) {
    return kit.line(tag, Field.text(name, kit.text(key)), kit.text(key));
  }

  private Block cautions() {
    return Block.stack(
        Stream.of(Caution.LOCAL_RULES, Caution.NOT_A_PURIFIER, Caution.DISCHARGE, Caution.OUTLET)
            .map(caution -> kit.quiet(tag, words.caution(caution)).after(3))
            .toList());
  }

  private String figure(Figure figure) {
    return words.figure(figure);
  }
}
