package fingering.page;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.music.PrintedMeasure;
import fingering.music.PrintedMeasure.Kind;
import fingering.music.PrintedMeasure.Text;
import fingering.music.PrintedPart;
import fingering.page.svg.Svg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Changes to circle in the part: loudness, and bow to pizzicato and back; sudden ones first. */
final class Circles {
  private static final ImmutableList<String> LEVELS =
      ImmutableList.of("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff");

  /** A change of so many levels without a hairpin or words before it is sudden. */
  private static final int SUDDEN_LEVELS = 2;

  /** Between bow and pizzicato less than a beat of this many quarter notes is sudden. */
  private static final double HASTE = 1;

  private static final Pattern GRADUAL = Pattern.compile("(cresc|dim|decresc|morendo|perden).*");
  private static final Pattern SUBITO = Pattern.compile("(.*\\W)?sub(ito|\\.).*");
  private static final Pattern PLUCK = Pattern.compile("(pizz|arco).*");

  private record Change(
      int measure, String number, String beat, String what, boolean sudden, String why) {}

  private final Passage passage;
  private final PrintedPart part;
  private final List<Change> changes = new ArrayList<>();
  private int level = -1;
  private boolean gradual;
  private boolean subito;

  private Circles(Passage passage, PrintedPart part) {
    this.passage = passage;
    this.part = part;
  }

  static String html(Passage passage, PrintedPart part) {
    Circles circles = new Circles(passage, part);
    circles.collect();
    return circles.table();
  }

  private void collect() {
    for (int i = 0; i < part.measures().size(); i++) {
      PrintedMeasure measure = part.measures().get(i);
      for (Text text : measure.texts()) {
        take(text, passage.measures().get(i));
      }
    }
  }

  private void take(Text text, Measure measure) {
    String word = text.text().toLowerCase(Locale.ROOT);
    if (text.kind() == Kind.WORDS) {
      gradual |= GRADUAL.matcher(word).matches();
      subito |= SUBITO.matcher(word).matches();
      if (PLUCK.matcher(word).matches()) {
        boolean haste = rest(text, measure) < HASTE;
        add(text, measure, word, haste, haste ? "no rest before it" : "in the rest before it");
      }
      return;
    }
    if (text.kind() != Kind.DYNAMIC) {
      return;
    }
    int now = LEVELS.indexOf(text.text());
    if (now < 0) {
      add(text, measure, text.text(), true, "an accent by itself");
    } else {
      boolean led = gradual || wedge(text, measure);
      boolean sudden = subito || (level >= 0 && !led && Math.abs(now - level) >= SUDDEN_LEVELS);
      if (level >= 0 && now != level) {
        String from = "from " + LEVELS.get(level);
        add(
            text,
            measure,
            text.text(),
            sudden,
            from + (led && !sudden ? ", little by little" : ""));
      }
      level = now;
      gradual = false;
    }
    subito = false;
  }

  private boolean wedge(Text text, Measure measure) {
    double at = measure.start().add(text.onset()).doubleValue();
    return part.wedges().stream()
        .anyMatch(w -> w.start().doubleValue() < at && w.end().doubleValue() >= at - 1);
  }

  /** Quarter notes of silence before a place. */
  private double rest(Text text, Measure measure) {
    double at = measure.start().add(text.onset()).doubleValue();
    double end =
        passage.notes().stream()
            .filter(note -> note.start().doubleValue() < at)
            .mapToDouble(note -> note.end().doubleValue())
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    double next =
        passage.notes().stream()
            .mapToDouble(note -> note.start().doubleValue())
            .filter(start -> start >= at)
            .findFirst()
            .orElse(at);
    return next - end;
  }

  private void add(Text text, Measure measure, String what, boolean sudden, String why) {
    double beat = 1 + text.onset().doubleValue() * measure.beatType() / 4;
    String told = Svg.number(beat);
    changes.add(new Change(measure.index(), measure.number(), told, what, sudden, why));
  }

  private String table() {
    if (changes.isEmpty()) {
      return "<p>No change of loudness or of bow and pizzicato is printed here.</p>\n";
    }
    changes.sort(Comparator.comparing(change -> !change.sudden()));
    StringBuilder table =
        new StringBuilder("<table class=\"advice\"><caption>Changes to circle, sudden ones first")
            .append(
                "</caption><thead><tr><th scope=\"col\">Where</th><th scope=\"col\">Circle</th>")
            .append("<th scope=\"col\">Why</th></tr></thead><tbody>\n");
    for (Change change : changes) {
      table.append(
          "<tr><th scope=\"row\">%s beat %s</th><td>%s</td><td>%s%s</td></tr>\n"
              .formatted(
                  StripHtml.link(change.measure(), change.number()),
                  change.beat(),
                  Svg.escaped(change.what()),
                  change.sudden() ? "sudden: " : "",
                  Svg.escaped(change.why())));
    }
    return table.append("</tbody></table>\n").toString();
  }
}
