// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A real browser (Chromium) without a window, led by its DevTools protocol: real touches and keys, any size of screen. */
final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PATIENCE = 120;

    private final Process process;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> asked = new ConcurrentHashMap<>();
    private int asks;

    /** Starts it. */
    Browser(Path folder) throws IOException, InterruptedException {
        Path profile = folder.resolve("profile");
        process = new ProcessBuilder(
                        "chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        Path port = profile.resolve("DevToolsActivePort");
        for (int i = 0; i < PATIENCE * 10 && (!Files.exists(port) || Files.size(port) < 5); i++) {
            Thread.sleep(100);
        }
        String number = Files.readAllLines(port).get(0);
        HttpClient client = HttpClient.newHttpClient();
        URI list = URI.create("http://127.0.0.1:" + number + "/json/list");
        String pages = client.send(HttpRequest.newBuilder(list).build(), HttpResponse.BodyHandlers.ofString())
                .body();
        String address = "";
        for (JsonNode page : JSON.readTree(pages)) {
            address = page.get("type").asText().equals("page")
                    ? page.get("webSocketDebuggerUrl").asText()
                    : address;
        }
        socket = client.newWebSocketBuilder()
                .buildAsync(URI.create(address), new Answers())
                .join();
    }

    private final class Answers implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                try {
                    JsonNode answer = JSON.readTree(text.toString());
                    CompletableFuture<JsonNode> waiting =
                            asked.remove(answer.path("id").asInt(-1));
                    if (waiting != null) {
                        waiting.complete(answer);
                    }
                } catch (IOException e) {
                    throw new AssertionError(e);
                } finally {
                    text.setLength(0);
                }
            }
            from.request(1);
            return CompletableFuture.completedFuture(null);
        }
    }

    /** Asks for one thing; names and values in turn. */
    JsonNode ask(String method, Object... values) {
        ObjectNode call = JSON.createObjectNode().put("id", ++asks).put("method", method);
        ObjectNode params = call.putObject("params");
        for (int i = 0; i < values.length; i += 2) {
            params.set(String.valueOf(values[i]), JSON.valueToTree(values[i + 1]));
        }
        CompletableFuture<JsonNode> waiting = new CompletableFuture<>();
        asked.put(asks, waiting);
        socket.sendText(call.toString(), true).join();
        JsonNode answer = waiting.orTimeout(PATIENCE, TimeUnit.SECONDS).join();
        if (answer.has("error")) {
            throw new AssertionError(method + ": " + answer.get("error"));
        }
        return answer.get("result");
    }

    /** Opens a page on a screen of a size, CSS pixels. */
    void open(Path file, int width, int height, boolean dark) throws InterruptedException {
        ask(
                "Emulation.setDeviceMetricsOverride",
                "width",
                width,
                "height",
                height,
                "deviceScaleFactor",
                1,
                "mobile",
                width < 600);
        ask("Emulation.setTouchEmulationEnabled", "enabled", true);
        ask(
                "Emulation.setEmulatedMedia",
                "features",
                List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light")));
        ask("Page.navigate", "url", file.toUri().toString());
        for (int i = 0; i < PATIENCE * 10; i++) {
            Thread.sleep(50);
            String ready = run("document.readyState + ' ' + location.protocol").asText();
            if (ready.equals("complete file:")) {
                return;
            }
        }
        throw new AssertionError("the page never got ready");
    }

    /** The value of an expression in the page. */
    JsonNode run(String expression) {
        JsonNode result =
                ask("Runtime.evaluate", "expression", expression, "returnByValue", true, "awaitPromise", true);
        if (result.has("exceptionDetails")) {
            throw new AssertionError(result.get("exceptionDetails").toString());
        }
        return result.at("/result/value");
    }

    /** What the accessibility checker finds against WCAG 2.1 A and AA and its best practice; empty when nothing. */
    String faults() throws IOException {
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            if (in == null) {
                throw new AssertionError("the checker is missing");
            }
            run("{" + new String(in.readAllBytes(), StandardCharsets.UTF_8) + "} 1");
        }
        JsonNode found = run(
                "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'best-practice']}).then(r =>"
                        + " r.passes.length + ' rules; ' + r.violations.map(v => v.id + ' ' + v.nodes[0].html.slice(0, 150)).join(' | '))");
        return found.asText();
    }

    /** A finger put down, drawn, held still and lifted: lifted in motion it would be a fling, which swallows the next tap. */
    void drag(double x, double y, double toX, double toY) throws InterruptedException {
        touch("touchStart", List.of(Map.of("x", x, "y", y)));
        for (int i = 1; i <= 8; i++) {
            touch("touchMove", List.of(Map.of("x", x + (toX - x) * i / 8, "y", y + (toY - y) * i / 8)));
        }
        Thread.sleep(300);
        touch("touchMove", List.of(Map.of("x", toX, "y", toY)));
        touch("touchEnd", List.of());
    }

    /** A finger put down and lifted on the middle of an element. */
    void tap(String selector) {
        JsonNode at = middle(selector);
        touch(
                "touchStart",
                List.of(Map.of("x", at.get(0).asDouble(), "y", at.get(1).asDouble())));
        touch("touchEnd", List.of());
    }

    /** Middle of an element after it is scrolled into sight, and its width. */
    JsonNode middle(String selector) {
        return run(
                "(() => { const e = document.querySelector(\"" + selector + "\"); e.scrollIntoView({block: 'center'});"
                        + " const r = e.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2, r.width]; })()");
    }

    private void touch(String type, List<Map<String, Double>> points) {
        ask("Input.dispatchTouchEvent", "type", type, "touchPoints", points);
    }

    /** A key pressed and let go. */
    void key(String name, int code) {
        for (String type : List.of("rawKeyDown", "keyUp")) {
            ask("Input.dispatchKeyEvent", "type", type, "key", name, "code", name, "windowsVirtualKeyCode", code);
        }
    }

    @Override
    public void close() {
        socket.abort();
        // its helpers write into the profile until they are gone
        List<ProcessHandle> all = Stream.concat(process.descendants(), Stream.of(process.toHandle()))
                .toList();
        all.forEach(ProcessHandle::destroyForcibly);
        CompletableFuture.allOf(all.stream().map(ProcessHandle::onExit).toArray(CompletableFuture[]::new))
                .orTimeout(PATIENCE, TimeUnit.SECONDS)
                .join();
    }
}
