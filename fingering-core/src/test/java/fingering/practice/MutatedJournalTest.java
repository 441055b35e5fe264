package fingering.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A damaged journal is read as far as possible, and takes new entries without losing a line. */
class MutatedJournalTest {
  private static final String SIGNS = "|#-= \n\r\t0129:;,\u0000\uFEFFäa";
  private static final String JOURNAL =
      """
      # Practice journal
      2026-11-21 18:30 | quarter=60 | all | slow
      2026-11-22 18:30 | - | 13-14 | bow quiet
      2026-11-23 09:00 | dotted quarter=40.5 | A to 32 |
      """;

  @Property(tries = 1000)
  void aMutatedJournalIsReadAndGoesOn(
      @ForAll @IntRange(min = 1, max = 6) int mutations, @ForAll long seed) throws IOException {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(JOURNAL);
    for (int i = 0; i < mutations; i++) {
      int at = random.nextInt(text.length());
      int to = Math.min(text.length(), at + random.nextInt(9));
      switch (random.nextInt(3)) {
        case 0 -> text.delete(at, to);
        case 1 -> text.insert(at, text.substring(at, to));
        default -> text.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
      }
    }
    Path file = Files.createTempFile("damaged", ".journal");
    try {
      Files.writeString(file, text);
      Journal read = new JournalFile(file).read();
      JournalEntry entry = Journal.parse(JOURNAL).entries().get(0);
      Journal now = new JournalFile(file).add(entry);
      assertThat(now.entries().subList(0, read.entries().size())).isEqualTo(read.entries());
      assertThat(now.entries()).endsWith(entry);
      assertThat(Files.readString(file)).startsWith(text);
    } catch (JournalException e) {
      assertThat(e.getMessage()).contains("is not UTF-8 text").endsWith(".");
      assertThat(Files.readAllBytes(file))
          .isEqualTo(text.toString().getBytes(StandardCharsets.UTF_8));
    } finally {
      Files.delete(file);
    }
  }
}
