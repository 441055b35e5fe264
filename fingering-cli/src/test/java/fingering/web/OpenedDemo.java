package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.cli.Session;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;

/** A test with the demo dropped on the page, which is in the first lesson. */
abstract class OpenedDemo extends ServedFolder {
  private static final Pattern WAY =
      Pattern.compile("name=\"way\" value=\"([^\"]+)\" aria-pressed=\"(true|false)\"");
  static final Pattern REVISION = Pattern.compile("id=\"revision\" value=\"(\\d+)\"");
  private static final Instant NOON = Instant.parse("2026-12-01T12:00:00Z");

  String address = "";
  String revision = "0";

  @Override
  Clock clock() {
    return Clock.fixed(NOON, ZoneOffset.UTC);
  }

  @BeforeEach
  final void drop() throws Exception {
    HttpResponse<String> dropped = visitor.drop("demo.musicxml", Files.readAllBytes(Session.DEMO));
    address = dropped.headers().firstValue("Location").orElseThrow();
    visitor.get(address + "/plans");
  }

  HttpResponse<String> post(String what, String... fields) throws Exception {
    StringBuilder form = new StringBuilder("revision=" + revision);
    for (int i = 0; i < fields.length; i += 2) {
      form.append('&').append(fields[i]).append('=').append(encoded(fields[i + 1]));
    }
    HttpResponse<String> answer = visitor.post(address + "/" + what, form.toString());
    Matcher next = REVISION.matcher(answer.body());
    if (next.find()) {
      revision = next.group(1);
    }
    return answer;
  }

  static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  /** The ways to play a note, best first; true is the one that the plan has. */
  Map<String, Boolean> ways(int moment) throws Exception {
    String note = visitor.get(address + "/note?moment=" + moment).body();
    return WAY.matcher(note)
        .results()
        .collect(
            Collectors.toMap(
                way -> way.group(1),
                way -> Boolean.valueOf(way.group(2)),
                (one, other) -> one,
                java.util.LinkedHashMap::new));
  }

  String other(int moment) throws Exception {
    return ways(moment).entrySet().stream()
        .filter(way -> !way.getValue())
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  String now(int moment) throws Exception {
    return ways(moment).entrySet().stream()
        .filter(Map.Entry::getValue)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  List<String> files() throws Exception {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }

  String saved() throws Exception {
    return Files.readString(folder.resolve("demo.yaml"));
  }

  /** The address of a file in the list of the first page. */
  String link(String file) throws Exception {
    Matcher link =
        Pattern.compile("href=\"(/open/[\\w-]+)\">" + Pattern.quote(file))
            .matcher(visitor.get("/").body());
    assertThat(link.find()).isTrue();
    return link.group(1);
  }
}
