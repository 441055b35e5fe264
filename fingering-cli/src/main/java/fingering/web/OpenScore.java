package fingering.web;

import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.page.PageContent;
import fingering.page.music.LiveMusic;
import java.util.Optional;

/**
 * The state of an open score. Immutable: a change makes a new one with the next revision.
 *
 * @param id its id in addresses
 * @param revision counts its changes, from 0
 * @param name the name of its file
 * @param file the score as read
 * @param score the same score, parsed
 * @param lesson part, measures, tempo and student
 * @param plans the plans; empty before they are first asked for
 * @param shown the music that was last sent; empty before that
 */
record OpenScore(
    String id,
    int revision,
    String name,
    ScoreFile file,
    Score score,
    StoredLesson lesson,
    Optional<PageContent> plans,
    Optional<Shown> shown) {

  /**
   * Music that a page shows.
   *
   * @param page the token of the page
   * @param music what was sent to it
   */
  record Shown(String page, LiveMusic music) {}

  /** The address of its page. */
  String address() {
    return "/open/" + id;
  }

  OpenScore with(StoredLesson newLesson, PageContent newPlans) {
    return new OpenScore(
        id, revision + 1, name, file, score, newLesson, Optional.of(newPlans), shown);
  }

  OpenScore with(PageContent newPlans) {
    return new OpenScore(id, revision, name, file, score, lesson, Optional.of(newPlans), shown);
  }

  OpenScore showing(Shown sent) {
    return new OpenScore(id, revision, name, file, score, lesson, plans, Optional.of(sent));
  }
}
