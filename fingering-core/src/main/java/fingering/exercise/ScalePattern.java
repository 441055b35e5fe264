package fingering.exercise;

import com.google.common.collect.ImmutableList;
import fingering.tables.FingeringException;
import fingering.tables.Pitch;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/** How the notes of a scale follow one another. */
public enum ScalePattern {
  /** Note after note, up and down. */
  STEPS(""),
  /** Each note and the third above it, and down each note and the third below it. */
  THIRDS("in broken thirds"),
  /** Each note together with the third above it. */
  DOUBLE_THIRDS("in double-stop thirds");

  private final String words;

  ScalePattern(String words) {
    this.words = words;
  }

  /**
   * What is struck at a time.
   *
   * @param pitches as written, lowest first
   * @param tonic whether its lowest note is the tonic
   */
  record Stroke(ImmutableList<Pitch> pitches, boolean tonic) {}

  /** The pattern in words that follow the name of the scale; empty for steps. */
  public String words() {
    return words;
  }

  /**
   * The pattern of that name.
   *
   * @throws FingeringException if there is none
   */
  public static ScalePattern named(String name) {
    return Arrays.stream(values())
        .filter(each -> each.toString().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new FingeringException(
                    "'"
                        + name
                        + "' is no pattern; choose of "
                        + Arrays.stream(values())
                            .map(ScalePattern::toString)
                            .collect(Collectors.joining(", "))));
  }

  /** The name as it is typed: {@code double-thirds}. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The notes of a scale, up and down.
   *
   * @param from the tonic at the bottom
   * @param below whether the instrument has a note of that MIDI number below the tonic, as written
   */
  ImmutableList<Stroke> contexts(Scale scale, Pitch from, int octaves, IntPredicate below) {
    Strokes contexts = new Strokes(scale, from);
    int top = octaves * scale.kind().notesInOctave();
    switch (this) {
      case STEPS -> {
        for (int degree = 0; degree < top; degree++) {
          contexts.single(degree, true);
        }
        for (int degree = top; degree >= 0; degree--) {
          contexts.single(degree, false);
        }
      }
      case DOUBLE_THIRDS -> {
        for (int degree = 0; degree < top; degree++) {
          contexts.third(degree, true);
        }
        for (int degree = top; degree >= 0; degree--) {
          contexts.third(degree, false);
        }
      }
      case THIRDS -> {
        for (int degree = 0; degree < top; degree++) {
          contexts.single(degree, true);
          contexts.single(degree + 2, true);
        }
        for (int degree = top; degree > 1; degree--) {
          contexts.single(degree, false);
          contexts.single(degree - 2, false);
        }
        // The last pair turns below the tonic, where the instrument goes so far.
        if (below.test(scale.tone(from, -1, false).midi())) {
          contexts.single(1, false);
          contexts.single(-1, false);
        }
        contexts.single(0, false);
      }
    }
    return contexts.all.build();
  }

  private static final class Strokes {
    private final ImmutableList.Builder<Stroke> all = ImmutableList.builder();
    private final Scale scale;
    private final Pitch from;

    Strokes(Scale scale, Pitch from) {
      this.scale = scale;
      this.from = from;
    }

    void single(int degree, boolean rising) {
      all.add(new Stroke(ImmutableList.of(scale.tone(from, degree, rising)), tonic(degree)));
    }

    void third(int degree, boolean rising) {
      all.add(
          new Stroke(
              ImmutableList.of(
                  scale.tone(from, degree, rising), scale.tone(from, degree + 2, rising)),
              tonic(degree)));
    }

    private boolean tonic(int degree) {
      return Math.floorMod(degree, scale.kind().notesInOctave()) == 0;
    }
  }
}
