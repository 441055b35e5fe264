package fingering.cli.advice;

import fingering.cli.option.PlanningContext;
import fingering.cli.option.PlayerOptions;
import fingering.cli.option.ScoreArgument;
import fingering.cli.option.ScoreOptions;
import fingering.lesson.StoredLesson;
import fingering.musicxml.file.ScoreFile;
import fingering.musicxml.reading.Score;
import fingering.search.Cancellation;
import fingering.web.audition.SheetAdviser;
import fingering.web.lesson.Advice;
import fingering.web.lesson.Adviser;

/** Makes the plans of the local page as 'compare --lesson' does. */
public final class LessonAdviser implements Adviser {
  @Override
  public ScoreFile read(StoredLesson lesson) {
    ScoreArgument score = new ScoreArgument();
    score.from(lesson);
    return score.read();
  }

  @Override
  public Advice advise(
      ScoreFile file, Score parsed, StoredLesson lesson, Cancellation cancellation) {
    ScoreArgument score = new ScoreArgument();
    ScoreOptions reading = new ScoreOptions();
    PlayerOptions player = new PlayerOptions();
    score.from(lesson);
    reading.from(lesson, score);
    player.from(lesson);
    return LessonAdvice.of(
        PlanningContext.of(file, parsed, reading, player), player, lesson, cancellation);
  }

  @Override
  public SheetAdviser sheets() {
    return new SheetAdvice();
  }
}
