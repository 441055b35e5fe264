package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.tables.NearWord;
import fingering.tables.Pitch;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntPredicate;

/** The order in which the notes of a scale are played. */
public enum ScalePattern {
  /** By step, up and down. */
  STEPS(""),
  /** Broken thirds: each note with the third above it, then each with the third below it. */
  THIRDS("in broken thirds"),
  /** Double stops: each note together with the third above it. */
  DOUBLE_THIRDS("in double-stop thirds");

  private final String words;

  ScalePattern(String words) {
    this.words = words;
  }

  /**
   * A note or a double stop of an exercise.
   *
   * @param pitches as written, lowest first
   * @param tonic whether the lowest pitch is the tonic
   */
  record ScaleNote(ImmutableList<Pitch> pitches, boolean tonic) {}

  /** The words that follow the name of the scale; empty for steps. */
  public String label() {
    return words;
  }

  /**
   * The pattern with that name. Case does not matter.
   *
   * @throws FingeringException if there is no pattern of that name
   */
  public static ScalePattern named(String name) {
    return Arrays.stream(values())
        .filter(each -> each.toString().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "'%s' is not a pattern; %s"
                        .formatted(
                            name,
                            NearWord.advice(
                                name,
                                Arrays.stream(values()).map(ScalePattern::toString).toList()))));
  }

  /** The name as users type it: {@code double-thirds}. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The notes of a scale, up and down.
   *
   * @param from the lowest tonic
   * @param playable whether the instrument is low enough for a written MIDI number below the tonic
   */
  ImmutableList<ScaleNote> notes(Scale scale, Pitch from, int octaves, IntPredicate playable) {
    NoteBuilder notes = new NoteBuilder(scale, from);
    int top = octaves * scale.kind().notesInOctave();
    switch (this) {
      case STEPS -> {
        for (int degree = 0; degree < top; degree++) {
          notes.single(degree, true);
        }
        for (int degree = top; degree >= 0; degree--) {
          notes.single(degree, false);
        }
      }
      case DOUBLE_THIRDS -> {
        for (int degree = 0; degree < top; degree++) {
          notes.third(degree, true);
        }
        for (int degree = top; degree >= 0; degree--) {
          notes.third(degree, false);
        }
      }
      case THIRDS -> {
        for (int degree = 0; degree < top; degree++) {
          notes.single(degree, true);
          notes.single(degree + 2, true);
        }
        for (int degree = top; degree > 1; degree--) {
          notes.single(degree, false);
          notes.single(degree - 2, false);
        }
        // The last pair goes around the tonic if the instrument has the note below it.
        if (playable.test(scale.tone(from, -1, false).midi())) {
          notes.single(1, false);
          notes.single(-1, false);
        }
        notes.single(0, false);
      }
    }
    return notes.all.build();
  }

  private static final class NoteBuilder {
    private final ImmutableList.Builder<ScaleNote> all = ImmutableList.builder();
    private final Scale scale;
    private final Pitch from;

    NoteBuilder(Scale scale, Pitch from) {
      this.scale = scale;
      this.from = from;
    }

    void single(int degree, boolean rising) {
      all.add(new ScaleNote(ImmutableList.of(scale.tone(from, degree, rising)), tonic(degree)));
    }

    void third(int degree, boolean rising) {
      all.add(
          new ScaleNote(
              ImmutableList.of(
                  scale.tone(from, degree, rising), scale.tone(from, degree + 2, rising)),
              tonic(degree)));
    }

    private boolean tonic(int degree) {
      return Math.floorMod(degree, scale.kind().notesInOctave()) == 0;
    }
  }
}
