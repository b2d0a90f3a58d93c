package org.tallywall.experiments.browser;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** A browser without a window: the Chromium of this machine, if it has one. */
public final class Chromium implements AutoCloseable {
  private static final List<String> BROWSERS = List.of("chromium", "chromium-browser");
  private static final List<String> DRIVERS = List.of("chromedriver", "chromium.chromedriver");
  private static final List<String> QUIET =
      List.of(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-dev-shm-usage",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-quic",
          "--no-first-run",
          "--hide-scrollbars",
          "--lang=en");

  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b(?!s)");
  private static final PrintOptions LETTER = new PrintOptions();

  static {
    LETTER.setPageSize(new PageSize(27.94, 21.59));
  }

  private final ChromeDriver driver;

  private Chromium(ChromeDriver driver) {
    this.driver = driver;
  }

  /** The driver warns that it lacks classes for the newest browsers; none of them is used. */
  private static final Logger FINDER = Logger.getLogger("org.openqa.selenium.devtools");

  /** Starts the browser; none if this machine lacks it or its driver. */
  public static Optional<Chromium> start() {
    Optional<File> browser = onPath(BROWSERS);
    Optional<File> chromedriver = onPath(DRIVERS);
    if (browser.isEmpty() || chromedriver.isEmpty()) {
      return Optional.empty();
    }
    FINDER.setLevel(Level.SEVERE);
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.get()).addArguments(QUIET);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(chromedriver.get()).build();
    return Optional.of(new Chromium(new ChromeDriver(service, options)));
  }

  public ChromeDriver driver() {
    return driver;
  }

  /** Opens a file as on a screen of the given width. */
  public void open(Path file, int width) {
    open(file, "", width);
  }

  /** Opens a file by a link into it, as if no page had been open before. */
  public void open(Path file, String link, int width) {
    driver.manage().window().setSize(new Dimension(1280, 900));
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    driver.get("about:blank");
    console();
    requests();
    driver.get(file.toUri() + link);
  }

  /** What a script answers. */
  public Object run(String script) {
    return driver.executeScript(script);
  }

  /** Types keys into the page as a whole. */
  public void press(CharSequence... keys) {
    driver.findElement(By.tagName("body")).sendKeys(keys);
  }

  /** What the accessibility engine axe-core finds, of whatever weight. */
  public List<String> findings() throws IOException {
    try (InputStream in = Chromium.class.getResourceAsStream("/axe.min.js")) {
      run(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    Object found =
        driver.executeAsyncScript(
            "var done = arguments[arguments.length - 1];"
                + "axe.run().then(function (result) { done(result.violations.map("
                + "function (v) { return v.impact + ' ' + v.id + ' ' + v.help + ' '"
                + " + v.nodes.map(function (n) { return n.html; }).join(' | '); })); });");
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  /** On how many sheets the page is printed, of the size that Americans use. */
  public int sheets() {
    byte[] paper = Base64.getDecoder().decode(driver.print(LETTER).getContent());
    Matcher sheets = SHEET.matcher(new String(paper, StandardCharsets.ISO_8859_1));
    return (int) sheets.results().count();
  }

  /** What the console said since it was last asked. */
  public List<String> console() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** What the page asked for since it was last asked, the page itself among it. */
  public List<String> requests() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(LogEntry::getMessage)
        .filter(message -> message.contains("\"Network.requestWillBeSent\""))
        .map(
            message -> message.replaceFirst("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }

  private static Optional<File> onPath(List<String> names) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return names.stream()
        .flatMap(name -> Stream.of(path.split(File.pathSeparator)).map(dir -> Path.of(dir, name)))
        .filter(Files::isExecutable)
        .map(Path::toFile)
        .findFirst();
  }
}
