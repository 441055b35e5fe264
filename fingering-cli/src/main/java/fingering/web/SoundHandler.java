package fingering.web;

import static fingering.page.view.PageText.text;

import fingering.demand.MeasureSpan;
import fingering.lesson.Hearing;
import fingering.lesson.StoredLesson;
import fingering.music.Tempo;
import fingering.page.GiftPage;
import fingering.page.SoundTable;
import fingering.page.view.HandoutContent;
import fingering.page.view.Paper;
import fingering.practice.JournalFile;
import fingering.tables.FingeringException;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Planned;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sound of an open score, and the file for the student, who hears it at home. */
final class SoundHandler implements Handler {
  private static final Pattern ADDRESS = Pattern.compile("/open/([A-Za-z0-9_-]{24})/(sound|gift)");

  private final TeachersFolder folder;
  private final OpenLessons lessons;
  private final Clock clock;

  SoundHandler(TeachersFolder folder, OpenLessons lessons, Clock clock) {
    this.folder = folder;
    this.lessons = lessons;
    this.clock = clock;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = ADDRESS.matcher(request.path());
    if (!address.matches()) {
      return Optional.empty();
    }
    boolean gift = address.group(2).equals("gift");
    return lessons
        .opened(address.group(1), folder::file)
        .map(open -> gift ? gift(open) : sound(open, request.query().getOrDefault("known", "")));
  }

  @Override
  public Optional<Reply> post(Request request) {
    return Optional.empty();
  }

  /** The table; nothing if the page knows it already, or has no plans yet. */
  private static Reply sound(OpenLesson open, String known) {
    return open.planned()
        .map(planned -> table(open.stored(), planned))
        .filter(table -> !table.key().equals(known))
        .map(table -> Reply.of(Reply.DONE, "application/json", table.json()))
        .orElseGet(() -> Reply.of(Reply.EMPTY, "application/json", ""));
  }

  private static SoundTable table(StoredLesson lesson, Planned planned) {
    return SoundTable.of(
        planned.passage(),
        planned.advice().content().printed(),
        lesson.lesson().hearing().flatMap(Hearing::tempo),
        clean(lesson));
  }

  /** The tempo that is clean now; empty if no journal says it. */
  private static Optional<Tempo> clean(StoredLesson lesson) {
    try {
      return lesson
          .journalFile()
          .flatMap(file -> new JournalFile(file).read().lastClean(MeasureSpan.WHOLE));
    } catch (FingeringException e) {
      // Without its journal, the music can still be heard.
      return Optional.empty();
    }
  }

  private Reply gift(OpenLesson open) {
    Planned planned = open.planned().orElseThrow(() -> new FingeringException(text("gift.early")));
    HandoutContent content =
        planned.advice().handout(planned.plan(), open.stored(), LocalDate.now(clock), Paper.A4);
    String page = GiftPage.of(content, table(open.stored(), planned));
    String name =
        content
                .student()
                .map(who -> text("gift.name", content.title(), who))
                .orElse(content.title())
                .replaceAll("[^\\p{L}\\p{N} ,'()-]+", " ")
                .strip()
            + ".html";
    return Reply.html(Reply.DONE, page).toKeep(name);
  }
}
