package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.Ints;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.music.Tempo;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.Score;
import fingering.page.LivePage;
import fingering.page.PageContent;
import fingering.page.live.AnswerView;
import fingering.page.live.OpenView;
import fingering.page.live.OpenView.PartChoice;
import fingering.page.music.Lanes;
import fingering.page.music.LiveMusic;
import fingering.tables.FingeringException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;

/** The page of an open score: its form, its plans, and what a choice changes. */
final class ScorePages {
  /** The width of a window that does not say its own, in pixels. */
  private static final int USUAL_WINDOW = 1200;

  /** Nobody waits longer for plans. */
  private static final long MOST_NANOS = 10_000_000_000L;

  private final Adviser adviser;
  private final OpenScores scores;

  /** The request that plans last, by the id of its score. */
  private final Map<String, Object> latest = new ConcurrentHashMap<>();

  ScorePages(Adviser adviser, OpenScores scores) {
    this.adviser = adviser;
    this.scores = scores;
  }

  /**
   * The page without plans, which are asked for when it is shown.
   *
   * @param edit where its notes are edited; empty if they were not typed
   */
  static Reply page(OpenScore open, String edit, Frames frames) {
    Lesson lesson = open.lesson().lesson();
    String title = open.score().title().isBlank() ? open.name() : open.score().title();
    OpenView view =
        new OpenView(
            open.address(),
            open.revision(),
            parts(open.score(), lesson.part()),
            lesson.measures().orElse(""),
            lesson.tempo().map(Tempo::toString).orElse(""),
            LivePage.shapes(),
            edit);
    return Reply.html(Reply.DONE, LivePage.open(frames.titled(title), view));
  }

  private static ImmutableList<PartChoice> parts(Score score, Optional<String> chosen) {
    Optional<PartInfo> part = chosen.map(score::part);
    return score.parts().stream()
        .map(
            info ->
                new PartChoice(
                    Integer.toString(info.number()),
                    info.toString(),
                    part.filter(info::equals).isPresent()))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * The plans of an open score.
   *
   * @param page the token of the page that asks
   * @throws FingeringException if there is no plan for the choice; the message is one sentence
   */
  Reply plans(OpenScore open, Map<String, String> query, String page) {
    return answer(open, open.with(present(open)), page, window(query), "");
  }

  /**
   * Changes what is chosen.
   *
   * @param page the token of the page that asks
   * @throws FingeringException if there is no plan for the choice; the message is one sentence
   */
  Reply change(OpenScore open, ImmutableMap<String, String> form, String page) {
    if (!String.valueOf(open.revision()).equals(form.get("revision"))) {
      return current(open, form, page);
    }
    StoredLesson chosen = chosen(open.lesson(), form);
    PageContent plans = compare(open, chosen);
    return answer(open, open.with(chosen, plans), page, window(form), "");
  }

  /** The present state for a page that does not know it. */
  private Reply current(OpenScore open, Map<String, String> form, String page) {
    return answer(open, open.with(present(open)), page, window(form), text("open.stale"));
  }

  private PageContent present(OpenScore open) {
    return open.plans().orElseGet(() -> compare(open, open.lesson()));
  }

  /** Makes plans, unless it takes too long or a later request of the same score needs others. */
  private PageContent compare(OpenScore open, StoredLesson lesson) {
    long start = System.nanoTime();
    Object request = new Object();
    latest.put(open.id(), request);
    try {
      return adviser.compare(
          open.file(),
          open.score(),
          lesson,
          () -> latest.get(open.id()) != request || System.nanoTime() - start > MOST_NANOS);
    } catch (CancellationException e) {
      boolean slow = latest.get(open.id()) == request;
      throw new FingeringException(slow ? text("open.slow") : text("open.overtaken"), e);
    } finally {
      latest.remove(open.id(), request);
    }
  }

  private Reply answer(OpenScore before, OpenScore after, String page, int window, String remark) {
    PageContent content = after.plans().orElseThrow();
    LiveMusic music =
        LiveMusic.of(
            content.comparison().passage(),
            content.printed(),
            Lanes.of(content.main(), content.rival()),
            window);
    Optional<LiveMusic> known =
        before
            .shown()
            .filter(shown -> remark.isEmpty() && shown.page().equals(page))
            .map(OpenScore.Shown::music)
            .filter(music::fitsLinesOf);
    if (!scores.replace(before, after.showing(new OpenScore.Shown(page, music)))) {
      return scores
          .get(before.id())
          .map(now -> current(now, Map.of("window", Integer.toString(window)), page))
          .orElseThrow(() -> new FingeringException(text("open.closed")));
    }
    return Reply.html(
        Reply.DONE,
        LivePage.answer(
            new AnswerView(
                after.revision(),
                remark,
                content.title(),
                content.verdict(),
                content.about(),
                music.key(),
                music.signs(),
                content.care(),
                known.isEmpty(),
                known.map(music::changedFrom).orElse(music.lines()))));
  }

  private static StoredLesson chosen(StoredLesson stored, Map<String, String> form) {
    Lesson lesson =
        stored
            .lesson()
            .withPart(given(form, "part"))
            .withMeasures(given(form, "measures"))
            .withTempo(given(form, "tempo").map(Tempo::parse));
    return new StoredLesson(stored.file(), lesson, stored.text());
  }

  private static Optional<String> given(Map<String, String> form, String name) {
    return Optional.ofNullable(form.get(name)).map(String::strip).filter(value -> !value.isEmpty());
  }

  private static int window(Map<String, String> fields) {
    return Optional.ofNullable(fields.get("window")).map(Ints::tryParse).orElse(USUAL_WINDOW);
  }
}
