package fingering.web.lesson;

import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.web.folder.FileStamp;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The state of an open lesson. Immutable: a change makes a new one with the next revision.
 *
 * @param id its id in addresses
 * @param revision counts its changes, from 0
 * @param name the name of its file, or that of the score before it is saved
 * @param dropped the file of a score that is not in a folder of the teacher's yet
 * @param stamp the file of the score as it was read
 * @param file the score as read
 * @param score the same score, parsed
 * @param stored the lesson, its file, and its text there; empty text before it is saved
 * @param history earlier states
 * @param planned the plans; empty until they are first needed
 */
public record OpenLesson(
    String id,
    int revision,
    String name,
    Optional<Path> dropped,
    FileStamp stamp,
    ScoreFile file,
    Score score,
    StoredLesson stored,
    History history,
    Optional<Planned> planned) {

  /** The address of its page. */
  public String address() {
    return "/open/" + id;
  }

  public Lesson lesson() {
    return stored.lesson();
  }

  /** Whether the lesson is in a file. */
  public boolean saved() {
    return !stored.text().isEmpty();
  }

  /** The title of the score, or the name of the file. */
  public String title() {
    return score.title().isBlank() ? name : score.title();
  }

  /** A new lesson that says the same, and is in no file yet. */
  public OpenLesson copy(String newId) {
    return new OpenLesson(
        newId,
        0,
        name,
        dropped,
        stamp,
        file,
        score,
        new StoredLesson(stored.file(), lesson().withJournal(Optional.empty()), ""),
        History.NONE,
        planned);
  }

  /** The same lesson after plans were made; nothing that a page shows has changed. */
  public OpenLesson with(Planned plans) {
    return new OpenLesson(
        id, revision, name, dropped, stamp, file, score, stored, history, Optional.of(plans));
  }

  /** The same state under the number of changes that its page knows. */
  OpenLesson shownAs(int newRevision) {
    return new OpenLesson(
        id, newRevision, name, dropped, stamp, file, score, stored, history, planned);
  }

  /** The next state. */
  public OpenLesson changed(
      StoredLesson newStored, History newHistory, Optional<Planned> newPlanned) {
    return new OpenLesson(
        id, revision + 1, name, dropped, stamp, file, score, newStored, newHistory, newPlanned);
  }

  /** The next state, from a score that was read again. */
  public OpenLesson reread(FileStamp newStamp, ScoreFile newFile, Score newScore) {
    return new OpenLesson(
        id,
        revision + 1,
        name,
        dropped,
        newStamp,
        newFile,
        newScore,
        stored,
        history,
        Optional.empty());
  }

  /** The same state, saved in a file. */
  public OpenLesson savedAs(StoredLesson newStored, FileStamp newStamp) {
    return new OpenLesson(
        id,
        revision,
        String.valueOf(newStored.file().getFileName()),
        Optional.empty(),
        newStamp,
        file,
        score,
        newStored,
        history,
        planned.map(plans -> plans.at(Setting.of(newStamp, newStored))));
  }
}
