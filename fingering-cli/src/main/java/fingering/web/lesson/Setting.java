package fingering.web.lesson;

import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.web.folder.FileStamp;
import java.util.Optional;

/**
 * What the usual plans of a lesson depend on. Equal settings have equal plans.
 *
 * @param score the file of the score, as it was read
 * @param player the player file of the student, as it was read; empty without a student
 * @param part the part
 * @param voice the voice
 * @param instrument the instrument
 * @param measures the measures
 * @param tempo the tempo
 * @param slurs the bowings that differ from the printed ones
 * @param student the student
 */
public record Setting(
    FileStamp score,
    Optional<FileStamp> player,
    Optional<String> part,
    Optional<String> voice,
    Optional<Instrument> instrument,
    Optional<String> measures,
    Optional<Tempo> tempo,
    SlurChanges slurs,
    Optional<String> student) {

  /**
   * The setting of a lesson.
   *
   * @throws FingeringException if the student has no player file
   */
  public static Setting of(FileStamp score, StoredLesson stored) {
    Lesson lesson = stored.lesson();
    return new Setting(
        score,
        stored.studentFile().map(FileStamp::of),
        lesson.part(),
        lesson.voice(),
        lesson.instrument(),
        lesson.measures(),
        lesson.tempo(),
        lesson.slurs(),
        lesson.student());
  }
}
