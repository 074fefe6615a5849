package io.github.brinewright.section;

import io.github.brinewright.comparison.Option;
import io.github.brinewright.document.Tag;
import io.github.brinewright.layout.Block;
import io.github.brinewright.layout.Cell;
import io.github.brinewright.layout.Table;
import io.github.brinewright.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A table with a column for each option, the recommended one marked in words and by a rule. */
final class OptionTable {
  private static final double FIRST_SHARE = 0.26;

  private final Kit kit;
  private final List<Option> options;
  private final List<List<Cell>> rows = new ArrayList<>();

  OptionTable(Kit kit) {
    this(kit, kit.columns());
  }

  OptionTable(Kit kit, List<Option> options) {
    this.kit = kit;
    this.options = options;
  }

  /** Adds rows. */
  OptionTable rows(OptionRow... all) {
    for (OptionRow row : all) {
      addRow(row.name(kit), option -> row.text(kit, option), row.total());
    }
    return this;
  }

  /** Adds a row: a name, and a text for each option. */
  OptionTable row(String name, Function<Option, String> text) {
    return addRow(name, text, false);
  }

  /** Adds a row that stands out. */
  OptionTable total(String name, Function<Option, String> text) {
    return addRow(name, text, true);
  }

  private OptionTable addRow(String name, Function<Option, String> text, boolean total) {
    List<Cell> row = new ArrayList<>();
    row.add((total ? kit.strong(name) : kit.cell(name)).heading());
    for (Option option : options) {
      boolean bold = total || kit.comparison().recommends(option);
      String value = text.apply(option);
      row.add((bold ? kit.strong(value) : kit.cell(value)).right());
    }
    rows.add(row);
    return this;
  }

  Block in(Tag section, String firstHeader) {
    List<Cell> header = new ArrayList<>();
    header.add(kit.strong(firstHeader));
    int marked = -1;
    for (Option option : options) {
      String name = option.unit().name();
      if (kit.comparison().recommends(option)) {
        marked = header.size();
        name = kit.text("compare.recommended", Figure.of(name));
      }
      header.add(kit.strong(name).right());
    }
    List<Double> shares = new ArrayList<>(List.of(FIRST_SHARE));
    options.forEach(option -> shares.add((1 - FIRST_SHARE) / options.size()));
    return new Table(section.child(Tag.Role.TABLE), shares, header, rows, marked);
  }
}
