package fingering.cli.practice;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.ProductId;
import biweekly.property.Uid;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import com.google.common.collect.ImmutableList;
import fingering.cli.text.HeadingText;
import fingering.cli.text.TempoText;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.practice.LimitLadder;
import fingering.practice.PracticeDay;
import fingering.practice.PracticePlan;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/** The days of a tempo ladder as all-day events of a calendar (iCalendar, RFC 5545). */
public final class PracticeCalendar {
  private static final int NOON = 12;

  /** The longest line in octets: RFC 5545, 3.1. */
  private static final int LINE = 75;

  private final PracticePlan practice;
  private final Instant made;

  /** What is practised: score, part and measures. */
  private final String music;

  /** The same for the ids of events. */
  private final String id;

  private PracticeCalendar(PracticePlan practice, String file, Instant made) {
    this.practice = practice;
    this.made = made;
    Passage passage = practice.plan().passage();
    List<Measure> measures = passage.measures();
    Measure first = measures.get(0);
    Measure last = measures.get(measures.size() - 1);
    String title = HeadingText.title(passage);
    String part = passage.partName();
    String range = first.equals(last) ? first.number() : first.number() + "–" + last.number();
    music = title + (part.equals(title) || part.isBlank() ? "" : ", " + part) + ", m. " + range;
    id =
        String.join(
            "\n",
            List.of(
                title,
                file,
                passage.partId(),
                part,
                // Numbers may occur twice in a score, so the place in the part counts too.
                first.index() + " " + first.number(),
                last.index() + " " + last.number()));
  }

  /**
   * Returns the calendar as text.
   *
   * @param file the name of the score file, without its folder; empty if there is none
   * @param made the time of creation
   */
  public static String of(PracticePlan practice, String file, Instant made) {
    PracticeCalendar calendar = new PracticeCalendar(practice, file, made);
    ICalendar all = new ICalendar();
    all.setProductId(new ProductId("-//Fingering//Practice//EN"));
    ImmutableList<PracticeDay> days = practice.whole().days();
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).kind() != PracticeDay.Kind.REST) {
        all.addEvent(calendar.event(i));
      }
    }
    return written(all);
  }

  /** The library folds lines by characters, but the standard limits them to 75 octets. */
  private static String written(ICalendar all) {
    StringWriter text = new StringWriter();
    try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(all);
    } catch (IOException e) {
      throw new UncheckedIOException("a calendar in memory cannot be written", e);
    }
    return text.toString().lines().map(PracticeCalendar::folded).collect(Collectors.joining());
  }

  private static String folded(String line) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int code : line.codePoints().toArray()) {
      String character = Character.toString(code);
      int more = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + more > LINE) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.append(character);
      octets += more;
    }
    return folded.append("\r\n").toString();
  }

  private VEvent event(int i) {
    PracticeDay day = practice.whole().days().get(i);
    VEvent event = new VEvent();
    // The same day of the same measures keeps its id, so a newer ladder replaces it; those of
    // other measures, parts and scores have others (RFC 5545, 3.8.4.7).
    event.setUid(
        new Uid(
            UUID.nameUUIDFromBytes((id + "\n" + day.date()).getBytes(StandardCharsets.UTF_8))
                .toString()));
    event.setDateTimeStamp(Date.from(made));
    event.setDateStart(new DateStart(date(day.date())));
    event.setDateEnd(new DateEnd(date(day.date().plusDays(1))));
    event.setSummary(
        music
            + ": "
            + switch (day.kind()) {
              case DAY -> "the day itself, " + TempoText.mark(day.top());
              case EVE -> "once slowly, once through, nothing new";
              default -> "up to " + TempoText.mark(day.top());
            });
    event.setDescription(description(i, day));
    return event;
  }

  private String description(int i, PracticeDay day) {
    StringBuilder text = new StringBuilder();
    if (day.kind() == PracticeDay.Kind.PRACTICE) {
      for (LimitLadder limit : practice.limits()) {
        text.append(PracticeWords.capital(PracticeWords.named(limit.measures())))
            .append(" alone: ")
            .append(PracticeWords.climb(limit.ladder().days().get(i)))
            .append(".\n");
      }
    }
    return text.append("Whole passage, ")
        .append(day.top().unit())
        .append(" notes: ")
        .append(PracticeWords.climb(day))
        .append(
            day.runThroughs() > 0 && day.kind() == PracticeDay.Kind.PRACTICE
                ? "; then through: "
                : "")
        .append(
            day.runThroughs() > 0 && day.kind() == PracticeDay.Kind.PRACTICE
                ? PracticeWords.times(day.runThroughs())
                : "")
        .append(".\n")
        .append(PracticeText.CARE)
        .toString();
  }

  /** A date without a time; noon keeps it on the same day in every time zone. */
  private static ICalDate date(LocalDate date) {
    return new ICalDate(
        new DateTimeComponents(
            date.getYear(), date.getMonthValue(), date.getDayOfMonth(), NOON, 0, 0, false),
        false);
  }
}
