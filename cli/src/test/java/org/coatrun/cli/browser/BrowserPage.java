package org.coatrun.cli.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.imageio.ImageIO;

/** One page of a browser, as a person with mouse and keys would use it. */
public final class BrowserPage implements AutoCloseable {

  private static final Map<String, Integer> KEYS =
      Map.of("Tab", 9, "Enter", 13, "Home", 36, "ArrowLeft", 37, "ArrowUp", 38, "ArrowRight", 39);

  private final DevTools tools;
  private final String target;
  private final String session;
  private final List<String> complaints = new CopyOnWriteArrayList<>();
  private final List<String> requests = new CopyOnWriteArrayList<>();

  BrowserPage(DevTools tools, String target, String session, int width, int height) {
    this.tools = tools;
    this.target = target;
    this.session = session;
    tools.listen(this::note);
    for (String domain : List.of("Page", "Runtime", "Log", "Network", "Accessibility")) {
      call(domain + ".enable", Map.of());
    }
    resize(width, height);
  }

  private void note(JsonNode event) {
    if (!event.path("sessionId").asText().equals(session)) {
      return;
    }
    JsonNode p = event.path("params");
    switch (event.path("method").asText()) {
      case "Runtime.exceptionThrown" -> complaints.add(p.path("exceptionDetails").toString());
      case "Log.entryAdded" -> complaints.add(p.path("entry").path("text").asText());
      case "Network.requestWillBeSent" -> requests.add(p.path("request").path("url").asText());
      case "Runtime.consoleAPICalled" -> {
        if (List.of("error", "warning", "assert").contains(p.path("type").asText())) {
          complaints.add(p.path("args").toString());
        }
      }
      default -> {
        // nothing that a test asks about
      }
    }
  }

  /** Opens a file, and waits until the page says that it is ready. */
  public BrowserPage open(Path file, String fragment) {
    String address = file.toUri() + (fragment.isEmpty() ? "" : "#" + fragment);
    JsonNode gone = call("Page.navigate", Map.of("url", address));
    if (gone.has("errorText")) {
      throw new IllegalStateException(address + ": " + gone.path("errorText").asText());
    }
    until("document.documentElement?.dataset.ready === 'true'");
    return this;
  }

  /** The value of an expression; a promise is waited for. */
  public JsonNode evaluate(String expression) {
    JsonNode said =
        call(
            "Runtime.evaluate",
            Map.of(
                "expression", expression,
                "returnByValue", true,
                "awaitPromise", true,
                "userGesture", true));
    if (said.has("exceptionDetails")) {
      throw new IllegalStateException(
          expression + ": " + said.path("exceptionDetails").path("exception"));
    }
    return said.path("result").path("value");
  }

  /** Waits until a condition holds in the page. */
  public void until(String condition) {
    evaluate(
        "new Promise((yes, no) => { const end = performance.now() + 120000; const look = () => {"
            + " let held; try { held = ("
            + condition
            + "); } catch (e) { no(e); return; } if (held) yes(true); else if (performance.now() >"
            + " end) no(new Error('waited in vain')); else setTimeout(look, 20); }; look(); })");
  }

  /** Visible text of the first element that a selector finds. */
  public String text(String selector) {
    return evaluate("document.querySelector(" + quoted(selector) + ").innerText").asText();
  }

  /** How many elements a selector finds. */
  public int count(String selector) {
    return evaluate("document.querySelectorAll(" + quoted(selector) + ").length").asInt();
  }

  /** Scrolls an element into sight and clicks its middle. */
  public void click(String selector) {
    JsonNode at =
        evaluate(
            "(() => { const e = document.querySelector("
                + quoted(selector)
                + "); e.scrollIntoView({block: 'center'}); const r = e.getBoundingClientRect();"
                + " return [r.left + r.width / 2, r.top + r.height / 2]; })()");
    clickAt(at.path(0).asDouble(), at.path(1).asDouble());
  }

  /** Clicks a point of the window. */
  public void clickAt(double x, double y) {
    for (String type : List.of("mouseMoved", "mousePressed", "mouseReleased")) {
      call(
          "Input.dispatchMouseEvent",
          Map.of(
              "type",
              type,
              "x",
              x,
              "y",
              y,
              "button",
              type.equals("mouseMoved") ? "none" : "left",
              "clickCount",
              1));
    }
  }

  /** Makes the screen one that is touched. */
  public BrowserPage touched() {
    call("Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 5));
    return this;
  }

  /** A finger comes down, slips so far, and goes up. */
  public void tap(double x, double y, double slipX, double slipY) {
    touch("touchStart", List.of(Map.of("x", x, "y", y)));
    touch("touchMove", List.of(Map.of("x", x + slipX, "y", y + slipY)));
    touch("touchEnd", List.of());
  }

  private void touch(String type, List<Map<String, Double>> points) {
    call("Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", points));
  }

  /** Sets a control as a person's hand would, events included. */
  public void set(String selector, String value) {
    evaluate(
        "(() => { const e = document.querySelector("
            + quoted(selector)
            + "); if (e.type === 'checkbox') e.checked = "
            + quoted(value)
            + " === 'true'; else e.value = "
            + quoted(value)
            + "; e.dispatchEvent(new Event('input', {bubbles: true})); e.dispatchEvent(new"
            + " Event('change', {bubbles: true})); })()");
  }

  /** Presses and releases a key, such as {@code Tab} or {@code Enter}. */
  public void press(String key) {
    int code = KEYS.getOrDefault(key, 0);
    for (String type : List.of("keyDown", "keyUp")) {
      call(
          "Input.dispatchKeyEvent",
          Map.of(
              "type",
              type,
              "key",
              key,
              "code",
              key,
              "windowsVirtualKeyCode",
              code,
              "text",
              key.equals("Enter") && type.equals("keyDown") ? "\r" : ""));
    }
  }

  /** Does something that saves a file, and gives the file's text. */
  public String saved(Path folder, Runnable action) throws IOException {
    tools.call(
        "",
        "Browser.setDownloadBehavior",
        Map.of("behavior", "allow", "downloadPath", folder.toString(), "eventsEnabled", true));
    CompletableFuture<JsonNode> name = tools.next("Browser.downloadWillBegin", p -> true);
    CompletableFuture<JsonNode> end =
        tools.next("Browser.downloadProgress", p -> p.path("state").asText().equals("completed"));
    action.run();
    DevTools.wait(end, "a download");
    return Files.readString(folder.resolve(name.join().path("suggestedFilename").asText()));
  }

  /** Makes the window so large. */
  public void resize(int width, int height) {
    call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Shows the page as on paper ({@code print}), or on the screen again ({@code ""}). */
  public void medium(String medium) {
    call("Emulation.setEmulatedMedia", Map.of("media", medium));
  }

  /** What is in sight. */
  public BufferedImage picture() throws IOException {
    String data = call("Page.captureScreenshot", Map.of("format", "png")).path("data").asText();
    return ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(data)));
  }

  /** The page as a PDF. */
  public byte[] printed() {
    String data = call("Page.printToPDF", Map.of("printBackground", true)).path("data").asText();
    return Base64.getDecoder().decode(data.getBytes(StandardCharsets.US_ASCII));
  }

  /** What a screen reader is told: the nodes of the accessibility tree. */
  public JsonNode accessibility() {
    return call("Accessibility.getFullAXTree", Map.of()).path("nodes");
  }

  /** Errors and warnings so far. */
  public List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** Addresses asked for so far. */
  public List<String> requests() {
    return List.copyOf(requests);
  }

  @Override
  public void close() {
    tools.call("", "Target.closeTarget", Map.of("targetId", target));
  }

  private JsonNode call(String method, Map<String, ?> parameters) {
    return tools.call(session, method, parameters);
  }

  private static String quoted(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
