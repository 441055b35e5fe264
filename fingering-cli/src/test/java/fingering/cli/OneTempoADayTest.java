package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A day has one start and one end: the same in the text of the day, table, calendar and page. */
final class OneTempoADayTest {
  private static final Pattern ROW =
      Pattern.compile("(?m)^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \\d+ \\w{3} +(\\d+) +(\\d+) .*$");
  private static final Pattern PAGE_ROW =
      Pattern.compile(
          "<tr><th scope=\"row\">[^<]*</th><td>(\\d+)</td><td>(\\d+)(?: <span class=\"box\"></span>)?</td>");
  private static final Pattern DAY =
      Pattern.compile("Whole passage, quarter notes: (\\d+)[\\d ]* (\\d+)[.;]");

  @TempDir Path folder;

  private Session practice(String journal, Object... more) throws Exception {
    Path file = folder.resolve("my.journal");
    Files.writeString(file, journal);
    List<Object> words =
        new ArrayList<>(
            List.of(
                "practice",
                DEMO,
                "--choose",
                "third",
                "--from",
                "60",
                "--to",
                "quarter=80",
                "--by",
                "2026-12-12",
                "--today",
                "2026-11-24",
                "--journal",
                file));
    words.addAll(List.of(more));
    return Session.of(words.toArray()).succeeded();
  }

  private static List<String> pairs(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    List<String> pairs = new ArrayList<>();
    while (matcher.find()) {
      pairs.add(matcher.group(1) + "-" + matcher.group(2));
    }
    return pairs;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2026-11-21 18:30 | quarter=63 | all |\n",
        "2026-11-21 18:30 | quarter=63 | all |\n2026-11-23 18:30 | quarter=50 | 28 | flat\n",
        "2026-11-21 18:30 | quarter=63 | all |\n2026-11-23 18:30 | quarter=54 | all | ached\n",
        """
        2026-11-21 18:30 | quarter=72 | all |
        2026-11-23 18:30 | - | 5-7 |
        2026-11-23 18:31 | quarter=60 | 3 |
        2026-11-23 18:32 | quarter=61 | 9 |
        2026-11-23 18:33 | quarter=62 | 11-12 |
        2026-11-23 18:34 | quarter=59 | 20 |
        """
      })
  void everyOutputHasTheSameStartAndEnd(String journal) throws Exception {
    Path calendar = folder.resolve("days.ics");
    Session text = practice(journal, "--calendar", calendar);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    List<String> table = pairs(ROW, text.out());
    assertThat(table).hasSize(19);
    Matcher today =
        Pattern.compile(
                "Whole passage: start at quarter = (\\d+)[\\s\\S]*?Go up: (\\d+)[\\d ]* (\\d+)\\.")
            .matcher(text.out());
    assertThat(today.find()).isTrue();
    assertThat(today.group(1)).isEqualTo(today.group(2));
    assertThat(today.group(1) + "-" + today.group(3)).isEqualTo(table.get(0));
    String page = practice(journal, "--format", "html").out();
    assertThat(pairs(PAGE_ROW, page)).isEqualTo(table);
    List<String> days =
        new CalendarBuilder()
                .build(new StringReader(Files.readString(calendar)))
                .getComponents(Component.VEVENT)
                .stream()
                .map(event -> event.getProperty(Property.DESCRIPTION).orElseThrow().getValue())
                .flatMap(description -> pairs(DAY, description).stream())
                .toList();
    assertThat(days).isEqualTo(table);
  }
}
