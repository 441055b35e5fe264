package fingering.page.audition;

import static fingering.page.view.PageText.counted;
import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import fingering.exercise.ScaleKind;
import fingering.exercise.ScalePattern;
import fingering.exercise.ScaleRequest;
import fingering.page.live.StudentView.Choice;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Letter;
import fingering.tables.Pitch;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The menus from which a scale is chosen. */
public final class ScaleMenus {
  public static final String TONIC = "tonic";
  public static final String KIND = "kind";
  public static final String OCTAVES = "octaves";
  public static final String PATTERN = "pattern";
  public static final String SLUR = "slur";
  public static final String EVEN = "even";
  public static final String INSTRUMENT = "instrument";

  private static final String YES = "yes";
  private static final String TWO = "2";

  private ScaleMenus() {}

  /**
   * The menus.
   *
   * @param fields what is chosen in them
   */
  public static ImmutableMap<String, ImmutableList<Choice>> of(Map<String, String> fields) {
    return ImmutableMap.<String, ImmutableList<Choice>>builder()
        .put(TONIC, tonics(fields.getOrDefault(TONIC, Letter.C.toString())))
        .put(
            KIND,
            menu(
                ImmutableList.copyOf(ScaleKind.values()),
                ScaleKind::label,
                ScaleKind::label,
                fields.getOrDefault(KIND, ScaleKind.MAJOR.label())))
        .put(
            OCTAVES,
            menu(
                IntStream.rangeClosed(1, ScaleRequest.MAX_OCTAVES)
                    .boxed()
                    .collect(ImmutableList.toImmutableList()),
                octaves -> Integer.toString(octaves),
                octaves -> counted("scale.octaves", octaves),
                fields.getOrDefault(OCTAVES, TWO)))
        .put(
            PATTERN,
            menu(
                ImmutableList.copyOf(ScalePattern.values()),
                ScalePattern::toString,
                ScaleMenus::pattern,
                fields.getOrDefault(PATTERN, ScalePattern.STEPS.toString())))
        .put(
            SLUR,
            menu(
                ImmutableList.of("", TWO, "4", "8"),
                slur -> slur,
                slur -> slur.isEmpty() ? text("scale.bows") : text("scale.slurred", slur),
                fields.getOrDefault(SLUR, "")))
        .put(
            EVEN,
            menu(
                ImmutableList.of("", YES),
                even -> even,
                even -> even.isEmpty() ? text("scale.held") : text("scale.even"),
                fields.getOrDefault(EVEN, "")))
        .put(INSTRUMENT, instruments(fields.getOrDefault(INSTRUMENT, "")))
        .buildOrThrow();
  }

  /** The menu of instruments. */
  public static ImmutableList<Choice> instruments(String chosen) {
    return menu(Instruments.standard().all(), Instrument::id, Instrument::name, chosen);
  }

  private static ImmutableList<Choice> tonics(String chosen) {
    return Arrays.stream(Letter.values())
        .flatMap(letter -> IntStream.rangeClosed(-1, 1).mapToObj(a -> new Pitch(letter, a, 4)))
        .map(tonic -> choice(value(tonic), tonic.letterName(), chosen))
        .collect(ImmutableList.toImmutableList());
  }

  private static String value(Pitch tonic) {
    return tonic.letterName().replace('♯', '#').replace('♭', 'b');
  }

  private static String pattern(ScalePattern pattern) {
    return switch (pattern) {
      case STEPS -> text("scale.steps");
      case THIRDS -> text("scale.thirds");
      case DOUBLE_THIRDS -> text("scale.double-thirds");
    };
  }

  static Choice choice(String value, String name, String chosen) {
    return new Choice(value, name, value.equals(chosen));
  }

  static <T> ImmutableList<Choice> menu(
      ImmutableList<T> all, Function<T, String> value, Function<T, String> name, String chosen) {
    return all.stream()
        .map(one -> choice(value.apply(one), name.apply(one), chosen))
        .collect(ImmutableList.toImmutableList());
  }
}
