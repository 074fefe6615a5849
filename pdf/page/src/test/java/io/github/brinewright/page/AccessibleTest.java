package io.github.brinewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** WCAG 2.2 AA so far as axe-core finds it out, and sizes from a telephone to a zoomed screen. */
class AccessibleTest {
  /** Tags of axe-core for the levels A and AA of WCAG 2.0, 2.1 and 2.2. */
  private static final List<String> WCAG_22_AA =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  @TempDir Path temporary;
  private Served served;
  private Browser browser;

  @BeforeEach
  void start() throws Exception {
    served = new Served(temporary);
    browser = new Browser(served, Files.createDirectories(temporary.resolve("downloads")));
  }

  @AfterEach
  void end() {
    if (browser != null) {
      browser.close();
    }
    served.close();
  }

  private List<String> found() {
    List<String> said = new ArrayList<>();
    for (Rule rule :
        new AxeBuilder().withTags(WCAG_22_AA).analyze(browser.driver).getViolations()) {
      rule.getNodes().forEach(node -> said.add(rule.getId() + ": " + node.getHtml()));
    }
    return said;
  }

  @ParameterizedTest
  @CsvSource({
    "visit,H01,en,light",
    "visit,H01,fr,dark",
    "visit,'',es,light",
    "visit,S02,en,dark",
    "compare,H01,en,light",
    "compare,S02,es,dark",
    "compare,H05,fr,light",
    "compare,H10,en,light",
    "take,S02,en,light",
    "take,H01,fr,dark"
  })
  void axeFindsNothing(String view, String home, String language, String scheme) {
    browser.dark(scheme.equals("dark"));
    browser.open(view, home, "language=" + language);

    assertThat(found()).isEmpty();
  }

  @Test
  void axeFindsNothingWhereSomethingIsWrongOrOpened() {
    browser.open("visit", "H01", "field.people=0", "field.hardness_gpg=");
    browser.untilTextHas("field-people-wrong", "40");
    browser.run("document.querySelectorAll('details').forEach(each => { each.open = true; })");
    assertThat(found()).isEmpty();
    browser.open("compare", "S03");
    browser.run("document.querySelectorAll('details').forEach(each => { each.open = true; })");
    assertThat(found()).isEmpty();
  }

  /** A telephone, and a screen of 1280 pixels at 200 and 400 per cent (WCAG 1.4.4 and 1.4.10). */
  @ParameterizedTest
  @CsvSource({"360,740", "640,500", "320,256"})
  void nothingIsCutOffWhereThereIsLittleRoom(int width, int height) {
    browser.size(width, height, true);
    for (String view : List.of("visit", "compare", "take")) {
      browser.open(view, "S02", "language=fr");
      assertThat(browser.run("return document.documentElement.scrollWidth"))
          .as(view)
          .isEqualTo((long) width);
      for (WebElement each :
          browser.driver.findElements(By.cssSelector("button, select, input, h1, h2, h3"))) {
        if (each.isDisplayed()) {
          assertThat(each.getRect().getX() + each.getRect().getWidth())
              .as(view + " " + each.getDomProperty("outerHTML"))
              .isLessThanOrEqualTo(width);
        }
      }
    }
    assertThat(found()).isEmpty();
  }
}
