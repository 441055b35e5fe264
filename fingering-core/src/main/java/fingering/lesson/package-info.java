/**
 * Lessons: one student and one excerpt, with the plans that the teacher chose, the hearing and the
 * journal, in one small file.
 *
 * <p>{@link fingering.lesson.Lesson} is what a lesson says, {@link fingering.lesson.LessonFile} its
 * text, {@link fingering.lesson.StoredLesson} a lesson on disk, and {@link
 * fingering.lesson.LessonFolder} the lessons of a folder.
 *
 * <p>The package depends on {@code fingering.demand}, {@code fingering.plan}, {@code
 * fingering.music} and {@code fingering.userfile}. Nothing here reads the clock; callers pass
 * dates. No method takes or returns null. All values are immutable and thread-safe.
 */
@NullMarked
package fingering.lesson;

import org.jspecify.annotations.NullMarked;
