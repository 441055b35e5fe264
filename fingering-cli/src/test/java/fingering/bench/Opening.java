package fingering.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long a teacher waits: from the start of {@code open} by its launcher to the first page, and
 * from dropping a score on that page to its first plan. Each time with a server of its own.
 */
public final class Opening {
  private static final int TIMES = 10;
  private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]+)\"");

  private Opening() {}

  /**
   * Measures and prints medians.
   *
   * @param arguments the launcher, a score to drop, and the milliseconds between first page and
   *     drop
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path score = Path.of(arguments[1]);
    long[] page = new long[TIMES];
    long[] plan = new long[TIMES];
    once(arguments[0], score, 0); // the first start may have to prepare
    for (int i = 0; i < TIMES; i++) {
      long[] nanos = once(arguments[0], score, Long.parseLong(arguments[2]));
      page[i] = nanos[0];
      plan[i] = nanos[1];
    }
    System.out.printf(
        "first page after %d ms, dropped %s: plan after %d ms (medians of %d; longest %d and %d)%n",
        median(page),
        score.getFileName(),
        median(plan),
        TIMES,
        page[TIMES - 1] / 1_000_000,
        plan[TIMES - 1] / 1_000_000);
  }

  private static long[] once(String launcher, Path score, long pause)
      throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("teacher");
    ProcessBuilder builder =
        new ProcessBuilder(launcher, "open", "--no-browser", "--folder", folder.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    long start = System.nanoTime();
    Process process = builder.start();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      URI address = URI.create(lines.readLine());
      HttpClient client =
          HttpClient.newBuilder()
              .cookieHandler(new CookieManager())
              .followRedirects(HttpClient.Redirect.ALWAYS)
              .build();
      String page = send(client, HttpRequest.newBuilder(address)).body();
      long shown = System.nanoTime();
      Matcher token = TOKEN.matcher(page);
      if (!token.find()) {
        throw new IOException("no page: " + page);
      }
      Thread.sleep(pause);
      String base = "http://127.0.0.1:" + address.getPort();
      String name = URLEncoder.encode(score.getFileName().toString(), StandardCharsets.UTF_8);
      long dropped = System.nanoTime();
      String opened =
          send(
                  client,
                  HttpRequest.newBuilder(URI.create(base + "/scores"))
                      .header("Origin", base)
                      .header("X-Page", token.group(1))
                      .header("X-Name", name)
                      .POST(HttpRequest.BodyPublishers.ofFile(score)))
              .headers()
              .firstValue("Location")
              .orElseThrow();
      send(client, HttpRequest.newBuilder(URI.create(base + opened)));
      String plan =
          send(client, HttpRequest.newBuilder(URI.create(base + opened + "/plans"))).body();
      long planned = System.nanoTime();
      if (!plan.contains("<svg")) {
        throw new IOException("no music: " + plan);
      }
      return new long[] {shown - start, planned - dropped};
    } finally {
      process.destroy();
      process.waitFor();
      Files.delete(folder);
    }
  }

  private static HttpResponse<String> send(HttpClient client, HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private static long median(long[] nanos) {
    Arrays.sort(nanos);
    return nanos[nanos.length / 2] / 1_000_000;
  }
}
