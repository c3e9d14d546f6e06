package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Deque;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A running Chromium with a profile of its own. Starting one takes seconds, so whoever is done with
 * one hands it on: wiped, as if it were new. All of them end with the tests.
 */
final class Chromium {
  private static final Path PROGRAM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Deque<Chromium> IDLE = new ConcurrentLinkedDeque<>();

  private final Path profile;
  private final Path downloads;
  private final ChromeDriver driver;

  private Chromium(Path profile) throws IOException {
    this.profile = profile;
    this.downloads = Files.createDirectory(profile.resolve("downloads"));
    this.driver = new ChromeDriver(service(), options(profile));
    Runtime.getRuntime().addShutdownHook(new Thread(this::end));
  }

  /** Skips the test where there is no Chromium; on a build server that is a failure. */
  static Chromium take() {
    requireInstalled();
    Chromium idle = IDLE.poll();
    return idle == null ? start() : idle;
  }

  private static void requireInstalled() {
    boolean isThere = Files.isExecutable(PROGRAM) && Files.isExecutable(DRIVER);
    String advice = "Chromium isn't installed. On Debian: apt-get install chromium chromium-driver";
    if (!isThere && "true".equals(System.getenv("CI"))) {
      fail(advice);
    }
    assumeTrue(isThere, advice);
  }

  private static Chromium start() {
    try {
      return new Chromium(Files.createTempDirectory("hedgerow-browser"));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static ChromeDriverService service() {
    return new ChromeDriverService.Builder()
        .usingDriverExecutable(DRIVER.toFile())
        .usingAnyFreePort()
        .withLogFile(new File("/dev/null"))
        .build();
  }

  private static ChromeOptions options(Path profile) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(PROGRAM.toFile());
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-extensions",
        "--disable-sync",
        "--user-data-dir=" + profile);
    return options;
  }

  ChromeDriver driver() {
    return driver;
  }

  Path downloads() {
    return downloads;
  }

  /**
   * Hands it on.
   *
   * @param origin that was visited
   */
  void giveBack(String origin) {
    try {
      wipe(origin);
      IDLE.push(this);
    } catch (WebDriverException | IOException broken) {
      end();
    }
  }

  /** Screens, media and the like are emulated for a tab, and go with it. */
  private void wipe(String origin) throws IOException {
    String fresh = driver.switchTo().newWindow(WindowType.TAB).getWindowHandle();
    for (String old : driver.getWindowHandles()) {
      if (!old.equals(fresh)) {
        driver.switchTo().window(old).close();
      }
    }
    driver.switchTo().window(fresh);
    driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
    driver.executeCdpCommand("Network.clearBrowserCache", Map.of());
    driver.executeCdpCommand(
        "Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
    driver.executeCdpCommand("Browser.resetPermissions", Map.of());
    deleteAllIn(downloads);
  }

  private static void deleteAllIn(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .filter(file -> !file.equals(folder))
          .sorted(Comparator.reverseOrder())
          .map(Path::toFile)
          .forEach(File::delete);
    }
  }

  private void end() {
    driver.quit();
    try {
      deleteAllIn(profile);
      Files.deleteIfExists(profile);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
