package io.github.brinewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.cost.Item;
import io.github.brinewright.internal.visit.Folder;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.proposal.Proposals;
import io.github.brinewright.sale.Packages;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;

/** What people do on the page, in a browser. */
class InBrowserTest {
  @TempDir Path temporary;
  private Served served;
  private Browser browser;
  private Path sites;

  @BeforeEach
  void start() throws Exception {
    served = new Served(temporary);
    sites = served.folder.resolve("sites.csv");
    browser = new Browser(served, Files.createDirectories(temporary.resolve("downloads")));
  }

  @AfterEach
  void end() {
    if (browser != null) {
      assertThat(browser.complaints()).filteredOn(each -> each.contains("Policy")).isEmpty();
      browser.close();
    }
    served.close();
  }

  private Job job() {
    return JobFolder.read(served.folder).job().orElseThrow();
  }

  private String recommended(String id, int people) {
    var home = job().home(id).orElseThrow();
    return job()
        .prices()
        .compare(home.site().withPeople(people), home.tariff())
        .recommended()
        .orElseThrow()
        .softener()
        .name();
  }

  @Test
  void whatFollowsChangesAsOneTypesAndIsSavedWhenAskedFor() throws Exception {
    String before = Files.readString(sites);
    browser.open("visit", "H01");
    browser.untilTextHas("part-answer", recommended("H01", 3));

    browser.type("field-people", "7");

    browser.untilTextHas("part-answer", recommended("H01", 7));
    browser.untilTextHas("said", recommended("H01", 7));
    assertThat(sites).content().isEqualTo(before);
    browser.at("save").click();
    browser.untilTextHas("saved", "Saved");
    assertThat(sites).content().isEqualTo(before.replace("2026-09-14,3,2,", "2026-09-14,7,2,"));
    assertThat(browser.at("field-people").getDomProperty("value")).isEqualTo("7");
  }

  @Test
  void aNewHomeIsFilledAndSaved() {
    browser.open("visit", "");
    assertThat(browser.text("field-people-wrong")).isEmpty();

    browser.type("field-site_id", "N1");
    browser.type("field-people", "4");
    browser.type("field-hardness_gpg", "22");
    browser.untilTextHas("said", "Recommended");
    browser.type("field-iron_mg_per_l", "<0.05");
    assertThat(browser.at("field-iron_mg_per_l-untested").isSelected()).isFalse();
    browser.at("save").click();
    browser.untilTextHas("saved", "Saved");

    var home = job().home("N1").orElseThrow();
    assertThat(home.site().household().people()).isEqualTo(4);
    assertThat(sites).content().contains("<0.05");
    assertThat(browser.at("home").getDomProperty("value")).isEqualTo(Folder.nameOf("N1"));
  }

  @Test
  void whatWasNotTestedIsAChoice() {
    browser.open("visit", "H01");
    WebElement box = browser.at("field-iron_mg_per_l-untested");
    assertThat(box.isSelected()).isFalse();

    box.click();

    assertThat(browser.at("field-iron_mg_per_l").getDomProperty("value")).isEmpty();
    browser.until(
        () ->
            browser.driver.getCurrentUrl().contains("field.iron_mg_per_l=&")
                || browser.driver.getCurrentUrl().endsWith("field.iron_mg_per_l="));
  }

  @ParameterizedTest
  @CsvSource({"en,must be from 1 to 40", "es,debe estar entre 1 y 40", "fr,doit être de 1 à 40"})
  void whatIsWrongIsSaidBesideItsFieldAndReadAloudWithIt(String language, String said) {
    browser.open("visit", "H01", "language=" + language);
    assertThat(browser.run("return document.documentElement.lang").toString()).startsWith(language);

    browser.type("field-people", "0");

    browser.untilTextHas("field-people-wrong", said);
    WebElement field = browser.at("field-people");
    assertThat(field.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(field.getDomAttribute("aria-describedby")).contains("field-people-wrong");
    browser.type("field-people", "3");
    browser.until(() -> browser.text("field-people-wrong").isEmpty());
    assertThat(browser.at("field-people").getDomAttribute("aria-invalid")).isNull();
  }

  @Test
  void aSliderShowsItsEffectAtOnceAndIsSetBack() {
    browser.open("compare", "H01");
    String before = browser.text("part-bars");

    // By keyboard: from 3 people to 7.
    browser.at("knob-people").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.at("knob-people").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);

    browser.untilTextHas("knob-people-shown", "7");
    browser.untilTextHas("part-sizes", "Recommended: " + recommended("H01", 7));
    assertThat(browser.text("part-bars")).isNotEqualTo(before);
    assertThat(browser.at("knob-people").getDomAttribute("aria-valuetext")).isEqualTo("7");
    browser.untilTextHas("trial", "trial");
    browser.at("reset").click();
    browser.untilTextHas("part-sizes", "Recommended: " + recommended("H01", 3));
    assertThat(browser.at("knob-people").getDomProperty("value")).isEqualTo("3");
  }

  @Test
  void whatIsTickedIsInTheTotalAndTheMonthlyCost() {
    Comparison comparison = job().compare(job().home("H01").orElseThrow());
    Packages packages = Packages.of(comparison);
    Item item = packages.extras().get(0);
    NumberFormat money = NumberFormat.getCurrencyInstance(Locale.US);
    String with = money.format(packages.all().get(0).total(List.of(item)).getAmount());
    browser.open("compare", "H01");
    assertThat(browser.text("part-totals")).doesNotContain(with);

    browser.at("extra-" + item.id()).click();

    browser.untilTextHas("part-totals", with);
  }

  @ParameterizedTest
  @CsvSource({"proposal,proposal-H01.pdf", "three-sizes,comparison-H01.pdf"})
  void aDocumentTakenAwayIsTheOneOfTheCommand(String document, String file) throws Exception {
    browser.open("take", "H01", "field.people=5");

    browser.driver.findElement(By.cssSelector("[data-document=" + document + "]")).click();

    Path taken = temporary.resolve("downloads").resolve(file);
    browser.until(() -> Files.exists(taken));
    Files.writeString(sites, Files.readString(sites).replace("2026-09-14,3,2,", "2026-09-14,5,2,"));
    Proposals proposals =
        document.equals("proposal") ? Proposals.of(job()) : Proposals.of(job()).onePage();
    assertThat(taken)
        .hasBinaryContent(proposals.write(job().home("H01").orElseThrow(), Served.DAY));
  }

  @Test
  void twoWindowsDoNotOverwriteEachOther() {
    browser.open("visit", "H02");
    String first = browser.driver.getWindowHandle();
    browser.driver.switchTo().newWindow(WindowType.TAB);
    browser.open("visit", "H04");
    browser.type("field-people", "5");
    browser.at("save").click();
    browser.untilTextHas("saved", "Saved");
    browser.driver.switchTo().window(first);
    browser.type("field-people", "2");

    browser.at("save").click();

    browser.untilTextHas("saved", "has been changed elsewhere");
    assertThat(sites).content().contains("2026-09-16,5,1,", "2026-09-15,1,1,");
    assertThat(browser.at("field-people").getDomProperty("value")).isEqualTo("2");
    browser.at("save").click();
    browser.until(() -> browser.text("saved").startsWith("Saved"));
    assertThat(sites).content().contains("2026-09-16,5,1,", "2026-09-15,2,1,");
  }

  @Test
  void theBackButtonGoesBackWithoutLosingAnswers() {
    browser.open("visit", "H01");
    browser.type("field-people", "6");
    browser.type("field-customer", "Somebody else");
    browser.untilTextHas("said", recommended("H01", 6));
    browser.driver.findElement(By.cssSelector("[data-view=compare]")).click();
    browser.until(() -> browser.driver.findElements(By.id("knob-people")));
    assertThat(browser.at("knob-people").getDomProperty("value")).isEqualTo("6");

    browser.driver.navigate().back();

    browser.until(() -> browser.driver.findElements(By.id("field-people")));
    assertThat(browser.at("field-people").getDomProperty("value")).isEqualTo("6");
    assertThat(browser.at("field-customer").getDomProperty("value")).isEqualTo("Somebody else");
    browser.driver.navigate().forward();
    browser.until(() -> browser.driver.findElements(By.id("knob-people")));
  }

  @Test
  void aLinkOpensTheSameStateAndHasNoNameInIt() {
    browser.open("visit", "H01");
    browser.type("field-customer", "Somebody Else");
    browser.type("field-street", "Another Street 5");
    browser.type("field-people", "6");
    browser.driver.findElement(By.cssSelector("[data-view=compare]")).click();
    browser.until(() -> browser.driver.findElements(By.id("knob-years")));
    browser.at("knob-years").sendKeys(Keys.ARROW_RIGHT);
    browser.untilTextHas("knob-years-shown", "11");
    browser.driver.findElement(By.cssSelector("[data-view=take]")).click();
    browser.until(() -> browser.driver.findElements(By.id("link")));
    String link = browser.at("link").getDomProperty("value");

    assertThat(link)
        .doesNotContainIgnoringCase("H01", "Somebody", "Another", "Okonkwo", "Lantern", "555")
        .contains("field.people=6", "try.years=11");
    browser.driver.switchTo().newWindow(WindowType.TAB);
    browser.driver.get(link.replace("view=take", "view=compare"));
    browser.until(() -> browser.driver.findElements(By.id("knob-years")));
    assertThat(browser.at("knob-years").getDomProperty("value")).isEqualTo("11");
    assertThat(browser.at("knob-people").getDomProperty("value")).isEqualTo("6");
    assertThat(browser.text("home")).contains("Okonkwo");
  }

  @Test
  void languageAndUnitsAreSwitchedOnThePage() {
    browser.open("compare", "H01");
    assertThat(browser.text("knob-hardness-shown")).isEqualTo("18.0 gpg");

    browser.driver.findElement(By.cssSelector("#units option[value=metric]")).click();
    browser.untilTextHas("knob-hardness-shown", "308 mg/L");
    browser.driver.findElement(By.cssSelector("#language option[value=fr]")).click();
    browser.until(() -> browser.driver.getTitle().startsWith("Comparer"));
    assertThat(browser.text("sizes-heading")).isEqualTo("Côte à côte");
    assertThat(browser.run("return document.documentElement.lang")).isEqualTo("fr-CA");
    browser.driver.findElement(By.cssSelector("#language option[value=es]")).click();
    browser.until(() -> browser.driver.getTitle().startsWith("Comparar"));
  }

  /** No mouse: past the head, to another view, to a field and to what follows. */
  @Test
  void theKeyboardAloneIsEnough() {
    browser.open("visit", "H01");
    browser.run("document.body.focus(); window.getSelection().removeAllRanges()");
    WebElement body = browser.driver.findElement(By.tagName("body"));
    body.sendKeys(Keys.TAB);
    assertThat(focused().getDomAttribute("id")).isEqualTo("skip");
    focused().sendKeys(Keys.ENTER);
    assertThat(focused().getDomAttribute("id")).isEqualTo("main");
    focused().sendKeys(Keys.TAB);
    assertThat(focused().getDomAttribute("id")).isEqualTo("field-site_id");
    browser.driver.findElement(By.cssSelector("[data-view=compare]")).sendKeys(Keys.ENTER);
    browser.until(() -> browser.driver.findElements(By.id("knob-people")));
    browser.until(() -> "main".equals(focused().getDomAttribute("id")));
    focused().sendKeys(Keys.TAB);
    assertThat(focused().getDomAttribute("id")).isEqualTo("knob-people");
  }

  @Test
  void thatTheServerHasEndedIsToldAndNothingTypedIsLost() {
    browser.open("visit", "H01");
    served.close();

    browser.type("field-people", "6");

    browser.untilTextHas("said", "has ended");
    assertThat(browser.at("field-people").getDomProperty("value")).isEqualTo("6");
  }

  private WebElement focused() {
    return browser.driver.switchTo().activeElement();
  }

  /** A page of another site asks as a browser lets it; it learns nothing and writes nothing. */
  @Test
  void aPageOfAnotherSiteCanNeitherReadNorWrite() throws Exception {
    byte[] before = Files.readAllBytes(sites);
    HttpServer other = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
    other.createContext(
        "/",
        exchange -> {
          byte[] page = "<!DOCTYPE html><title>other</title>".getBytes(StandardCharsets.UTF_8);
          exchange.sendResponseHeaders(200, page.length);
          exchange.getResponseBody().write(page);
          exchange.close();
        });
    other.start();
    try {
      browser.driver.get("http://localhost:" + other.getAddress().getPort() + "/");
      for (String how : List.of("{}", "{mode: 'no-cors'}", "{method: 'POST', body: 'home='}")) {
        assertThat(tried(served.server.address().toString(), how)).as(how).isEqualTo("nothing");
      }
      String save = served.server.address() + "save";
      String with =
          "{method: 'POST', mode: 'no-cors', headers: {'X-Page-Token': '"
              + served.token
              + "'}, body: 'x=y'}";
      assertThat(tried(save, with)).isEqualTo("nothing");
      assertThat(tried(save, with.replace("mode: 'no-cors', ", ""))).isEqualTo("nothing");
      assertThat(sites).hasBinaryContent(before);
    } finally {
      other.stop(0);
    }
  }

  /** What a script of the open page gets to read. */
  private Object tried(String address, String how) {
    return browser.driver.executeAsyncScript(
        "const done = arguments[1]; fetch(arguments[0], "
            + how
            + ").then(r => r.text()).then(t => done(t || 'nothing'), () => done('nothing'))",
        address);
  }
}
