package io.github.brinewright.internal.screen;

import io.github.brinewright.comparison.Candidate;
import io.github.brinewright.comparison.Comparison;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Documents to take away, and a link that opens the page again as it is.
 *
 * @param look how it is read
 * @param comparison of the home
 */
record TakeView(Look look, Comparison comparison) {
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
