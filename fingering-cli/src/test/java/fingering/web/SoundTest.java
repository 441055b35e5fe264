package fingering.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fingering.cli.Session;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** The table of what sounds, and the file for the student, as the server answers them. */
class SoundTest extends ServedFolder {
  private static final String TUNE =
      "X:1\nT:Over <the> Weir\nM:2/4\nL:1/4\nQ:1/4=60\nK:G clef=alto\n|:G [GB]|1 c2:|2 d2|e2|]\n";

  private String dropped(String name, String content) throws Exception {
    return visitor
        .drop(name, content.getBytes(StandardCharsets.UTF_8))
        .headers()
        .firstValue("Location")
        .orElseThrow();
  }

  private JsonNode table(String address) throws Exception {
    HttpResponse<String> answer = visitor.get(address + "/sound");
    assertThat(answer.headers().firstValue("Content-Type")).contains("application/json");
    return new ObjectMapper().readTree(answer.body());
  }

  /** Two seconds to count in; the repeat is played with both endings: ten seconds. */
  @Test
  void tableHasEveryMomentAsItIsPlayed() throws Exception {
    String address = dropped("weir.abc", TUNE);
    assertThat(visitor.get(address + "/sound").statusCode()).as("without plans").isEqualTo(204);
    visitor.get(address + "/plans");
    JsonNode table = table(address);

    assertThat(table.path("unit").asText()).isEqualTo("quarter");
    assertThat(table.path("goal").asInt()).isEqualTo(60);
    assertThat(table.path("practice").asInt()).isEqualTo(30);
    assertThat(table.path("countIn").asInt()).isEqualTo(2_000_000);
    assertThat(table.path("tempi").toString())
        .isEqualTo("[{\"start\":0,\"tempo\":\"quarter=60\"}]");
    assertThat(table.path("moments").elements())
        .toIterable()
        .as("moment, start, whether plucked, pitches, lengths")
        .map(JsonNode::toString)
        .containsExactly(
            "[0,2000000,0,[67],[1000000]]",
            "[1,3000000,0,[67,71],[1000000,1000000]]",
            "[2,4000000,0,[72],[2000000]]",
            "[0,6000000,0,[67],[1000000]]",
            "[1,7000000,0,[67,71],[1000000,1000000]]",
            "[3,8000000,0,[74],[2000000]]",
            "[4,10000000,0,[76],[2000000]]");
    assertThat(table.at("/clicks/first").toString())
        .isEqualTo("[2000000,4000000,6000000,8000000,10000000]");
    assertThat(table.at("/clicks/beat")).hasSize(5);
    assertThat(table.at("/clicks/part")).hasSize(10);
    assertThat(table.path("measures").get(1).toString())
        .isEqualTo(
            "{\"measure\":1,\"number\":\"2\",\"start\":4000000,\"length\":2000000,"
                + "\"full\":2000000,\"beat\":1000000}");
  }

  @Test
  void tableIsSentAgainOnlyWhenTheMusicIsAnother() throws Exception {
    String address = dropped("weir.abc", TUNE);
    visitor.get(address + "/plans");
    String key = table(address).path("key").asText();
    assertThat(visitor.get(address + "/sound?known=" + key).statusCode()).isEqualTo(204);
    visitor.post(address + "/choice", "revision=0&part=1&tempo=quarter%3D72");
    HttpResponse<String> other = visitor.get(address + "/sound?known=" + key);
    assertThat(other.statusCode()).isEqualTo(200);
    assertThat(other.body()).contains("\"goal\":72").doesNotContain(key);
  }

  @Test
  void lessonHasItsOwnGoalAndWhatIsCleanNow() throws Exception {
    String address = lesson();
    JsonNode table = table(address);
    assertThat(table.path("goal").asInt()).isEqualTo(100);
    assertThat(table.path("slowest").asInt()).isEqualTo(50);
    assertThat(table.path("practice").asInt()).isEqualTo(76);
  }

  private String lesson() throws Exception {
    Files.copy(Session.DEMO, folder.resolve("demo.musicxml"));
    Files.createDirectories(folder.resolve("students"));
    Files.writeString(folder.resolve("students/imke.yaml"), "instrument: viola\n");
    Files.writeString(folder.resolve("students/wieland.yaml"), "instrument: viola\n");
    Files.writeString(
        folder.resolve("imke.journal"), "2026-11-25 18:50 | quarter=76 | all | cried a little\n");
    LocalDate soon = LocalDate.now(ZoneId.systemDefault()).plusDays(20);
    Files.writeString(
        folder.resolve("lantern.yaml"),
        "score: demo.musicxml\nmeasures: 1-16\ntempo: quarter = 80\nstudent: imke\n"
            + "plans:\n  - name: mine\n    stay: [1@3-8]\n"
            + "hearing: {date: %s, tempo: quarter = 100}\njournal: imke.journal\n".formatted(soon));
    String address =
        visitor.get("/").body().replaceFirst("(?s).*(/open/[\\w-]+)\">lantern.*", "$1");
    assertThat(visitor.get(address + "/plans").statusCode()).isEqualTo(200);
    return address;
  }

  @Test
  void studentGetsOneFileWithoutWhatIsPrivate() throws Exception {
    String address = lesson();
    HttpResponse<String> gift = visitor.get(address + "/gift");
    assertThat(gift.statusCode()).isEqualTo(200);
    assertThat(gift.headers().firstValue("Content-Disposition"))
        .contains(
            "attachment; filename=\"Lanterns_on_the_Millrace__Imke.html\";"
                + " filename*=UTF-8''Lanterns%20on%20the%20Millrace%2C%20Imke.html");
    assertThat(gift.body())
        .hasSizeLessThan(1_000_000)
        .contains("Student: Imke", "fingers: 1st position", "Tempo ladder", "data-moment=\"0\"")
        .contains("AudioContext", "\"goal\":100")
        .containsOnlyOnce("class=\"care\"")
        .doesNotContain("partly 3rd", "wieland", "cried", ".journal", ".musicxml", ".yaml")
        .doesNotContain(folder.toString(), "127.0.0.1", "data-token", "X-Page", "/open/")
        .doesNotContainPattern("(src|href)=\"(?!#)|https?://(?!www\\.w3\\.org)|@import|url\\(h");
  }

  @Test
  void textOfTheScoreStaysText() throws Exception {
    String address = dropped("weir.abc", TUNE);
    assertThat(visitor.get(address + "/gift").body()).contains("The plans are not made yet");
    visitor.get(address + "/plans");
    assertThat(visitor.get(address + "/gift").body())
        .contains("<h1>Over &lt;the&gt; Weir</h1>")
        .doesNotContain("Student:", "Over <the>");
  }

  @Test
  void unknownScoreHasNoSound() throws Exception {
    assertThat(visitor.get("/open/AAAAAAAAAAAAAAAAAAAAAAAA/sound").statusCode()).isEqualTo(404);
    assertThat(visitor.without("Cookie").get("/open/AAAAAAAAAAAAAAAAAAAAAAAA/gift").statusCode())
        .isEqualTo(403);
  }
}
