package org.coatrun.cli.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Calls and events of the DevTools protocol over one socket. */
final class DevTools implements WebSocket.Listener {

  private static final long PATIENCE_S = 180;

  private final JsonMapper mapper = new JsonMapper();
  private final AtomicInteger last = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> open = new ConcurrentHashMap<>();
  private final List<Consumer<JsonNode>> listeners = new CopyOnWriteArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final WebSocket socket;

  DevTools(URI address) {
    socket = HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(address, this).join();
  }

  /** Calls a method and waits for its result. */
  JsonNode call(String session, String method, Map<String, ?> parameters) {
    int id = last.incrementAndGet();
    ObjectNode message = mapper.createObjectNode().put("id", id).put("method", method);
    message.set("params", mapper.valueToTree(parameters));
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    open.put(id, answer);
    socket.sendText(message.toString(), true).join();
    JsonNode said = wait(answer, method);
    if (said.has("error")) {
      throw new IllegalStateException(method + ": " + said.path("error").path("message").asText());
    }
    return said.path("result");
  }

  /** Hears all events from now on. */
  void listen(Consumer<JsonNode> listener) {
    listeners.add(listener);
  }

  /** The next event of a kind; ask before doing what brings it about. */
  CompletableFuture<JsonNode> next(String method, Predicate<JsonNode> wanted) {
    CompletableFuture<JsonNode> event = new CompletableFuture<>();
    listeners.add(
        e -> {
          if (e.path("method").asText().equals(method) && wanted.test(e.path("params"))) {
            event.complete(e.path("params"));
          }
        });
    return event;
  }

  /** Waits for what was promised. */
  static <T> T wait(CompletableFuture<T> promised, String what) {
    return promised
        .orTimeout(PATIENCE_S, TimeUnit.SECONDS)
        .exceptionally(
            e -> {
              throw new IllegalStateException("the browser gave no answer to " + what, e);
            })
        .join();
  }

  @Override
  public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean whole) {
    text.append(part);
    if (whole) {
      hear(text.toString());
      text.setLength(0);
    }
    from.request(1);
    return null;
  }

  @Override
  public void onError(WebSocket from, Throwable problem) {
    open.values().forEach(answer -> answer.completeExceptionally(problem));
  }

  private void hear(String message) {
    JsonNode node;
    try {
      node = mapper.readTree(message);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the browser said what is not JSON", e);
    }
    if (node.has("id")) {
      open.remove(node.path("id").asInt()).complete(node);
    } else {
      listeners.forEach(listener -> listener.accept(node));
    }
  }
}
