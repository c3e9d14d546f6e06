package org.hedgerow.web.browser;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Chromium, driven as a person would use it; it knows nothing of what went before. */
final class Browser implements AutoCloseable {

  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final String origin;
  private final Chromium chromium;
  private final ChromeDriver driver;

  private Browser(String origin, Chromium chromium) {
    this.origin = origin;
    this.chromium = chromium;
    this.driver = chromium.driver();
  }

  /** Skips the test where there is no Chromium; on a build server that is a failure. */
  static Browser open(String origin, Screen screen) {
    Browser browser = new Browser(origin, Chromium.take());
    browser.resize(screen);
    browser.allowDownloads();
    browser.leaveStartPage();
    return browser;
  }

  private void resize(Screen screen) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of(
            "width",
            screen.width(),
            "height",
            screen.height(),
            "deviceScaleFactor",
            1,
            "mobile",
            screen == Screen.PHONE));
  }

  /** It isn't ours, and full of requests of the browser itself. */
  private void leaveStartPage() {
    driver.get("about:blank");
    requests();
    complaints();
  }

  /** Holds as long as the tab that it was said in. */
  private void allowDownloads() {
    driver.executeCdpCommand(
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", chromium.downloads().toString()));
  }

  void withoutScripts() {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
  }

  void prefersReducedMotion() {
    emulate(
        Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
  }

  void asOnPaper() {
    emulate(Map.of("media", "print"));
  }

  void asOnScreen() {
    emulate(Map.of("media", ""));
  }

  private void emulate(Map<String, Object> media) {
    driver.executeCdpCommand("Emulation.setEmulatedMedia", media);
  }

  void allowClipboard() {
    driver.executeCdpCommand(
        "Browser.grantPermissions",
        Map.of("origin", origin, "permissions", List.of("clipboardReadWrite")));
  }

  WebDriver driver() {
    return driver;
  }

  void go(String address) {
    driver.get(origin + address);
  }

  void back() {
    driver.navigate().back();
  }

  /** What stands in the address bar, without the origin. */
  String address() {
    return requireNonNull(driver.getCurrentUrl()).substring(origin.length());
  }

  WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  boolean has(String selector) {
    return !all(selector).isEmpty();
  }

  String text(String selector) {
    return one(selector).getText();
  }

  List<String> texts(String selector) {
    return all(selector).stream().map(WebElement::getText).toList();
  }

  WebElement link(String text) {
    return driver.findElement(By.linkText(text));
  }

  void await(Function<Browser, Boolean> condition) {
    new WebDriverWait(driver, PATIENCE)
        .ignoring(StaleElementReferenceException.class)
        .until(anything -> condition.apply(this));
  }

  void awaitAddress(String address) {
    await(browser -> browser.address().equals(address));
  }

  /** How far below the top of the window an element begins, in CSS pixels. */
  double top(String selector) {
    return edge(selector, "top");
  }

  /** How far below the top of the window an element ends, in CSS pixels. */
  double bottom(String selector) {
    return edge(selector, "bottom");
  }

  /** How far from the left of the window an element begins, in CSS pixels. */
  double left(String selector) {
    return edge(selector, "left");
  }

  private double edge(String selector, String name) {
    String script = "return arguments[0].getBoundingClientRect()[arguments[1]]";
    return ((Number) requireNonNull(script(script, one(selector), name))).doubleValue();
  }

  /** Waits until something has the focus. */
  void awaitFocus(String selector) {
    await(browser -> browser.isFocused(selector));
  }

  private boolean isFocused(String selector) {
    String script = "return document.activeElement.matches(arguments[0])";
    return Boolean.TRUE.equals(script(script, selector));
  }

  /** The element that has the focus. */
  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  void press(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  /** Presses the tabulator until something has the focus, as often as it is likely to take. */
  void tabTo(String selector) {
    for (int i = 0; i < 60; i++) {
      press(Keys.TAB);
      if (isFocused(selector)) {
        return;
      }
    }
    fail("the tabulator doesn't reach " + selector);
  }

  @Nullable Object script(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** What a script calls its last argument with. */
  Object answer(String script, Object... arguments) {
    return requireNonNull(driver.executeAsyncScript(script, arguments));
  }

  /** A picture of the page as far as it goes, as PNG. */
  byte[] wholePage() {
    Map<String, Object> taken =
        driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true));
    return Base64.getDecoder().decode(String.valueOf(taken.get("data")));
  }

  String clipboard() {
    return String.valueOf(
        driver.executeAsyncScript("navigator.clipboard.readText().then(arguments[0])"));
  }

  /** The text of a file that has been downloaded. */
  String download(String name) {
    Path file = chromium.downloads().resolve(name);
    // The browser takes the name first, and writes the file afterwards.
    await(browser -> file.toFile().length() > 0);
    try {
      return Files.readString(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Where the page, and everything in it, was asked for since the last time. */
  List<String> requests() {
    return StreamSupport.stream(
            driver.manage().logs().get(LogType.PERFORMANCE).spliterator(), false)
        .map(entry -> json(entry.getMessage()).path("message"))
        .filter(message -> message.path("method").asText().equals("Network.requestWillBeSent"))
        .map(message -> message.path("params").path("request").path("url").asText())
        .toList();
  }

  /** What the browser complains of, such as a broken security policy, since the last time. */
  List<String> complaints() {
    return StreamSupport.stream(driver.manage().logs().get(LogType.BROWSER).spliterator(), false)
        .map(entry -> entry.getMessage())
        .toList();
  }

  private static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException problem) {
      throw new IllegalStateException(problem);
    }
  }

  @Override
  public void close() {
    chromium.giveBack(origin);
  }
}
