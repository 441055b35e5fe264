package fingering.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/** A real headless browser, controlled by the protocol of its developer tools. */
final class Browser {
  private static final String ADDRESS = "DevTools listening on ";
  private static final long PATIENCE = 180;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process process;
  private final Path profile;
  private final WebSocket socket;
  private final AtomicInteger number = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
  private final CompletableFuture<Boolean> none = CompletableFuture.completedFuture(true);
  private volatile CompletableFuture<Boolean> loaded = none;
  private final List<String> complaints = new CopyOnWriteArrayList<>();
  private final List<String> requests = new CopyOnWriteArrayList<>();
  private String session = "";

  private Browser(Path program) throws Exception {
    profile = Files.createTempDirectory("browser");
    process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--mute-audio",
                "--autoplay-policy=no-user-gesture-required",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectErrorStream(true)
            .start();
    socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address()), new Listener())
            .get(PATIENCE, TimeUnit.SECONDS);
    String target =
        send("Target.createTarget", node().put("url", "about:blank")).path("targetId").asText();
    session =
        send("Target.attachToTarget", node().put("targetId", target).put("flatten", true))
            .path("sessionId")
            .asText();
    for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
      send(domain + ".enable", node());
    }
  }

  /** The browser of this machine, if there is one. */
  static Optional<Path> program() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.of("chromium", "chromium-browser", "google-chrome")
        .flatMap(name -> Stream.of(path.split(File.pathSeparator)).map(dir -> Path.of(dir, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static Browser start(Path program) throws Exception {
    return new Browser(program);
  }

  static ObjectNode node() {
    return JSON.createObjectNode();
  }

  private String address() throws IOException {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      if (line.startsWith(ADDRESS)) {
        Thread drain = new Thread(() -> drain(lines));
        drain.setDaemon(true);
        drain.start();
        return line.substring(ADDRESS.length()).strip();
      }
    }
    throw new IOException("the browser did not say where it listens");
  }

  private static void drain(BufferedReader lines) {
    try {
      lines.transferTo(Writer.nullWriter());
    } catch (IOException e) {
      // The browser has been ended.
    }
  }

  /** Sends a command and waits for its answer. */
  JsonNode send(String method, ObjectNode parameters) throws Exception {
    int id = number.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    answers.put(id, answer);
    ObjectNode command = node().put("id", id).put("method", method);
    command.set("params", parameters);
    if (!session.isEmpty()) {
      command.put("sessionId", session);
    }
    socket.sendText(command.toString(), true).get(PATIENCE, TimeUnit.SECONDS);
    JsonNode full = answer.get(PATIENCE, TimeUnit.SECONDS);
    if (full.has("error")) {
      throw new IOException(method + ": " + full.get("error"));
    }
    return full.path("result");
  }

  /** Opens a file at a width in pixels. */
  void open(Path file, int width) throws Exception {
    open(file.toUri().toString(), width);
  }

  /** Opens an address at a width in pixels. */
  void open(String address, int width) throws Exception {
    // The page before may wait for a server that has ended: it must not complain about that here.
    show("about:blank");
    complaints.clear();
    requests.clear();
    media("screen", "light");
    send(
        "Emulation.setDeviceMetricsOverride",
        node()
            .put("width", width)
            .put("height", 900)
            .put("deviceScaleFactor", 1)
            .put("mobile", false));
    show(address);
  }

  private void show(String address) throws Exception {
    loaded = new CompletableFuture<>();
    send("Page.navigate", node().put("url", address));
    loaded.get(PATIENCE, TimeUnit.SECONDS);
  }

  /** Shows the page on screen or in print, light or dark. */
  void media(String media, String scheme) throws Exception {
    ObjectNode parameters = node().put("media", media);
    parameters
        .putArray("features")
        .addObject()
        .put("name", "prefers-color-scheme")
        .put("value", scheme);
    send("Emulation.setEmulatedMedia", parameters);
  }

  /** Runs a script in the page, and returns its result, or that of its promise. */
  JsonNode run(String script) throws Exception {
    JsonNode result =
        send(
            "Runtime.evaluate",
            node().put("expression", script).put("awaitPromise", true).put("returnByValue", true));
    if (result.has("exceptionDetails")) {
      throw new IOException("script failed: " + result.get("exceptionDetails"));
    }
    JsonNode value = result.path("result").path("value");
    return value.isTextual() && value.asText().startsWith("{")
        ? JSON.readTree(value.asText())
        : value;
  }

  /** Chooses a file in a field of the page. */
  void choose(String selector, Path file) throws Exception {
    int root = send("DOM.getDocument", node()).path("root").path("nodeId").asInt();
    int field =
        send("DOM.querySelector", node().put("nodeId", root).put("selector", selector))
            .path("nodeId")
            .asInt();
    ObjectNode files = node().put("nodeId", field);
    files.putArray("files").add(file.toAbsolutePath().normalize().toString());
    send("DOM.setFileInputFiles", files);
  }

  /** Waits until an expression is true in the page that is then shown. */
  void await(String expression) throws Exception {
    for (long left = 10 * PATIENCE; left > 0; left--) {
      try {
        if (run("Boolean(" + expression + ")").asBoolean()) {
          return;
        }
      } catch (IOException e) {
        // Another page may come while the expression is looked at.
        if (!String.valueOf(e.getMessage()).contains("navigated")) {
          throw e;
        }
      }
      Thread.sleep(100);
    }
    throw new IOException("never true: " + expression);
  }

  /** Waits until the page has loaded what it asked for, and shows it. */
  void awaitQuiet() throws Exception {
    await("!document.querySelector('.htmx-request, .htmx-swapping, .htmx-added, .htmx-settling')");
  }

  /** What the page wrote to the console, and errors. */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** The requested addresses. */
  List<String> requests() {
    return List.copyOf(requests);
  }

  private void event(JsonNode event) {
    switch (event.path("method").asText()) {
      case "Page.loadEventFired" -> loaded.complete(true);
      case "Runtime.consoleAPICalled", "Runtime.exceptionThrown", "Log.entryAdded" ->
          complaints.add(event.path("params").toString());
      case "Network.requestWillBeSent" ->
          requests.add(event.path("params").path("request").path("url").asText());
      default -> {}
    }
  }

  /** Ends the browser, and deletes its profile. */
  void end() throws Exception {
    socket.abort();
    process.destroy();
    if (!process.waitFor(10, TimeUnit.SECONDS)) {
      process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
    }
    delete();
  }

  /** Deletes the profile; processes of the browser may still write to it for a moment. */
  private void delete() throws IOException, InterruptedException {
    for (int left = 50; Files.exists(profile); left--) {
      try (Stream<Path> walked = Files.walk(profile)) {
        for (Path file : walked.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(file);
        }
      } catch (IOException | UncheckedIOException e) {
        if (left == 0) {
          throw e;
        }
        Thread.sleep(100);
      }
    }
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
      text.append(part);
      if (last) {
        take(text.toString());
        text.setLength(0);
      }
      from.request(1);
      return CompletableFuture.completedStage(null);
    }

    private void take(String message) {
      try {
        JsonNode node = JSON.readTree(message);
        if (node.has("id")) {
          Optional.ofNullable(answers.remove(node.get("id").asInt()))
              .ifPresent(answer -> answer.complete(node));
        } else {
          event(node);
        }
      } catch (IOException e) {
        complaints.add("an answer could not be read: " + e.getMessage());
      }
    }
  }
}
