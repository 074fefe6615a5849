package io.github.brinewright.internal.screen;

import io.github.brinewright.job.Column;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.job.SiteColumns;
import io.github.brinewright.model.Field;
import io.github.brinewright.trace.Figure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One entry: its label, what may stand in it, and room for what is wrong with it.
 *
 * @param look how it is read
 * @param field of the form
 * @param stored what stands in the folder
 * @param wide whether it takes more room
 */
record FieldView(Look look, Field field, String stored, boolean wide) {
  /** Who somebody is, and where: no link has it. */
  private static final Set<String> PERSONAL =
      Set.of(
          "site_id",
          "customer",
          "customer_latin",
          "street",
          "town",
          "phone",
          "email",
          "rep",
          "notes",
          "present_read_meter");

  private static final Map<String, Column> COLUMNS =
      SiteColumns.all().stream().collect(Collectors.toMap(Column::name, Function.identity()));

  Html html() {
    boolean choice = field.kind() == Field.Kind.CHOICE;
    Html html = new Html().open("div", "class", wide ? "field wide-field" : "field");
    html.element("label", field.label().in(look.words()), "for", id());
    html.add(choice ? select() : input());
    if (isTested()) {
      html.add(untested());
    }
    hint().ifPresent(hint -> html.element("p", hint, "class", "hint", "id", id() + "-hint"));
    return html.element("p", "", "class", "wrong", "id", id() + "-wrong").close("div");
  }

  private String id() {
    return "field-" + field.name();
  }

  private String value() {
    return FormFields.shown(field.value());
  }

  private Optional<Column> column() {
    return Optional.ofNullable(COLUMNS.get(field.name()));
  }

  private String describedBy() {
    return (hint().isPresent() ? id() + "-hint " : "") + id() + "-wrong";
  }

  private Html input() {
    boolean number = column().map(each -> each.kind().numeric()).orElse(true);
    return new Html()
        .open(
            "input",
            "id",
            id(),
            "name",
            field.name(),
            "value",
            value(),
            "type",
            "text",
            "inputmode",
            number && !isLab() ? "decimal" : "text",
            "autocomplete",
            "off",
            "maxlength",
            "2000",
            "data-stored",
            stored,
            "data-personal",
            PERSONAL.contains(field.name()) ? "yes" : "no",
            "aria-describedby",
            describedBy());
  }

  private Html select() {
    Html html =
        new Html()
            .open(
                "select",
                "id",
                id(),
                "name",
                field.name(),
                "data-stored",
                stored,
                "data-personal",
                "no",
                "aria-describedby",
                describedBy());
    boolean known = field.choices().stream().anyMatch(each -> each.value().equals(value()));
    if (!known) {
      html.element("option", value(), "value", value(), "selected", "");
    }
    for (Field.Choice choice : field.choices()) {
      String name = choice.value().isEmpty() ? "–" : choice.name().in(look.words());
      html.add(option(choice.value(), name));
    }
    return html.close("select");
  }

  private Html option(String value, String name) {
    return value.equals(value())
        ? new Html().element("option", name, "value", value, "selected", "")
        : new Html().element("option", name, "value", value);
  }

  private boolean isLab() {
    return column().filter(each -> each.kind() == Column.Kind.LAB_RESULT).isPresent();
  }

  /** Whether a laboratory tells it, so that it may not have been tested. */
  private boolean isTested() {
    boolean measured =
        column()
            .filter(each -> each.part().equals("water") && each.kind() == Column.Kind.NUMBER)
            .filter(each -> each.usual().isEmpty() && !each.name().startsWith("hardness"))
            .isPresent();
    return isLab() || measured;
  }

  private Html untested() {
    String box = id() + "-untested";
    Html html = new Html().open("div", "class", "untested");
    String[] attributes = {"type", "checkbox", "id", box, "data-untested", id()};
    html.add(value().isEmpty() ? checked(attributes) : new Html().open("input", attributes));
    return html.open("label", "for", box)
        .text(look.text("page.untested"))
        .element("span", " " + field.label().in(look.words()), "class", "unseen")
        .close("label")
        .close("div");
  }

  private static Html checked(String... attributes) {
    String[] all = java.util.Arrays.copyOf(attributes, attributes.length + 2);
    all[attributes.length] = "checked";
    all[attributes.length + 1] = "";
    return new Html().open("input", all);
  }

  /** The range, and what is taken where nothing stands there. */
  private Optional<String> hint() {
    return column().map(this::hint).filter(hint -> !hint.isEmpty());
  }

  private String hint(Column column) {
    String range =
        column.range().map(ends -> low(ends.low()) + " – " + high(ends.high())).orElse("");
    String usual =
        column.usual().isEmpty() ? "" : look.words().text("page.usual", Figure.of(usual(column)));
    return range.isEmpty() || usual.isEmpty() ? range + usual : range + " · " + usual;
  }

  /** A choice in the words in which it is offered. */
  private String usual(Column column) {
    return column.constants().stream()
        .filter(each -> SiteCells.word(each).equals(column.usual()))
        .map(each -> look.words().term(each))
        .findFirst()
        .orElse(column.usual());
  }

  /** An end of a range in three figures, so that what is written there is within. */
  private static String low(double end) {
    return plain(BigDecimal.valueOf(end).round(new MathContext(3, RoundingMode.CEILING)));
  }

  private static String high(double end) {
    return plain(BigDecimal.valueOf(end).round(new MathContext(3, RoundingMode.FLOOR)));
  }

  private static String plain(BigDecimal end) {
    return end.stripTrailingZeros().toPlainString();
  }
}
