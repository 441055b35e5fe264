package fingering.cli.option;

import fingering.cli.student.Students;
import fingering.lesson.Lesson;
import fingering.lesson.StoredLesson;
import fingering.music.Passage;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.music.print.PrintedPart;
import fingering.musicxml.reading.PartInfo;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.tables.Instrument;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which passage of a score to read, and how. */
public final class ScoreOptions extends PartOptions {
  static final String TEMPO =
      "The opening tempo: half=84, dotted-quarter=63. Later tempi change in proportion.";

  @Option(
      names = "--measures",
      paramLabel = "RANGE",
      description =
          "Measures as printed (9-24), rehearsal marks ('B to D'), or those of a movement"
              + " ('movement 2, 9-24').")
  Optional<String> measures = Optional.empty();

  @Option(
      names = "--tempo",
      paramLabel = "MARK",
      converter = Converters.TempoConverter.class,
      description = TEMPO)
  Optional<Tempo> tempo = Optional.empty();

  @Option(
      names = "--ignore-words",
      description = "Ignore words that ask for a string, such as 'sul G'.")
  boolean ignoreWords;

  private SlurChanges slurs = SlurChanges.NONE;

  /** The part in which the slurs are changed, as the lesson names it. */
  private Optional<String> slurred = Optional.empty();

  /** Reads the passage that the options choose, for the instrument that the students play. */
  public Passage read(Score score, Students students) {
    Optional<Instrument> played = instrument.or(students::instrument);
    PartInfo info = part.map(score::part).orElseGet(() -> score.onlyPart(played));
    if (instrument.isEmpty()) {
      students.requirePart(info);
    }
    if (!slurred.map(score::part).orElse(info).equals(info)) {
      // Places in another part are other notes.
      slurs = SlurChanges.NONE;
    }
    Passage passage =
        score.passage(
            new PassageRequest(part, played, measures, tempo, voice, !ignoreWords, slurs),
            found -> build.apply(found, students));
    students.requirePatterns(passage.instrument());
    return passage;
  }

  /** Whether only some measures of the part are read. */
  public boolean excerpt() {
    return measures.isPresent();
  }

  /**
   * Takes the passage of a lesson, where nothing else is typed.
   *
   * @param score the score to read; the bowings of the lesson are for its own score only
   */
  public void from(StoredLesson stored, ScoreArgument score) {
    Lesson lesson = stored.lesson();
    slurs = score.isOf(stored) ? lesson.slurs() : SlurChanges.NONE;
    slurred = lesson.part();
    part = part.or(lesson::part);
    voice = voice.or(lesson::voice);
    instrument = instrument.or(lesson::instrument);
    measures = measures.or(lesson::measures);
    tempo = tempo.or(lesson::tempo);
  }

  /** Adds the passage to a lesson. */
  public Lesson addTo(Lesson lesson) {
    return lesson
        .withPart(part)
        .withVoice(voice)
        .withInstrument(instrument)
        .withMeasures(measures)
        .withTempo(tempo)
        .withSlurs(slurs);
  }

  /** What is printed in a passage, in the voice that the options choose. */
  public PrintedPart printed(Score score, Passage passage) {
    return score.printed(passage, voice);
  }
}
