package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.service.ServiceOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Documents to take away, and a link that opens the page again as it is.
 *
 * @param look how it is read
 * @param comparison of the home
 */
public record TakeView(Look look, Comparison comparison) {
  /** No short name of a unit begins with it. */
  private static final String PRESENT = ":";

  /** The setting of the softener in the house that is asked for; empty where a unit is. */
  public static Optional<ServiceOption.Kind> present(String unit) {
    return Stream.of(ServiceOption.Kind.SET_RIGHT, ServiceOption.Kind.METERED)
        .filter(kind -> (PRESENT + kind.name()).equals(unit))
        .findFirst();
  }

  private void addPresent(Map<String, String> units) {
    if (comparison.home().site().present().isPresent()) {
      units.put(PRESENT + ServiceOption.Kind.SET_RIGHT, look.text("choices.KEEP"));
      units.put(PRESENT + ServiceOption.Kind.METERED, look.text("choices.KEEP_METER"));
    }
  }

  Html html() {
    Html html = new Html().open("section", "class", "card", "aria-labelledby", "take-heading");
    html.element("h2", look.text("page.documents"), "id", "take-heading");
    html.element("p", look.text("page.takeLead"), "class", "voice-quiet");
    html.open("ul", "class", "documents");
    document(html, "proposal");
    document(html, "three-sizes");
    if (comparison.home().site().present().isPresent()) {
      document(html, "service");
    }
    html.close("ul");
    html.add(settings()).close("section");
    return html.add(link());
  }

  private void document(Html html, String name) {
    html.open("li").add(button(name)).close("li");
  }

  private Html button(String name) {
    return new Html()
        .element(
            "button",
            look.text("page.document." + name),
            "type",
            "button",
            "class",
            "document",
            "data-document",
            name);
  }

  private Html settings() {
    Map<String, String> units = new LinkedHashMap<>();
    addPresent(units);
    comparison.recommended().ifPresent(each -> add(units, each));
    comparison.bestOfEachUnit().forEach(each -> add(units, each));
    if (units.isEmpty()) {
      return new Html();
    }
    Html html = new Html().open("div", "class", "settings");
    html.element("label", look.text("page.unit"), "for", "unit").open("select", "id", "unit");
    units.forEach((id, name) -> html.element("option", name, "value", id));
    return html.close("select").add(button("settings")).close("div");
  }

  private static void add(Map<String, String> units, Candidate candidate) {
    units.putIfAbsent(candidate.softener().id(), candidate.softener().name());
  }

  private Html link() {
    return new Html()
        .open("section", "class", "card", "aria-labelledby", "link-heading")
        .element("h2", look.text("page.link"), "id", "link-heading")
        .element("p", look.text("page.linkLead"), "class", "voice-quiet", "id", "link-lead")
        .element("label", look.text("page.linkField"), "for", "link")
        .open(
            "input", "id", "link", "type", "text", "readonly", "", "aria-describedby", "link-lead")
        .element(
            "button",
            look.text("page.copy"),
            "type",
            "button",
            "id",
            "copy",
            "data-copied",
            look.text("page.copied"))
        .close("section");
  }
}
