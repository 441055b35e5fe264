package fingering.page.audition;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.primitives.Ints;
import fingering.exercise.Scale;
import fingering.exercise.ScaleKind;
import fingering.exercise.ScalePattern;
import fingering.exercise.ScaleRequest;
import fingering.music.Tempo;
import fingering.sheet.SheetContent;
import fingering.tables.FingeringException;
import java.util.Map;
import java.util.Optional;

/**
 * A scale as it is chosen in a form.
 *
 * @param request the scale and how to play it
 * @param from where it begins, as typed; empty for the lowest place
 * @param way the demand on the fingering: {@code allow=3}; empty for the easiest
 */
public record AskedScale(ScaleRequest request, String from, String way) {
  private static final String FROM = "from";
  private static final String TEMPO = "tempo";
  private static final String WAY = "way";

  /**
   * Reads the fields of a form.
   *
   * @throws FingeringException if they are not those of a scale; the message is one sentence
   */
  public static AskedScale of(Map<String, String> fields) {
    Scale scale =
        Scale.parse(
            given(fields, ScaleMenus.TONIC).orElse("C")
                + " "
                + given(fields, ScaleMenus.KIND).orElseGet(ScaleKind.MAJOR::label));
    ScaleRequest request =
        new ScaleRequest(
            scale,
            given(fields, ScaleMenus.OCTAVES).map(AskedScale::number).orElse(2),
            given(fields, ScaleMenus.PATTERN).map(ScalePattern::named).orElse(ScalePattern.STEPS),
            given(fields, ScaleMenus.EVEN).isPresent(),
            given(fields, ScaleMenus.SLUR).map(AskedScale::number).orElse(0),
            given(fields, TEMPO).map(Tempo::parse));
    String from = given(fields, FROM).orElse("");
    if (!from.isEmpty()) {
      scale.start(from);
    }
    return new AskedScale(request, from, given(fields, WAY).orElse(""));
  }

  private static Optional<String> given(Map<String, String> fields, String name) {
    return Optional.ofNullable(fields.get(name)).map(String::strip).filter(text -> !text.isEmpty());
  }

  private static int number(String text) {
    return Optional.ofNullable(Ints.tryParse(text))
        .orElseThrow(() -> new FingeringException(text("scale.number", text)));
  }

  /** The scale as a piece of an audition sheet. */
  public SheetContent.Piece piece() {
    ImmutableListMultimap.Builder<String, String> keys = ImmutableListMultimap.builder();
    keys.put("scale", request.scale().toString());
    keys.put(ScaleMenus.OCTAVES, Integer.toString(request.octaves()));
    if (!from.isEmpty()) {
      keys.put(FROM, from);
    }
    if (request.pattern() != ScalePattern.STEPS) {
      keys.put(ScaleMenus.PATTERN, request.pattern().toString());
    }
    if (request.slur() > 0) {
      keys.put(ScaleMenus.SLUR, Integer.toString(request.slur()));
    }
    if (request.even()) {
      keys.put(ScaleMenus.EVEN, "yes");
    }
    request.tempo().ifPresent(tempo -> keys.put(TEMPO, tempo.toString()));
    keys.putAll(demands());
    return new SheetContent.Piece(true, keys.build());
  }

  /** The demand on the fingering, by its key in a brief; empty for the easiest. */
  public ImmutableListMultimap<String, String> demands() {
    int equals = way.indexOf('=');
    return equals < 0
        ? ImmutableListMultimap.of()
        : ImmutableListMultimap.of(way.substring(0, equals), way.substring(equals + 1));
  }
}
