package fingering.practice;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.Place;
import fingering.music.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds what to circle in a part (common practice, no source). */
public final class Circles {
  private static final List<String> LOUDNESS =
      List.of("pppp", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff", "ffff");

  /** So many steps at once are sudden: p to f is three, mf to f one. */
  private static final int SUDDEN_STEPS = 2;

  /** A hairpin of so many measures is long. */
  private static final int LONG_MEASURES = 2;

  private static final Pattern SUBITO = Pattern.compile("\\b(?:sub\\.?|subito)(?:\\W|$)");
  private static final Pattern GROWING =
      Pattern.compile("^(?:cresc|dim|decresc|morendo|calando).*");
  private static final Pattern STRING =
      Pattern.compile("^(?:sul|sulla|sur|auf|auf der|am) .*|^col legno.*|^(?:ord|nat)\\b.*");
  private static final Pattern MUTE = Pattern.compile(".*\\b(?:sord|mute|dämpfer).*");

  private final Passage passage;
  private final List<Sign> signs;
  private final List<Circle> found = new ArrayList<>();
  private final Hands hands;

  private Circles(Passage passage, List<Sign> signs) {
    this.passage = passage;
    this.signs = signs;
    hands = new Hands(passage.moments());
  }

  /**
   * What to circle in a passage, by kinds, each in the order of the music.
   *
   * @param signs what is printed in it besides the notes
   */
  public static ImmutableList<Circle> of(Passage passage, List<Sign> signs) {
    Circles circles = new Circles(passage, signs);
    circles.dynamics();
    circles.hairpins();
    circles.words();
    circles.plucking();
    circles.accents();
    circles.repeats();
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(Circle::kind)
            .thenComparingInt(circle -> circle.place().measureIndex())
            .thenComparingDouble(circle -> circle.place().onset().doubleValue()),
        circles.found);
  }

  private void add(Circle.Kind kind, Place place, String says) {
    found.add(new Circle(kind, place, says));
  }

  private List<Sign> all(Sign.Kind kind) {
    return signs.stream().filter(sign -> sign.kind() == kind).toList();
  }

  private void dynamics() {
    Optional<Sign> before = Optional.empty();
    for (Sign sign : all(Sign.Kind.DYNAMIC)) {
      String text = sign.text();
      int level = LOUDNESS.indexOf(text);
      String last = before.map(Sign::text).orElse("");
      boolean led = before.filter(from -> led(from.start(), sign.start())).isPresent();
      boolean far =
          level >= 0
              && LOUDNESS.contains(last)
              && Math.abs(level - LOUDNESS.indexOf(last)) >= SUDDEN_STEPS;
      if (subito(sign) || (level < 0 && !text.isEmpty())) {
        add(Circle.Kind.SUDDEN, sign.place(), text + (subito(sign) ? ", subito" : ": at once"));
      } else if (far && !led) {
        add(Circle.Kind.SUDDEN, sign.place(), text + " at once after " + last);
      } else {
        add(Circle.Kind.DYNAMIC, sign.place(), text);
      }
      before = Optional.of(sign);
    }
  }

  /** Whether a hairpin or such words lead from one time to another. */
  private boolean led(BigFraction from, BigFraction to) {
    return signs.stream()
        .filter(
            sign ->
                sign.kind() == Sign.Kind.CRESCENDO
                    || sign.kind() == Sign.Kind.DIMINUENDO
                    || (sign.kind() == Sign.Kind.WORDS && growing(sign)))
        .anyMatch(sign -> sign.start().compareTo(from) >= 0 && sign.start().compareTo(to) < 0);
  }

  private static String lower(Sign sign) {
    return sign.text().toLowerCase(Locale.ROOT);
  }

  private static boolean growing(Sign sign) {
    return GROWING.matcher(lower(sign)).matches();
  }

  private boolean subito(Sign sign) {
    return all(Sign.Kind.WORDS).stream()
        .anyMatch(
            words -> words.start().equals(sign.start()) && SUBITO.matcher(lower(words)).find());
  }

  private void hairpins() {
    for (Sign sign : signs) {
      boolean words = sign.kind() == Sign.Kind.WORDS && growing(sign);
      boolean drawn = sign.kind() == Sign.Kind.CRESCENDO || sign.kind() == Sign.Kind.DIMINUENDO;
      if (!words && !drawn) {
        continue;
      }
      Sign.Kind ends = drawn ? Sign.Kind.HAIRPIN_END : Sign.Kind.DYNAMIC;
      Optional<Sign> end =
          all(ends).stream().filter(one -> one.start().compareTo(sign.start()) > 0).findFirst();
      boolean louder = sign.kind() == Sign.Kind.CRESCENDO || lower(sign).startsWith("cresc");
      int last = end.map(Circles::lastMeasure).orElse(sign.place().measureIndex());
      int measures = last - sign.place().measureIndex() + 1;
      if (measures < LONG_MEASURES) {
        add(Circle.Kind.DYNAMIC, sign.place(), louder ? "crescendo" : "diminuendo");
        continue;
      }
      add(Circle.Kind.LONG_HAIRPIN, sign.place(), spread(sign, end.get(), louder, measures));
    }
  }

  /** One that ends on the first beat ends with the measure before. */
  private static int lastMeasure(Sign end) {
    return end.place().measureIndex() - (end.place().onset().signum() == 0 ? 1 : 0);
  }

  private String spread(Sign sign, Sign end, boolean louder, int measures) {
    Optional<String> from = inForce(sign.start());
    Optional<String> to = reached(end);
    int half = sign.place().measureIndex() + measures / 2;
    String until =
        passage.measures().stream()
            .filter(measure -> measure.index() == half)
            .map(measure -> measure.number())
            .findFirst()
            .orElse(end.place().measure());
    return (louder ? "crescendo" : "diminuendo")
        + " over "
        + measures
        + " measures"
        + from.map(one -> " from " + one).orElse("")
        + to.map(one -> " to " + one).orElse("")
        + (louder
            ? ": begin softer than you think, and still be soft in measure " + until
            : ": begin full, and still have sound in measure " + until);
  }

  /** The dynamic that holds at a time, or stands there. */
  private Optional<String> inForce(BigFraction at) {
    return all(Sign.Kind.DYNAMIC).stream()
        .filter(sign -> sign.start().compareTo(at) <= 0)
        .reduce((one, other) -> other)
        .map(Sign::text);
  }

  /** The dynamic to which a hairpin leads: at its end, or soon behind it. */
  private Optional<String> reached(Sign end) {
    return all(Sign.Kind.DYNAMIC).stream()
        .filter(sign -> sign.start().compareTo(end.start()) >= 0)
        .filter(sign -> sign.place().measureIndex() <= end.place().measureIndex() + 1)
        .findFirst()
        .map(Sign::text);
  }

  private void words() {
    for (Sign sign : signs) {
      String text = lower(sign);
      if (sign.kind() == Sign.Kind.TEMPO) {
        add(Circle.Kind.WORDS, sign.place(), sign.text().replace("=", " = "));
      } else if (sign.kind() == Sign.Kind.MUTE) {
        add(Circle.Kind.CHANGE, sign.place(), hands.mute(sign));
      } else if (sign.kind() == Sign.Kind.WORDS
          && !growing(sign)
          && !text.startsWith("pizz")
          && !text.startsWith("arco")) {
        if (MUTE.matcher(text).matches()) {
          add(Circle.Kind.CHANGE, sign.place(), hands.mute(sign));
        } else if (STRING.matcher(text).matches()) {
          add(Circle.Kind.CHANGE, sign.place(), sign.text() + ": " + hands.seconds(sign.start()));
        } else if (!SUBITO.matcher(text).find()) {
          add(Circle.Kind.WORDS, sign.place(), sign.text());
        }
      }
    }
  }

  private void plucking() {
    List<Moment> moments = passage.moments();
    for (int m = 0; m < moments.size(); m++) {
      boolean before = m > 0 && moments.get(m - 1).pizzicato();
      if (moments.get(m).pizzicato() != before) {
        add(Circle.Kind.CHANGE, moments.get(m).place(), hands.plucked(m));
      }
    }
  }

  private void accents() {
    Map<Integer, List<Place>> places = new LinkedHashMap<>();
    for (Moment moment : passage.moments()) {
      if (moment.struck().stream().anyMatch(note -> note.marks().accent())) {
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
    for (Sign sign : signs) {
      String says =
          switch (sign.kind()) {
            case REPEAT_FROM -> "repeat from here";
            case REPEAT -> "repeat to here: find the place to go back to";
            case ENDING -> "ending " + sign.text();
            case JUMP -> sign.text();
            default -> "";
          };
      if (!says.isEmpty()) {
        add(Circle.Kind.REPEAT, sign.place(), says);
      }
    }
  }
}
