package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.Moment;
import fingering.music.Movements;
import fingering.music.Passage;
import fingering.music.Place;
import fingering.music.print.PrintedMeasure;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedPart;
import fingering.music.print.PrintedPart.Ending;
import fingering.music.print.PrintedPart.Wedge;
import fingering.music.print.PrintedText;
import fingering.music.print.PrintedText.Kind;
import fingering.plan.Plan;
import fingering.plan.PlannedNote;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Finds signs, words and notes to circle in a part, and the shifts of a plan (common practice, no
 * source).
 */
public final class CircleFinder {
  private static final ImmutableList<String> LOUDNESS =
      ImmutableList.of("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff");

  /** A change of this many dynamic levels is sudden: p to f is three, mf to f is one. */
  private static final int SUDDEN_STEPS = 2;

  /** A hairpin of this many measures is long. */
  private static final int LONG_MEASURES = 2;

  private static final Pattern SUBITO = Pattern.compile("\\b(?:sub\\.?|subito)(?:\\W|$)");
  private static final Pattern HAIRPIN_WORD =
      Pattern.compile("^(?:cresc|dim|decresc|morendo|calando).*");
  private static final Pattern SOFT_AFTER = Pattern.compile("^(?:s?f+z?|m?f+)(p+)$");
  private static final Pattern STRING =
      Pattern.compile("^(?:sul|sulla|sur|auf|auf der|am) .*|^col legno.*|^(?:ord|nat)\\b.*");
  private static final Pattern MUTE = Pattern.compile(".*\\b(?:sord|mute|dämpfer).*");

  private final Passage passage;
  private final PrintedPart part;
  private final List<PrintedText> texts;
  private final List<Circle> found = new ArrayList<>();
  private final ChangeoverTime changeover;

  private CircleFinder(Passage passage, PrintedPart part) {
    this.passage = passage;
    this.part = part;
    texts = part.texts();
    changeover = new ChangeoverTime(passage.moments());
  }

  /**
   * Returns what to circle in a passage, sorted by kind, then by place.
   *
   * @param part the printed signs of the same passage
   */
  public static ImmutableList<Circle> of(Passage passage, PrintedPart part) {
    return new CircleFinder(passage, part).all();
  }

  /**
   * Returns what to circle in the passage of a plan, with the shifts of the plan.
   *
   * @param part the printed signs of the passage
   */
  public static ImmutableList<Circle> of(Plan plan, PrintedPart part) {
    CircleFinder finder = new CircleFinder(plan.passage(), part);
    finder.shifts(plan);
    return finder.all();
  }

  private ImmutableList<Circle> all() {
    dynamics();
    hairpins();
    words();
    pizzicatoChanges();
    accents();
    repeats();
    found.addAll(ReadingCircles.of(passage, part));
    return AlikeCircles.joined(
        ImmutableList.sortedCopyOf(
            Comparator.comparing(Circle::kind)
                .thenComparingInt(circle -> circle.place().measureIndex())
                .thenComparingDouble(circle -> circle.place().onset().doubleValue()),
            found),
        Movements.of(passage.measures()));
  }

  /** The shifts of a plan: where to, and on which finger the hand arrives. */
  private void shifts(Plan plan) {
    for (PlannedNote note : plan.notes()) {
      if (note.shift()) {
        String finger =
            note.placement().stopped() ? ", finger " + note.finger() : " under the open string";
        add(
            Circle.Kind.SHIFT,
            note.note().place(),
            "shift to " + note.placement().frame().display() + finger);
      }
    }
  }

  private void add(Circle.Kind kind, Place place, String text) {
    found.add(new Circle(kind, place, text));
  }

  private List<PrintedText> all(Kind kind) {
    return texts.stream().filter(text -> text.kind() == kind).toList();
  }

  /**
   * A dynamic is sudden if it is far from the one that applies and nothing leads to it. An accent
   * such as <i>fz</i> changes nothing for the notes after it, and a dynamic that applies already is
   * only said again, unless a crescendo comes before it.
   */
  private void dynamics() {
    Optional<PrintedText> before = Optional.empty();
    for (PrintedText sign : all(Kind.DYNAMIC)) {
      String text = sign.text();
      int level = LOUDNESS.indexOf(text);
      String last = before.map(CircleFinder::applies).orElse("");
      Optional<Boolean> leads = before.flatMap(from -> louder(from.start(), sign.start()));
      boolean again = text.equals(last) && leads.isEmpty();
      if (level < 0) {
        add(Circle.Kind.SUDDEN, sign.place(), text + ": sudden");
      } else if (subito(sign) && !again) {
        add(Circle.Kind.SUDDEN, sign.place(), text + " subito");
      } else if (!last.isEmpty() && far(level, last) && leads.isEmpty()) {
        add(Circle.Kind.SUDDEN, sign.place(), "sudden " + text + " after " + last);
      } else if (!last.isEmpty() && leads.orElse(false) && level <= LOUDNESS.indexOf(last)) {
        add(Circle.Kind.SUDDEN, sign.place(), "sudden " + text + " after the crescendo");
      } else {
        add(Circle.Kind.DYNAMIC, sign.place(), again ? text + ", as before" : text);
      }
      if (level >= 0 || !applies(sign).isEmpty()) {
        before = Optional.of(sign);
      }
    }
  }

  private static boolean far(int level, String last) {
    return Math.abs(level - LOUDNESS.indexOf(last)) >= SUDDEN_STEPS;
  }

  /**
   * Returns the dynamic that applies after a sign: after <i>fp</i> and <i>sfp</i> it is <i>p</i>;
   * empty after an accent such as <i>fz</i>.
   */
  private static String applies(PrintedText sign) {
    String text = sign.text();
    if (LOUDNESS.contains(text)) {
      return text;
    }
    String soft = SOFT_AFTER.matcher(text).replaceFirst("$1");
    return LOUDNESS.contains(soft) ? soft : "";
  }

  /** Returns whether the last hairpin, or word such as cresc., between two times is a crescendo. */
  private Optional<Boolean> louder(BigFraction from, BigFraction to) {
    record Leading(BigFraction start, boolean louder) {}
    return Stream.concat(
            part.wedges().stream().map(wedge -> new Leading(wedge.start(), wedge.louder())),
            all(Kind.WORDS).stream()
                .filter(CircleFinder::hairpinWord)
                .map(words -> new Leading(words.start(), lower(words).startsWith("cresc"))))
        .filter(one -> one.start().compareTo(from) >= 0 && one.start().compareTo(to) < 0)
        .max(Comparator.comparing(Leading::start))
        .map(Leading::louder);
  }

  private static String lower(PrintedText sign) {
    return sign.text().toLowerCase(Locale.ROOT);
  }

  private static boolean hairpinWord(PrintedText sign) {
    return HAIRPIN_WORD.matcher(lower(sign)).matches();
  }

  private boolean subito(PrintedText sign) {
    return all(Kind.WORDS).stream()
        .anyMatch(
            words -> words.start().equals(sign.start()) && SUBITO.matcher(lower(words)).find());
  }

  private void hairpins() {
    for (Wedge wedge : part.wedges()) {
      if (wedge.from().measureIndex() >= passage.measures().get(0).index()) {
        hairpin(wedge.from(), wedge.start(), Optional.of(wedge.to()), wedge.end(), wedge.louder());
      }
    }
    for (PrintedText words : all(Kind.WORDS)) {
      if (hairpinWord(words)) {
        Optional<PrintedText> end =
            all(Kind.DYNAMIC).stream()
                .filter(one -> one.start().compareTo(words.start()) > 0)
                .findFirst();
        hairpin(
            words.place(),
            words.start(),
            end.map(PrintedText::place),
            end.map(PrintedText::start).orElse(words.start()),
            lower(words).startsWith("cresc"));
      }
    }
  }

  private void hairpin(
      Place from, BigFraction start, Optional<Place> to, BigFraction end, boolean louder) {
    int last = to.map(CircleFinder::lastMeasure).orElse(from.measureIndex());
    int measures = last - from.measureIndex() + 1;
    String name = louder ? "crescendo" : "diminuendo";
    if (measures < LONG_MEASURES) {
      add(Circle.Kind.DYNAMIC, from, name);
      return;
    }
    String middle = number(from.measureIndex() + measures / 2, to.orElseThrow());
    add(
        Circle.Kind.LONG_HAIRPIN,
        from,
        name
            + inForce(start).map(one -> " from " + one).orElse("")
            + reached(end, to.orElseThrow())
                .filter(one -> !inForce(start).equals(Optional.of(one)))
                .map(one -> " to " + one)
                .orElse("")
            + " over "
            + measures
            + " measures: "
            + (louder
                ? "start softer than you think, and do not get loud before measure "
                : "start full, and do not fade before measure ")
            + middle);
  }

  /**
   * Returns the last measure of a hairpin: one that ends on a first beat ends a measure earlier.
   */
  private static int lastMeasure(Place end) {
    return end.measureIndex() - (end.onset().signum() == 0 ? 1 : 0);
  }

  /** Returns the printed number of a measure, or of the hairpin's end if beyond the passage. */
  private String number(int index, Place end) {
    return passage.measure(index).map(Measure::number).orElse(end.measure());
  }

  /** Returns the dynamic that applies at a time. */
  private Optional<String> inForce(BigFraction at) {
    return all(Kind.DYNAMIC).stream()
        .filter(sign -> sign.start().compareTo(at) <= 0)
        .map(CircleFinder::applies)
        .filter(text -> !text.isEmpty())
        .reduce((one, other) -> other);
  }

  /** Returns the dynamic that a hairpin leads to: at its end, or up to a measure later. */
  private Optional<String> reached(BigFraction end, Place place) {
    return all(Kind.DYNAMIC).stream()
        .filter(sign -> LOUDNESS.contains(sign.text()))
        .filter(sign -> sign.start().compareTo(end) >= 0)
        .filter(sign -> sign.place().measureIndex() <= place.measureIndex() + 1)
        .findFirst()
        .map(PrintedText::text);
  }

  private void words() {
    for (PrintedText sign : texts) {
      String text = lower(sign);
      if (sign.kind() == Kind.TEMPO) {
        add(Circle.Kind.WORDS, sign.place(), sign.text().replace("=", " = "));
      } else if (sign.kind() == Kind.MUTE) {
        add(Circle.Kind.CHANGE, sign.place(), changeover.mute(sign));
      } else if (sign.kind() == Kind.WORDS
          && !hairpinWord(sign)
          && !text.startsWith("pizz")
          && !text.startsWith("arco")) {
        if (MUTE.matcher(text).matches()) {
          add(Circle.Kind.CHANGE, sign.place(), changeover.mute(sign));
        } else if (STRING.matcher(text).matches()) {
          add(
              Circle.Kind.CHANGE,
              sign.place(),
              sign.text() + ": " + changeover.restBefore(sign.start()));
        } else if (!SUBITO.matcher(text).find()) {
          add(Circle.Kind.WORDS, sign.place(), sign.text());
        }
      }
    }
  }

  private void pizzicatoChanges() {
    List<Moment> moments = passage.moments();
    for (int m = 0; m < moments.size(); m++) {
      boolean before = m > 0 && moments.get(m - 1).pizzicato();
      if (moments.get(m).pizzicato() != before) {
        add(Circle.Kind.CHANGE, moments.get(m).place(), changeover.pizzicatoChange(m));
      }
    }
  }

  private void accents() {
    Map<Integer, List<Place>> places = new LinkedHashMap<>();
    for (Moment moment : passage.moments()) {
      if (moment.starting().stream().anyMatch(note -> note.marks().accent())) {
        places
            .computeIfAbsent(moment.place().measureIndex(), measure -> new ArrayList<>())
            .add(moment.place());
      }
    }
    for (List<Place> accented : places.values()) {
      String beats = String.join(", ", accented.stream().map(Place::beatText).toList());
      add(
          Circle.Kind.ACCENT,
          accented.get(0),
          accented.size() == 1 ? "accent" : "accents on beats " + beats);
    }
  }

  private void repeats() {
    for (PrintedMeasure measure : part.measures()) {
      Measure read = passage.measures().get(measure.index() - passage.measures().get(0).index());
      if (measure.repeatStart()) {
        add(Circle.Kind.REPEAT, read.place(BigFraction.ZERO), "the repeat starts here");
      }
      for (Ending ending : part.endings()) {
        if (ending.first() == measure.index()) {
          add(Circle.Kind.REPEAT, read.place(BigFraction.ZERO), "ending " + ending.number());
        }
      }
      if (measure.end() == Bar.REPEAT) {
        add(
            Circle.Kind.REPEAT,
            read.place(BigFraction.ZERO),
            "repeat at the end of this measure: find where to go back to");
      }
    }
    all(Kind.JUMP).forEach(jump -> add(Circle.Kind.REPEAT, jump.place(), jump.text()));
  }
}
