package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.advice.LessonAdviser;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.wide.Figures;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twenty visitors send mixed requests at once, good ones and bad ones, each about a lesson of its
 * own. {@code -Drequests=10000} sets how many there are.
 */
@Tag("wide")
class ManyClientsTest {
  private static final int CLIENTS = 20;
  private static final int REQUESTS = Integer.getInteger("requests", 10_000);

  /** The heap may grow by this from the first half to the end, in MiB: open lessons and plans. */
  private static final long MOST_GROWTH = 64;

  private static final Pattern REVISION = Pattern.compile("id=\"revision\" value=\"(\\d+)\"");
  private static final Pattern OPEN = Pattern.compile("href=\"(/open/[\\w-]{24})\"[^>]*>([^<]*)<");
  private static final Pattern OTHER = Pattern.compile("Study (\\d\\d) of many");

  @TempDir Path folder;

  private final Figures figures = new Figures("many clients");

  /** One visitor with a score of its own. */
  private final class Client {
    private final int number;
    private final Visitor visitor;
    private final Random random;
    private String lesson = "";
    private String revision = "0";
    private String tempo = "";
    private int changes;

    Client(int number, Visitor visitor) {
      this.number = number;
      this.visitor = visitor;
      random = new Random(number);
    }

    private String title() {
      return "Study %02d of many".formatted(number);
    }

    void begin() throws Exception {
      Matcher entry = OPEN.matcher(visitor.get("/").body());
      while (entry.find()) {
        if (entry.group(2).contains("study%02d".formatted(number))) {
          lesson = entry.group(1);
        }
      }
      assertThat(lesson).isNotEmpty();
    }

    void request() throws Exception {
      switch (random.nextInt(12)) {
        case 0 -> judged("page", visitor.get(lesson), 200);
        case 1, 2 -> revised("plans", visitor.get(lesson + "/plans?window=1200"), 200);
        case 3 -> judged("note", visitor.get(lesson + "/note?moment=" + random.nextInt(8)), 200);
        case 4 -> judged("sound", visitor.get(lesson + "/sound"), 200, 204);
        case 5 -> judged("first page", visitor.get("/"), 200);
        case 6, 7 -> tempo();
        case 8 -> change("demand", "from=1&to=2&key=stay&value=" + (1 + random.nextInt(3)));
        case 9 -> change("plan", "plan=" + (random.nextBoolean() ? "first" : "third"));
        case 10 -> change("undo", "");
        default -> wrong();
      }
    }

    /** Sets a tempo that only this client uses. */
    private void tempo() throws Exception {
      String wanted = "quarter=" + (40 + number) + "." + (1 + random.nextInt(8));
      HttpResponse<String> answer = change("choice", "part=1&tempo=" + wanted.replace("=", "%3D"));
      if (answer.statusCode() == 200 && !answer.body().contains("another window")) {
        tempo = wanted;
        changes++;
      }
    }

    private HttpResponse<String> change(String what, String form) throws Exception {
      return revised(
          what,
          visitor.post(lesson + "/" + what, "revision=" + revision + "&" + form),
          200,
          400,
          409);
    }

    private HttpResponse<String> revised(String what, HttpResponse<String> answer, int... allowed) {
      Matcher next = REVISION.matcher(judged(what, answer, allowed).body());
      if (next.find()) {
        revision = next.group(1);
      }
      return answer;
    }

    private void wrong() throws Exception {
      Visitor stranger = new Visitor(server);
      switch (random.nextInt(6)) {
        case 0 -> judged("no cookie", stranger.get(lesson), 403);
        case 1 -> judged("wrong token", stranger.get("/enter?token=none"), 403);
        case 2 ->
            judged(
                "wrong page",
                stranger
                    .with("Cookie", visitor.cookie())
                    .with("Origin", visitor.base())
                    .with("X-Page", "a.b")
                    .post(lesson + "/undo", "revision=" + revision),
                403);
        case 3 ->
            judged("large form", visitor.post(lesson + "/undo", "a=" + "b".repeat(20_000)), 413);
        case 4 -> judged("no such page", visitor.get("/open/" + "x".repeat(24)), 404);
        default ->
            figures.check(
                visitor
                    .raw("GET / HTTP/1.1", "Host: example.org", "Connection: close")
                    .contains("403"),
                "another host was answered");
      }
    }

    private HttpResponse<String> judged(String what, HttpResponse<String> answer, int... allowed) {
      // Twelve lessons stay open; one that is closed between two steps of an answer is named so.
      boolean fine = answer.body().contains("This lesson is no longer open");
      for (int status : allowed) {
        fine |= answer.statusCode() == status;
      }
      figures.check(
          fine, "%s of %d: %d %s".formatted(what, number, answer.statusCode(), answer.body()));
      if (!what.equals("first page")) {
        Matcher other = OTHER.matcher(answer.body());
        while (other.find()) {
          figures.check(
              Integer.parseInt(other.group(1)) == number,
              "%s of %d shows lesson %s".formatted(what, number, other.group()));
        }
      }
      return answer;
    }

    /** The lesson on disk says what this client requested last, and nothing of the others. */
    void end() {
      Path file = folder.resolve("study%02d.yaml".formatted(number));
      if (changes == 0) {
        return;
      }
      Lesson saved = StoredLesson.read(file).lesson();
      String own = "quarter=" + (40 + number) + ".";
      figures.check(
          saved.tempo().map(mark -> mark.toString().startsWith(own)).orElse(true),
          title() + " has " + saved.tempo() + " and wanted " + tempo);
      figures.check(
          saved.score().equals("study%02d.abc".formatted(number)),
          title() + " is about " + saved.score());
    }
  }

  private LocalServer server;

  @Test
  void everyClientGetsItsOwnAnswers() throws Exception {
    for (int i = 0; i < CLIENTS; i++) {
      Files.writeString(
          folder.resolve("study%02d.abc".formatted(i)),
          "X:1\nT:Study %02d of many\nM:4/4\nL:1/4\nK:G clef=treble\nGABc|d2B2|AGFE|D4|]\n"
              .formatted(i));
    }
    server = LocalServer.start(folder, new LessonAdviser(), Clock.systemUTC());
    List<Client> clients = new ArrayList<>();
    for (int i = 0; i < CLIENTS; i++) {
      clients.add(new Client(i, new Visitor(server).at(server.address())));
      clients.get(i).begin();
    }
    run(clients, REQUESTS / 2);
    long half = Figures.heap();
    run(clients, REQUESTS - REQUESTS / 2);
    long end = Figures.heap();
    clients.forEach(Client::end);
    int changes = clients.stream().mapToInt(client -> client.changes).sum();
    server.close();
    figures.print(CLIENTS + " clients, " + changes + " tempi set, " + half + " MiB at half");
    assertThat(figures.failures()).isEmpty();
    assertThat(changes).isGreaterThan(REQUESTS / 100);
    assertThat(end - half).isLessThan(MOST_GROWTH);
  }

  private void run(List<Client> clients, int requests) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(CLIENTS);
    List<Future<?>> all = new ArrayList<>();
    for (Client client : clients) {
      all.add(
          threads.submit(
              () -> {
                for (int i = 0; i < requests / CLIENTS; i++) {
                  figures.timed(
                      "a request",
                      () -> {
                        client.request();
                        return "";
                      });
                }
                return null;
              }));
    }
    for (Future<?> one : all) {
      one.get();
    }
    threads.shutdown();
  }
}
