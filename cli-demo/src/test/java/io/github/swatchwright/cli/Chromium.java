package io.github.swatchwright.cli;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;

/** A headless Chromium, spoken to by the DevTools protocol. Every wait ends. */
final class Chromium implements AutoCloseable {
  static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process process;
  private final WebSocket socket;
  private final AtomicInteger lastId = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final List<JsonNode> events = new CopyOnWriteArrayList<>();

  private Chromium(Process process, URI address) {
    this.process = process;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .connectTimeout(PATIENCE)
            .buildAsync(address, new Listener())
            .join();
  }

  /** Where a chromium is on this machine's path. */
  private static Optional<Path> find() {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .map(folder -> Path.of(folder, "chromium"))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /**
   * Starts the one on this machine's path with an empty profile. Where there is none, the test is
   * skipped, or fails if the environment says {@code BROWSER_TESTS=required}.
   *
   * @param profile an empty folder
   */
  static Chromium start(Path profile) throws IOException, InterruptedException {
    Optional<Path> program = find();
    if (!"required".equals(System.getenv("BROWSER_TESTS"))) {
      assumeTrue(program.isPresent(), "no chromium on the path");
    }
    return start(
        program.orElseThrow(
            () -> new IllegalStateException("BROWSER_TESTS=required, but no chromium on the path")),
        profile);
  }

  private static Chromium start(Path program, Path profile)
      throws IOException, InterruptedException {
    Process process =
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
                "--disable-dev-shm-usage",
                "--force-color-profile=srgb",
                "--hide-scrollbars",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      List<String> portAndPath = activePort(process, profile.resolve("DevToolsActivePort"));
      return new Chromium(
          process, URI.create("ws://127.0.0.1:" + portAndPath.get(0) + portAndPath.get(1)));
    } catch (IOException | InterruptedException | RuntimeException e) {
      stop(process);
      throw e;
    }
  }

  private static List<String> activePort(Process process, Path file)
      throws IOException, InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end && process.isAlive()) {
      if (Files.exists(file)) {
        List<String> lines = Files.readAllLines(file);
        if (lines.size() >= 2) {
          return lines;
        }
      }
      Thread.sleep(50);
    }
    throw new IOException("chromium didn't open its DevTools port");
  }

  /** Opens a page and waits until it is loaded. */
  BrowserPage open(URI address) {
    JsonNode target = call("", "Target.createTarget", Map.of("url", "about:blank"));
    JsonNode session =
        call(
            "",
            "Target.attachToTarget",
            Map.of("targetId", target.get("targetId").asText(), "flatten", true));
    return BrowserPage.load(this, session.get("sessionId").asText(), address);
  }

  /** Calls a method of the protocol and waits for its result. */
  JsonNode call(String session, String method, Map<String, ?> parameters) {
    int id = lastId.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    waiting.put(id, answer);
    ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
    message.set("params", JSON.valueToTree(parameters));
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    socket.sendText(message.toString(), true).join();
    try {
      JsonNode answered = answer.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
      if (answered.has("error")) {
        throw new IllegalStateException(method + ": " + answered.get("error"));
      }
      return answered.get("result");
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      throw new IllegalStateException(method + " wasn't answered", e);
    }
  }

  /** What a page has reported so far. */
  List<JsonNode> events(String session, String... methods) {
    List<JsonNode> found = new ArrayList<>();
    for (JsonNode event : events) {
      if (event.path("sessionId").asText().equals(session)
          && Arrays.asList(methods).contains(event.path("method").asText())) {
        found.add(event.get("params"));
      }
    }
    return found;
  }

  @Override
  public void close() {
    call("", "Browser.close", Map.of());
    socket.abort();
    stop(process);
  }

  /** Waits until it and all that it started have ended, and ends what hasn't. */
  private static void stop(Process process) {
    List<ProcessHandle> started = new ArrayList<>(process.descendants().toList());
    started.add(process.toHandle());
    for (ProcessHandle handle : started) {
      CompletableFuture<ProcessHandle> end =
          handle.onExit().completeOnTimeout(handle, 10, TimeUnit.SECONDS);
      if (end.join().isAlive()) {
        handle.destroyForcibly();
        handle.onExit().completeOnTimeout(handle, 10, TimeUnit.SECONDS).join();
      }
    }
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder message = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence text, boolean isLast) {
      message.append(text);
      if (isLast) {
        take(message.toString());
        message.setLength(0);
      }
      from.request(1);
      return CompletableFuture.completedFuture(null);
    }

    private void take(String text) {
      try {
        JsonNode node = JSON.readTree(text);
        CompletableFuture<JsonNode> answer =
            node.has("id") ? waiting.remove(node.get("id").asInt()) : null;
        if (answer == null) {
          events.add(node);
        } else {
          answer.complete(node);
        }
      } catch (IOException e) {
        waiting.values().forEach(answer -> answer.completeExceptionally(e));
      }
    }
  }
}
