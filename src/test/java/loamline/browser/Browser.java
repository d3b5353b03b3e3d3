package loamline.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** An installed Chromium without a window, driven by its own remote protocol. */
final class Browser implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final long POLL_MS = 50;

    private final ObjectMapper json = new ObjectMapper();
    private final Process process;
    private final WebSocket socket;
    private final LinkedBlockingQueue<String> answers = new LinkedBlockingQueue<>();
    private int calls;

    private Browser(Process process, Path profile) throws IOException, InterruptedException {
        this.process = process;
        HttpClient http = HttpClient.newHttpClient();
        URI page = URI.create(page(http, port(profile)));
        this.socket = http.newWebSocketBuilder()
                .buildAsync(page, new Listener(answers))
                .join();
    }

    /** The program, if one is installed. */
    static Optional<Path> installed() {
        return Stream.of(System.getenv("PATH").split(":"))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Starts it on a phone's screen. */
    static Browser phone(Path program, Path profile, int width, int height) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        Browser browser = new Browser(process, profile);
        ObjectNode size = browser.json.createObjectNode();
        size.put("width", width)
                .put("height", height)
                .put("deviceScaleFactor", 2)
                .put("mobile", true);
        browser.call("Emulation.setDeviceMetricsOverride", size);
        return browser;
    }

    private static int port(Path profile) throws IOException, InterruptedException {
        Path file = profile.resolve("DevToolsActivePort");
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!Files.exists(file) || Files.readAllLines(file).isEmpty()) {
            if (System.nanoTime() > end) {
                throw new IOException("the browser did not start");
            }
            Thread.sleep(POLL_MS);
        }
        return Integer.parseInt(Files.readAllLines(file).get(0));
    }

    private String page(HttpClient http, int port) throws IOException, InterruptedException {
        HttpRequest list = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/json"))
                .build();
        JsonNode pages = json.readTree(
                http.send(list, HttpResponse.BodyHandlers.ofString()).body());
        for (JsonNode page : pages) {
            if (page.path("type").asText().equals("page")) {
                return page.path("webSocketDebuggerUrl").asText();
            }
        }
        throw new IOException("the browser has no page");
    }

    private JsonNode call(String method, ObjectNode parameters) throws IOException, InterruptedException {
        int id = ++calls;
        ObjectNode message = json.createObjectNode().put("id", id).put("method", method);
        message.set("params", parameters);
        socket.sendText(message.toString(), true).join();
        while (true) {
            String text = answers.poll(PATIENCE.toSeconds(), TimeUnit.SECONDS);
            if (text == null) {
                throw new IOException("no answer to " + method);
            }
            JsonNode answer = json.readTree(text);
            if (answer.path("id").asInt() == id) {
                return answer.path("result");
            }
        }
    }

    /** Opens a file and waits until it is there. */
    void open(Path file) throws IOException, InterruptedException {
        call("Page.navigate", json.createObjectNode().put("url", file.toUri().toString()));
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!run("document.readyState + location.protocol").equals("completefile:")) {
            if (System.nanoTime() > end) {
                throw new IOException(file + " did not open");
            }
            Thread.sleep(POLL_MS);
        }
    }

    /** Runs a script and gives its value as text. */
    String run(String script) throws IOException, InterruptedException {
        JsonNode result = call("Runtime.evaluate", json.createObjectNode().put("expression", script));
        if (result.has("exceptionDetails")) {
            throw new IOException(result.path("exceptionDetails").toString());
        }
        return result.path("result").path("value").asText();
    }

    /** A real tap in the middle of what a selector finds, scrolled into view first. */
    void tap(String selector) throws IOException, InterruptedException {
        String at = run("(() => { const e = document.querySelector(" + json.writeValueAsString(selector)
                + "); e.scrollIntoView({block: 'center'}); const r = e.getBoundingClientRect();"
                + " return (r.x + r.width / 2) + ' ' + (r.y + r.height / 2); })()");
        double x = Double.parseDouble(at.split(" ")[0]);
        double y = Double.parseDouble(at.split(" ")[1]);
        for (String type : List.of("mousePressed", "mouseReleased")) {
            ObjectNode event =
                    json.createObjectNode().put("type", type).put("x", x).put("y", y);
            call("Input.dispatchMouseEvent", event.put("button", "left").put("clickCount", 1));
        }
    }

    /** Taps a field, types into it and leaves it. */
    void type(String selector, String words) throws IOException, InterruptedException {
        tap(selector);
        call("Input.insertText", json.createObjectNode().put("text", words));
        run("document.activeElement.blur()");
    }

    void picture(Path file) throws IOException, InterruptedException {
        JsonNode shot = call("Page.captureScreenshot", json.createObjectNode());
        Files.write(file, Base64.getDecoder().decode(shot.path("data").asText()));
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static final class Listener implements WebSocket.Listener {
        private final LinkedBlockingQueue<String> answers;
        private final StringBuilder text = new StringBuilder();

        Listener(LinkedBlockingQueue<String> answers) {
            this.answers = answers;
        }

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                answers.add(text.toString());
                text.setLength(0);
            }
            socket.request(1);
            return null;
        }
    }
}
