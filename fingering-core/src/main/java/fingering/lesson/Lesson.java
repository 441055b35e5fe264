package fingering.lesson;

import com.google.common.collect.ImmutableList;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.userfile.UserText;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * One student and one excerpt. Names of files are relative to the folder of the lesson. Make one
 * with {@link #of} and the {@code with} methods; each of them returns a copy.
 *
 * @param score the file of the score
 * @param tune the number of the tune in a file of tunes; empty for the only one
 * @param part the number, id or name of the part; empty for the only string part
 * @param voice the voice of the part; empty for all voices
 * @param instrument the instrument; empty for that of the student or the part
 * @param measures the measures as printed, 27-76, or rehearsal marks; empty for all
 * @param tempo the opening tempo; empty for the printed one
 * @param slurs the bowings that differ from the printed ones
 * @param student the name of the student, whose player file is found by {@link
 *     StoredLesson#studentFile}, or a player file; empty for an unknown student
 * @param plans the plans with different names, the chosen one first; empty if none is chosen
 * @param hearing the hearing; empty if there is none
 * @param journal the practice journal; empty if there is none
 * @param circles what is circled in the part
 * @param ladder how the student practises up to the hearing
 * @param below which plan stands below the staff, where it differs from the one above: the name of
 *     a plan, a word of {@link LessonPlan#CHOICES}, or {@link #NONE_BELOW}; empty for the one that
 *     the verdict weighs
 */
public record Lesson(
    String score,
    Optional<String> tune,
    Optional<String> part,
    Optional<String> voice,
    Optional<Instrument> instrument,
    Optional<String> measures,
    Optional<Tempo> tempo,
    SlurChanges slurs,
    Optional<String> student,
    ImmutableList<LessonPlan> plans,
    Optional<Hearing> hearing,
    Optional<String> journal,
    LessonCircles circles,
    LessonLadder ladder,
    Optional<String> below) {
  /** The word for no plan below the staff. */
  public static final String NONE_BELOW = "none";

  /**
   * Checks the values.
   *
   * @throws FingeringException if a text is blank or cannot be written on one line, or two plans
   *     have the same name
   */
  public Lesson {
    requireValue("score", score);
    tune.ifPresent(text -> requireValue("tune", text));
    part.ifPresent(text -> requireValue("part", text));
    voice.ifPresent(text -> requireValue("voice", text));
    measures.ifPresent(text -> requireValue("measures", text));
    student.ifPresent(text -> requireValue("student", text));
    journal.ifPresent(text -> requireValue("journal", text));
    below.ifPresent(text -> requireValue("below", text));
    Set<String> names = new HashSet<>();
    for (LessonPlan plan : plans) {
      if (!names.add(plan.name())) {
        throw new FingeringException(
            "two plans have the name '%s'; give one of them another name".formatted(plan.name()));
      }
    }
  }

  static void requireValue(String key, String text) {
    if (!UserText.isValue(text)) {
      throw new FingeringException(
          "'%s' is empty or has signs that cannot be written in a line of text".formatted(key));
    }
  }

  /** A lesson on all of a score, for an unknown student. */
  public static Lesson of(String score) {
    return new Lesson(
        score,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        SlurChanges.NONE,
        Optional.empty(),
        ImmutableList.of(),
        Optional.empty(),
        Optional.empty(),
        LessonCircles.ALL,
        LessonLadder.USUAL,
        Optional.empty());
  }

  /** The chosen plan; empty if none is chosen. */
  public Optional<LessonPlan> chosen() {
    return plans.stream().findFirst();
  }

  /** A copy with another score, and the tune in it if it is a file of tunes. */
  public Lesson withScore(String newScore, Optional<String> newTune) {
    return with(
        copy -> {
          copy.score = newScore;
          copy.tune = newTune;
        });
  }

  /** A copy with another part. */
  public Lesson withPart(Optional<String> newPart) {
    return with(copy -> copy.part = newPart);
  }

  /** A copy with another voice. */
  public Lesson withVoice(Optional<String> newVoice) {
    return with(copy -> copy.voice = newVoice);
  }

  /** A copy with another instrument. */
  public Lesson withInstrument(Optional<Instrument> newInstrument) {
    return with(copy -> copy.instrument = newInstrument);
  }

  /** A copy with other measures. */
  public Lesson withMeasures(Optional<String> newMeasures) {
    return with(copy -> copy.measures = newMeasures);
  }

  /** A copy with another tempo. */
  public Lesson withTempo(Optional<Tempo> newTempo) {
    return with(copy -> copy.tempo = newTempo);
  }

  /** A copy with other bowings. */
  public Lesson withSlurs(SlurChanges newSlurs) {
    return with(copy -> copy.slurs = newSlurs);
  }

  /** A copy with another student. */
  public Lesson withStudent(Optional<String> newStudent) {
    return with(copy -> copy.student = newStudent);
  }

  /** A copy with other plans, the chosen one first. */
  public Lesson withPlans(ImmutableList<LessonPlan> newPlans) {
    return with(copy -> copy.plans = newPlans);
  }

  /**
   * A copy in which a plan is the chosen one. It replaces a plan of the same name; the others
   * follow it.
   */
  public Lesson choosing(LessonPlan plan) {
    ImmutableList.Builder<LessonPlan> all = ImmutableList.builder();
    all.add(plan);
    plans.stream().filter(other -> !other.name().equals(plan.name())).forEach(all::add);
    return withPlans(all.build());
  }

  /** A copy with another hearing. */
  public Lesson withHearing(Optional<Hearing> newHearing) {
    return with(copy -> copy.hearing = newHearing);
  }

  /** A copy with another journal. */
  public Lesson withJournal(Optional<String> newJournal) {
    return with(copy -> copy.journal = newJournal);
  }

  /** A copy with other things circled. */
  public Lesson withCircles(LessonCircles newCircles) {
    return with(copy -> copy.circles = newCircles);
  }

  /** A copy with another way to practise. */
  public Lesson withLadder(LessonLadder newLadder) {
    return with(copy -> copy.ladder = newLadder);
  }

  /** A copy with another plan below the staff. */
  public Lesson withBelow(Optional<String> newBelow) {
    return with(copy -> copy.below = newBelow);
  }

  private Lesson with(Consumer<Copy> change) {
    Copy copy = new Copy(this);
    change.accept(copy);
    return copy.lesson();
  }

  /** The values of a lesson while one of them is changed. */
  private static final class Copy {
    private String score;
    private Optional<String> tune;
    private Optional<String> part;
    private Optional<String> voice;
    private Optional<Instrument> instrument;
    private Optional<String> measures;
    private Optional<Tempo> tempo;
    private SlurChanges slurs;
    private Optional<String> student;
    private ImmutableList<LessonPlan> plans;
    private Optional<Hearing> hearing;
    private Optional<String> journal;
    private LessonCircles circles;
    private LessonLadder ladder;
    private Optional<String> below;

    Copy(Lesson lesson) {
      score = lesson.score;
      tune = lesson.tune;
      part = lesson.part;
      voice = lesson.voice;
      instrument = lesson.instrument;
      measures = lesson.measures;
      tempo = lesson.tempo;
      slurs = lesson.slurs;
      student = lesson.student;
      plans = lesson.plans;
      hearing = lesson.hearing;
      journal = lesson.journal;
      circles = lesson.circles;
      ladder = lesson.ladder;
      below = lesson.below;
    }

    Lesson lesson() {
      return new Lesson(
          score,
          tune,
          part,
          voice,
          instrument,
          measures,
          tempo,
          slurs,
          student,
          plans,
          hearing,
          journal,
          circles,
          ladder,
          below);
    }
  }
}
