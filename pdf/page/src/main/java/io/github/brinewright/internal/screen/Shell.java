package io.github.brinewright.internal.screen;

import io.github.brinewright.internal.visit.Folder;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Languages;
import io.github.brinewright.words.UnitSystem;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;

/**
 * What stands around the views: the dealer, the homes, language and units, and the way from view to
 * view.
 *
 * @param screen with the open view
 * @param token that the page shows again with all that it asks
 */
public record Shell(Screen screen, String token) {
  /**
   * The whole document.
   *
   * @throws IOException when the folder cannot be read
   */
  public String document() throws IOException {
    Html html = new Html();
    html.open("html", "lang", language());
    html.open("head").open("meta", "charset", "utf-8");
    html.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.open("meta", "name", "color-scheme", "content", "light dark");
    html.open("meta", "name", "page-token", "content", token);
    html.element("title", title());
    html.open("link", "rel", "icon", "href", "data:,");
    html.open("link", "rel", "stylesheet", "href", "/accent.css");
    html.open("link", "rel", "stylesheet", "href", "/page.css");
    html.element("script", "", "src", "/page.js", "defer", "").close("head");
    html.open("body").svg(body());
    html.element("p", "", "id", "said", "class", "unseen", "role", "status");
    html.element("noscript", look().text("page.noScript"));
    return "<!DOCTYPE html>\n" + html.close("body").close("html");
  }

  private Look look() {
    return screen.look();
  }

  /** The language of the page. */
  public String language() {
    return look().words().locale().toLanguageTag();
  }

  /** The title of the window. */
  public String title() {
    return look().text("page." + screen.view().word()) + " – " + screen.job().dealer().name();
  }

  /**
   * All that is seen.
   *
   * @throws IOException when the folder cannot be read
   */
  public String body() throws IOException {
    Folder folder = screen.visit().folder();
    String lost = look().text("page.lost");
    Html html = new Html();
    html.open("div", "id", "page", "data-version", folder.version(), "data-lost", lost);
    html.element("a", look().text("page.skip"), "href", "#main", "class", "skip", "id", "skip");
    html.open("header").add(head()).add(choices()).close("header");
    html.add(views());
    html.open("main", "id", "main", "tabindex", "-1");
    html.element("h1", look().text("page." + screen.view().word()));
    html.svg(screen.html()).close("main");
    html.open("footer").element("p", look().text("page.local")).close("footer");
    return html.close("div").toString();
  }

  private Html head() {
    Dealer dealer = screen.job().dealer();
    return new Html().element("p", dealer.name(), "class", "dealer");
  }

  private Html views() {
    Html html = new Html().open("nav", "aria-label", look().text("page.views")).open("ul");
    for (View view : View.values()) {
      html.open("li");
      if (view == screen.view()) {
        html.open("a", "href", "#", "data-view", view.word(), "aria-current", "page");
      } else {
        html.open("a", "href", "#", "data-view", view.word());
      }
      html.text(look().text("page." + view.word())).close("a").close("li");
    }
    return html.close("ul").close("nav");
  }

  private Html choices() {
    Html html = new Html().open("div", "class", "choices");
    html.add(homes());
    html.element("label", look().text("page.language"), "for", "language");
    html.open("select", "id", "language");
    for (Locale locale : Languages.USUAL) {
      String name = locale.getDisplayLanguage(locale);
      String code = locale.getLanguage();
      html.add(option(code, name, code.equals(look().words().locale().getLanguage())));
    }
    html.close("select").element("label", look().text("page.units"), "for", "units");
    html.open("select", "id", "units");
    for (UnitSystem system : UnitSystem.values()) {
      String code = system.name().toLowerCase(Locale.ROOT);
      html.add(
          option(
              code,
              look().text(system == UnitSystem.US ? "page.unitsUs" : "page.unitsMetric"),
              system == look().system()));
    }
    return html.close("select").close("div");
  }

  private Html homes() {
    Html html = new Html();
    html.element("label", look().text("page.home"), "for", "home").open("select", "id", "home");
    String open = screen.visit().siteId().orElse("");
    Map<String, Map<String, String>> homes = screen.visit().folder().homes();
    homes.forEach(
        (id, cells) -> {
          String name = (id + "  " + cells.getOrDefault("customer", "")).strip();
          html.add(option(Folder.nameOf(id), name, id.equals(open)));
        });
    return html.add(option("", look().text("page.newHome"), open.isEmpty())).close("select");
  }

  private static Html option(String value, String name, boolean chosen) {
    return chosen
        ? new Html().element("option", name, "value", value, "selected", "")
        : new Html().element("option", name, "value", value);
  }
}
