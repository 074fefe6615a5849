package io.github.brinewright.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.brinewright.internal.visit.Folder;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Debian's Chromium without a window, driven by its own driver; nothing is downloaded for it. */
final class Browser implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  final ChromeDriver driver;
  private final Served served;

  Browser(Served served, Path downloads) {
    this.served = served;
    assumeTrue(
        Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
        "skipped: there is no /usr/bin/chromium with /usr/bin/chromedriver; install Debian's"
            + " chromium and chromium-driver");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toFile());
    options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage");
    options.addArguments("--window-size=1280,1000", "--disable-background-networking");
    options.setExperimentalOption(
        "prefs", Map.of("download.default_directory", downloads.toString()));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    driver =
        new ChromeDriver(
            new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(DRIVER.toString()))
                .build(),
            options);
  }

  /** Opens the page at a view of a home, with what else its link says. */
  Browser open(String view, String home, String... more) {
    String rest = more.length == 0 ? "" : "&" + String.join("&", more);
    String at = "#view=" + view + "&home=" + (home.isEmpty() ? "" : Folder.nameOf(home)) + rest;
    driver.get("about:blank");
    driver.get(served.server.address() + at);
    until(() -> driver.findElements(By.cssSelector("a[data-view=" + view + "][aria-current]")));
    until(() -> !driver.findElement(By.id("said")).getDomProperty("textContent").isEmpty());
    until(() -> driver.findElements(By.cssSelector("body[data-settled=yes]")));
    return this;
  }

  WebElement at(String id) {
    return driver.findElement(By.id(id));
  }

  String text(String id) {
    return at(id).getText();
  }

  /** Types in place of what stands in a field. */
  void type(String id, String text) {
    at(id).sendKeys(Keys.chord(Keys.CONTROL, "a"), text.isEmpty() ? Keys.DELETE : text);
  }

  /** Waits until something is there, or true. */
  <T> void until(Supplier<T> condition) {
    new WebDriverWait(driver, Duration.ofSeconds(10))
        .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
        .until(
            all -> {
              T found = condition.get();
              return found instanceof List<?> list ? !list.isEmpty() : found;
            });
  }

  void untilTextHas(String id, String words) {
    until(() -> at(id).getDomProperty("textContent").contains(words));
  }

  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  void size(int width, int height, boolean phone) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
  }

  void dark(boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
  }

  /** What the browser complained of, as of a style that the policy forbids. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(each -> each.getLevel().intValue() >= Level.WARNING.intValue())
        .map(each -> each.getMessage())
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
