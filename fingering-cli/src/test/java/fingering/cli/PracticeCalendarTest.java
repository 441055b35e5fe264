package fingering.cli;

import static fingering.cli.Session.DEMO;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calendar, read by iCal4j, a parser that the program does not use (RFC 5545). */
final class PracticeCalendarTest {
  @TempDir Path folder;

  private Session written(Path file) {
    return Session.of(
        "practice",
        DEMO,
        "--from",
        "60",
        "--to",
        "96",
        "--by",
        "2026-12-12",
        "--today",
        "2026-11-21",
        "--rest-days",
        "sun",
        "--calendar",
        file);
  }

  private static List<String> values(Calendar calendar, String property) {
    return calendar.getComponents(Component.VEVENT).stream()
        .map(event -> event.getProperty(property).map(Property::getValue).orElseThrow())
        .toList();
  }

  @Test
  void calendarIsValidAndHasEveryDayOfPractice() throws Exception {
    Path file = folder.resolve("practice.ics");
    written(file).succeeded();
    String text = Files.readString(file);
    Calendar calendar = new CalendarBuilder().build(new StringReader(text));
    assertThat(calendar.validate().hasErrors()).isFalse();
    // Three weeks and a day, without three Sundays.
    assertThat(values(calendar, Property.DTSTART))
        .hasSize(19)
        .startsWith("20261121", "20261123")
        .endsWith("20261211", "20261212")
        .doesNotContain("20261122", "20261129", "20261206");
    assertThat(values(calendar, Property.DTEND)).startsWith("20261122").endsWith("20261213");
    assertThat(values(calendar, Property.UID)).doesNotHaveDuplicates();
    assertThat(values(calendar, Property.SUMMARY).get(0)).endsWith("up to quarter = 60");
    assertThat(values(calendar, Property.SUMMARY).get(18)).endsWith("the day itself, quarter = 96");
    assertThat(values(calendar, Property.DESCRIPTION))
        .allMatch(day -> day.contains("stop if it hurts"));
  }

  /** The events of some measures, without the time of creation. */
  private Calendar of(Path score, String measures, String from) throws Exception {
    Path file = Files.createTempFile(folder, "days", ".ics");
    Files.delete(file);
    Session.of(
            "practice",
            score,
            "--measures",
            measures,
            "--from",
            from,
            "--to",
            "96",
            "--by",
            "2026-12-12",
            "--today",
            "2026-11-21",
            "--calendar",
            file)
        .succeeded();
    return new CalendarBuilder().build(new StringReader(Files.readString(file)));
  }

  /** Two excerpts by one date: a calendar program keeps one event for each id. */
  @Test
  void excerptsOfOneScoreHaveEventsOfTheirOwn() throws Exception {
    Calendar one = of(DEMO, "1-8", "60");
    Calendar other = of(DEMO, "9-16", "60");
    assertThat(values(one, Property.UID)).doesNotContainAnyElementsOf(values(other, Property.UID));
    assertThat(values(one, Property.SUMMARY).get(0))
        .startsWith("Lanterns on the Millrace, Viola, m. 1–8: up to quarter = ");
    assertThat(values(other, Property.SUMMARY).get(0))
        .startsWith("Lanterns on the Millrace, Viola, m. 9–16: up to quarter = ");
  }

  /** RFC 5545, 3.8.4.7: the id of an event is persistent and globally unique. */
  @Test
  void newerLadderKeepsTheIdsAndAnotherFileHasOthers() throws Exception {
    List<String> ids = values(of(DEMO, "1-8", "60"), Property.UID);
    assertThat(values(of(DEMO, "1-8", "72"), Property.UID)).isEqualTo(ids);
    Path copy = Files.copy(DEMO, folder.resolve("another.musicxml"));
    assertThat(values(of(copy, "1-8", "60"), Property.UID)).doesNotContainAnyElementsOf(ids);
    assertThat(ids).allMatch(id -> id.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}"));
  }

  /** RFC 5545, 3.1: lines end with CR LF and are folded at 75 octets. */
  @Test
  void linesAreFoldedAndEndAsInTheStandard() throws Exception {
    Path file = folder.resolve("practice.ics");
    written(file).succeeded();
    String text = Files.readString(file);
    assertThat(text).endsWith("END:VCALENDAR\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
    assertThat(text).contains("\r\n ");
    assertThat(text.lines())
        .allMatch(line -> line.getBytes(java.nio.charset.StandardCharsets.UTF_8).length <= 75);
  }

  @Test
  void existingCalendarIsNotOverwritten() throws Exception {
    Path file = Files.writeString(folder.resolve("mine.ics"), "mine");
    written(file).refused(2);
    assertThat(Files.readString(file)).isEqualTo("mine");
  }
}
