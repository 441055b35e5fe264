package fingering.musicxml;

import static fingering.musicxml.ScoreText.measureWith;
import static fingering.musicxml.ScoreText.metronome;
import static fingering.musicxml.ScoreText.words;

import fingering.music.BeatUnit;
import fingering.music.Marks;
import fingering.music.Passage;
import fingering.music.builder.PassageBuilder;
import fingering.musicxml.ScoreText.N;
import fingering.tables.Instruments;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;

/** Random music, built in code and written as MusicXML side by side. */
final class BuiltAndReadMusic {
  private static final int QUARTER = 48;
  private static final List<BeatUnit> VALUES =
      List.of(
          BeatUnit.HALF.dotted(),
          BeatUnit.HALF,
          BeatUnit.QUARTER.dotted(),
          BeatUnit.QUARTER,
          BeatUnit.EIGHTH,
          BeatUnit.SIXTEENTH);
  private static final List<String> PITCHES =
      List.of("E3", "Gb3", "A3", "C4", "D4", "F#4", "A4", "Bb4", "B4", "E5");

  /**
   * Music between two places at which a slur may begin or end.
   *
   * @param code adds it in code
   * @param measure the measure, from 0
   * @param before the XML before the notes
   * @param notes the notes and rests in XML, in order
   * @param ends the first and the last note; empty for a rest
   * @param tied whether it begins with a note tied to the one before
   */
  private record Step(
      Consumer<PassageBuilder> code,
      int measure,
      String before,
      List<N> notes,
      List<N> ends,
      boolean tied) {}

  private final Random random;
  private final String instrument;
  private final List<Step> steps = new ArrayList<>();
  private final int beats;
  private final int beatType;
  private final int fifths;
  private final int pickup;
  private final int measures;
  private List<String> tied = List.of();

  BuiltAndReadMusic(long seed) {
    random = new Random(seed);
    instrument = random.nextInt(4) == 0 ? "Double Bass" : "Viola";
    beats = random.nextBoolean() ? 3 : 6;
    beatType = beats == 3 ? 4 : 8;
    fifths = random.nextInt(9) - 4;
    pickup = random.nextInt(3) == 0 ? QUARTER : 0;
    measures = 2 + random.nextInt(4);
    for (int m = 0; m < measures; m++) {
      int length = m == 0 && pickup > 0 ? pickup : 3 * QUARTER;
      fill(m, m == measures - 1 && random.nextBoolean() ? 2 * QUARTER : length);
    }
  }

  private void fill(int measure, int length) {
    int left = length;
    if (measure == 0 ? random.nextInt(4) > 0 : random.nextInt(4) == 0) {
      String mark = "quarter=" + (40 + random.nextInt(100));
      steps.add(
          new Step(
              b -> b.tempo(mark),
              measure,
              metronome("quarter", mark.substring(mark.indexOf('=') + 1)),
              List.of(),
              List.of(),
              false));
    }
    while (left > 0) {
      int most = left;
      List<BeatUnit> fitting = VALUES.stream().filter(v -> divisions(v) <= most).toList();
      BeatUnit value = pick(fitting);
      int kind = random.nextInt(10);
      if (!tied.isEmpty()) {
        continued(measure, value);
      } else if (kind == 0 && !steps.isEmpty() && measure > 0) {
        steps.add(
            new Step(
                b -> b.rest(value),
                measure,
                "",
                List.of(ScoreText.rest(divisions(value))),
                List.of(),
                false));
      } else if (kind == 1 && value.equals(BeatUnit.QUARTER)) {
        triplet(measure);
      } else if (kind == 2) {
        graced(measure, value);
      } else {
        chord(measure, value, pitches(), false);
      }
      left -= divisions(value);
    }
    if (measure == measures - 1 && !tied.isEmpty()) {
      tied = List.of();
      Step last = steps.remove(steps.size() - 1);
      steps.add(chordStep(measure, lastValue, lastPitches, last.tied(), List.of()));
    }
  }

  private BeatUnit lastValue = BeatUnit.QUARTER;
  private List<String> lastPitches = List.of();

  private static int divisions(BeatUnit value) {
    return value.quarters().multiply(QUARTER).intValue();
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private List<String> pitches() {
    String one = pick(PITCHES);
    String other = pick(PITCHES);
    return random.nextInt(3) > 0 || other.equals(one) ? List.of(one) : List.of(one, other);
  }

  /** Repeats one of the tied notes, at times with another. */
  private void continued(int measure, BeatUnit value) {
    String kept = pick(tied);
    String other = pick(PITCHES);
    List<String> pitches =
        random.nextBoolean() || other.equals(kept) ? List.of(kept) : List.of(other, kept);
    chord(measure, value, pitches, true);
  }

  private void chord(int measure, BeatUnit value, List<String> pitches, boolean continues) {
    List<String> before = continues ? tied : List.of();
    tied = random.nextInt(5) == 0 ? pitches : List.of();
    lastValue = value;
    lastPitches = pitches;
    lastBefore = before;
    steps.add(chordStep(measure, value, pitches, continues, tied));
  }

  private List<String> lastBefore = List.of();

  private Step chordStep(
      int measure, BeatUnit value, List<String> pitches, boolean continues, List<String> starts) {
    List<N> notes = new ArrayList<>();
    boolean fingered = !continues && random.nextInt(6) == 0;
    int bow = continues ? 0 : random.nextInt(8);
    for (String pitch : pitches) {
      N note = ScoreText.note(pitch, divisions(value));
      if (!notes.isEmpty()) {
        note.chord();
      }
      if (continues && lastBefore.contains(pitch)) {
        note.tie("stop");
      }
      if (!starts.isEmpty()) {
        note.tie("start");
      }
      if (fingered) {
        note.technical("<fingering>2</fingering>");
      }
      notes.add(note);
    }
    return new Step(
        b -> {
          if (bow == 1) {
            b.pizzicato();
          } else if (bow == 2) {
            b.arco();
          }
          b.chord(value, pitches.toArray(String[]::new));
          if (fingered) {
            b.marks(Marks.NONE.withFinger(Optional.of("2")));
          }
          if (!starts.isEmpty()) {
            b.tie();
          }
        },
        measure,
        bow == 1 ? words("pizz.") : bow == 2 ? words("arco") : "",
        notes,
        List.of(notes.get(0), notes.get(0)),
        continues);
  }

  private void triplet(int measure) {
    List<String> pitches = List.of(pick(PITCHES), pick(PITCHES), pick(PITCHES));
    List<N> notes = pitches.stream().map(pitch -> ScoreText.note(pitch, QUARTER / 3)).toList();
    steps.add(
        new Step(
            b -> b.tuplet(3, 2, t -> t.notes(BeatUnit.EIGHTH, pitches.toArray(String[]::new))),
            measure,
            "",
            notes,
            List.of(notes.get(0), notes.get(2)),
            false));
  }

  private void graced(int measure, BeatUnit value) {
    List<String> graces = random.nextBoolean() ? List.of("C4") : List.of("D4", "E4");
    String main = pick(PITCHES);
    List<N> notes = new ArrayList<>();
    graces.forEach(pitch -> notes.add(ScoreText.note(pitch, 0).grace()));
    notes.add(ScoreText.note(main, divisions(value)));
    steps.add(
        new Step(
            b -> b.grace(graces.toArray(String[]::new)).note(main, value),
            measure,
            "",
            notes,
            List.of(notes.get(0), notes.get(notes.size() - 1)),
            false));
  }

  /** The passage built in code; slurs are added, here and in the XML. */
  Passage built() {
    PassageBuilder builder =
        PassageBuilder.of(Instruments.standard().named(instrument))
            .title("Study")
            .partName(instrument)
            .key(fifths)
            .meter(beats, beatType);
    if (pickup > 0) {
      builder.pickup(BeatUnit.QUARTER);
    }
    int next = 0;
    while (next < steps.size()) {
      int from = next;
      int to = Math.min(steps.size() - 1, from + 1 + random.nextInt(4));
      Step first = steps.get(from);
      Step last = steps.get(to);
      boolean slur =
          random.nextInt(3) == 0 && to > from && !first.ends().isEmpty() && !last.ends().isEmpty();
      if (slur) {
        first.ends().get(0).slur("start", 1);
        last.ends().get(1).slur("stop", 1);
        builder.slur(b -> steps.subList(from, to + 1).forEach(step -> step.code().accept(b)));
        next = to + 1;
      } else {
        first.code().accept(builder);
        next++;
      }
    }
    return builder.build();
  }

  /** The same music as MusicXML; call {@link #built} before. */
  String xml() {
    List<String> all = new ArrayList<>();
    for (int m = 0; m < measures; m++) {
      int measure = m;
      List<Object> content = new ArrayList<>();
      if (m == 0) {
        content.add(
            "<attributes><divisions>%d</divisions><key><fifths>%d</fifths></key><time><beats>%d</beats><beat-type>%d</beat-type></time></attributes>"
                .formatted(QUARTER, fifths, beats, beatType));
      }
      steps.stream()
          .filter(step -> step.measure() == measure)
          .forEach(
              step -> {
                content.add(step.before());
                content.addAll(step.notes());
              });
      String number = pickup == 0 ? "number=\"" + (m + 1) + "\"" : "number=\"" + m + "\"";
      all.add(
          measureWith(
              number + (m == 0 && pickup > 0 ? " implicit=\"yes\"" : ""), content.toArray()));
    }
    return ScoreText.score(ScoreText.part(instrument, "", all.toArray(String[]::new)));
  }
}
