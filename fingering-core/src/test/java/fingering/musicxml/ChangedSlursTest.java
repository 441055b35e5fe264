package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.read;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.google.common.collect.ImmutableList;
import fingering.music.MeasureBeat;
import fingering.music.Moment;
import fingering.music.Passage;
import fingering.music.SlurChanges;
import fingering.music.SlurChanges.Change;
import fingering.music.print.PrintedPart;
import fingering.musicxml.marking.ScoreMarker;
import fingering.musicxml.reading.PassageRequest;
import fingering.musicxml.reading.Score;
import fingering.plan.Brief;
import fingering.plan.Planner;
import fingering.plan.marks.MarkedCopy;
import fingering.plan.marks.StringSigns;
import fingering.scoring.rules.StandardRules;
import fingering.tables.FingeringException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slurs that a lesson changes count as if they were printed, and are written as such. */
class ChangedSlursTest {
  /** Slurs from beat 1 to 2 and from 3 to 4 of measure 1; none in measures 2 and 3. */
  private static final String STUDY =
      violin(
          measure(
              "1",
              START,
              note("A4", 4).slur("start", 1),
              note("B4", 4).slur("stop", 1),
              note("D5", 4).slur("start", 1).notation("<technical><up-bow/></technical>"),
              note("E5", 4).slur("stop", 1)),
          measure("2", note("F5", 4), note("E5", 4), note("D5", 4), note("B4", 4).tie("start")),
          measure("3", note("B4", 4).tie("stop"), rest(4), note("A4", 4), note("G4", 4)));

  private static SlurChanges changes(String... pairs) {
    ImmutableList.Builder<Change> changes = ImmutableList.builder();
    for (String pair : pairs) {
      int end = pair.indexOf('-');
      changes.add(Change.parse(pair.substring(0, end), pair.substring(end + 1)));
    }
    return new SlurChanges(changes.build());
  }

  private static Passage changed(String score, SlurChanges changes) {
    return read(score).passage(PassageRequest.WHOLE.withSlurs(changes));
  }

  private static String slurred(Passage passage) {
    return passage.moments().stream()
        .map(moment -> moment.slurred() ? "~" : ".")
        .collect(Collectors.joining());
  }

  /** The slurs that are printed, without the side to which they curve. */
  private static Set<String> printed(String score, SlurChanges changes) {
    Score read = read(score);
    Passage passage = read.passage(PassageRequest.WHOLE.withSlurs(changes));
    PrintedPart part = read.printed(passage, Optional.empty());
    return part.slurs().stream()
        .map(slur -> slur.from() + " " + slur.to())
        .collect(Collectors.toSet());
  }

  private static String written(String score, SlurChanges changes) {
    return ScoreMarker.mark(score, List.of(), changed(score, changes).slurs());
  }

  @ParameterizedTest
  @CsvSource({
    // A new slur; beside others; over the whole.
    "2.1-2.3, .~.~.~~...",
    "1.1-2.3, .~~~~~~...",
    // It replaces the slurs with which it shares a note.
    "1.2-1.3, ..~.......",
    "1.4-2.1, .~..~.....",
    // It reaches over the tie.
    "2.3-2.4, .~.~...~..",
    // Taken off at its first note or its last.
    "1.1-none, ...~......",
    "1.4-none, .~........",
    "2.2-none, .~.~......"
  })
  void slursAreJoinedAsChanged(String change, String joined) {
    SlurChanges changes = changes(change);

    assertThat(slurred(changed(STUDY, changes))).isEqualTo(joined);
    Passage copy = ScoreText.passage(written(STUDY, changes));
    assertThat(copy.moments()).isEqualTo(changed(STUDY, changes).moments());
    assertThat(printed(written(STUDY, changes), SlurChanges.NONE))
        .isEqualTo(printed(STUDY, changes));
  }

  @Test
  void manyChangesAreMadeTogether() {
    assertThat(slurred(changed(STUDY, changes("1.1-none", "1.3-2.1", "2.2-2.4", "3.3-3.4"))))
        .isEqualTo("...~~.~~.~");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7.1-7.2 | In 'slurs', at 7.1: No note begins in measure 7",
        "1.1-1.9 | In 'slurs', at 1.9: No note begins in measure 1, beat 9",
        "3.1-3.3 | In 'slurs', at 3.1: No note begins in measure 3, beat 1",
        "2.4-3.3 | In 'slurs', the slur from 2.4 to 3.3 runs over a rest: end it before the rest.",
        "1.1-1.3 1.3-1.4 | In 'slurs', the slur from 1.1 to 1.3 and the slur from 1.3 to 1.4 share",
        "1.1-1.3 1.2-none | In 'slurs', the slur from 1.1 to 1.3 and 1.2: none share a note",
        "2.3-2.1 | the slur from 2.3 to 2.1 does not end after it begins",
        "2.1-1.3 | the slur from 2.1 to 1.3 does not end after it begins",
        "2.1-2.1 | the slur from 2.1 to 2.1 does not end after it begins",
        "2.1-2.2 2.1.0-2.3 | there are two slurs at 2.1"
      })
  void slurThatCannotBePlayedIsRefused(String slurs, String message) {
    assertThatExceptionOfType(FingeringException.class)
        .isThrownBy(() -> changed(STUDY, changes(slurs.split(" ", -1))))
        .withMessageStartingWith(message);
  }

  @Test
  void slurMayRunOverARestOverWhichAPrintedOneRuns() {
    String score =
        violin(
            measure(
                "1",
                START,
                note("A4", 4),
                note("B4", 4).slur("start", 1),
                rest(4),
                note("E5", 4).slur("stop", 1)));

    assertThat(slurred(changed(score, changes("1.1-1.4")))).isEqualTo(".~~");
  }

  @Test
  void slurFromGraceNotesStays() {
    String score =
        violin(
            measure(
                "1",
                START,
                note("A4", 4),
                note("B4", 0).grace().slur("start", 1),
                note("C5", 4).slur("stop", 1).slur("start", 2),
                note("D5", 8).slur("stop", 2)));

    assertThat(slurred(changed(score, changes("1.2-none")))).isEqualTo("..~.");
    assertThat(slurred(changed(score, changes("1.1-1.3")))).isEqualTo(".~~~");
    assertThat(ScoreText.passage(written(score, changes("1.1-1.3"))).moments())
        .isEqualTo(changed(score, changes("1.1-1.3")).moments());
  }

  @Test
  void onlyTheChosenVoiceIsChanged() {
    String score =
        violin(
            measure(
                "1",
                START,
                note("A5", 8).slur("start", 1),
                note("B5", 8).slur("stop", 1),
                backup(16),
                note("A4", 8).voice("2").slur("start", 1),
                note("C5", 8).voice("2").slur("stop", 1)));

    Passage changed =
        read(score).passage(PassageRequest.WHOLE.withVoice("2").withSlurs(changes("1.1-none")));
    String copy = ScoreMarker.mark(score, List.of(), changed.slurs());

    assertThat(slurred(changed)).isEqualTo("..");
    assertThat(slurred(read(copy).passage(PassageRequest.WHOLE.withVoice("1")))).isEqualTo(".~");
    assertThat(slurred(read(copy).passage(PassageRequest.WHOLE.withVoice("2")))).isEqualTo("..");
  }

  @Test
  void placeIsLookedForInTheMeasuresFirst() {
    String score =
        violin(
            measure("1", START, note("A4", 8), note("B4", 8)),
            measure("2", note("D5", 16)),
            measure("1", note("A4", 8), note("B4", 8)),
            measure("3", note("E5", 8), note("F5", 8)));
    PassageRequest request = PassageRequest.WHOLE.withSlurs(changes("1.1-1.3"));

    assertThat(slurred(read(score).passage(request))).isEqualTo(".~.....");
    // A slur elsewhere in the part changes nothing here, and is no mistake.
    assertThat(slurred(read(score).passage(request.withMeasures("3")))).isEqualTo("..");
  }

  @Test
  void onlySlursChangeInTheTextOfTheScore() {
    String copy = written(STUDY, changes("1.2-1.3", "2.1-2.2"));

    assertThat(copy.replaceAll("<slur [^>]*/>|</?notations>", ""))
        .isEqualTo(STUDY.replaceAll("<slur [^>]*/>|</?notations>", ""));
    assertThat(copy).contains("<up-bow/>").doesNotContain("<notations></notations>");
  }

  @Test
  void middleOfASlurIsRemovedWithIt() {
    String score =
        violin(
            measure(
                "1",
                START,
                note("A4", 4).slur("start", 1),
                note("B4", 4).slur("continue", 1),
                note("C5", 8).slur("stop", 1)));

    assertThat(written(score, changes("1.2-none"))).doesNotContain("<slur");
  }

  @Test
  void planCostsWhatItCostsWithThePrintedSlurs() {
    SlurChanges changes = changes("1.1-2.3");
    var rules = StandardRules.commonPractice();
    var plan = Planner.of(changed(STUDY, changes), rules).plan(Brief.free("changed"));
    String copy = new MarkedCopy(MarkedCopy.Extent.SCORE, true, StringSigns.NONE).of(STUDY, plan);
    var printed = Planner.of(ScoreText.passage(written(STUDY, changes)), rules);

    assertThat(plan.total()).isEqualTo(printed.plan(Brief.free("printed")).total());
    assertThat(plan.total())
        .isNotEqualTo(
            Planner.of(ScoreText.passage(STUDY), rules).plan(Brief.free("as it was")).total());
    assertThat(slurred(ScoreText.passage(copy))).isEqualTo(slurred(plan.passage()));
  }

  /** Music in one or two voices, with slurs, ties, rests, chords and grace notes. */
  private static String music(Random random) {
    String[] measures = new String[2 + random.nextInt(3)];
    for (int i = 0; i < measures.length; i++) {
      boolean two = random.nextBoolean();
      measures[i] =
          measure(
              String.valueOf(i + 1),
              i == 0 ? START : "",
              voice(random, "1"),
              two ? backup(16) + voice(random, "2") : "");
    }
    return violin(measures);
  }

  private static String voice(Random random, String number) {
    List<Object> elements = new ArrayList<>();
    int slurred = 0;
    for (int left = 16; left > 0; ) {
      int length = 1 + random.nextInt(Math.min(6, left));
      left -= length;
      if (slurred == 0 && !elements.isEmpty() && random.nextInt(8) == 0) {
        elements.add(rest(length).voice(number));
        continue;
      }
      if (random.nextInt(8) == 0) {
        boolean joined = random.nextBoolean();
        ScoreText.N grace = note("B4", 0).grace().voice(number);
        elements.add(joined ? grace.slur("start", 3) : grace);
        elements.add(
            note("A4", length)
                .voice(number)
                .notation(joined ? "<slur type=\"stop\" number=\"3\"/>" : ""));
        continue;
      }
      ScoreText.N main = note(random.nextBoolean() ? "D5" : "A4", length).voice(number);
      if (slurred > 0 && (left == 0 || random.nextBoolean())) {
        main.slur("stop", slurred);
        slurred = 0;
      } else if (slurred == 0 && left > 8 && random.nextBoolean()) {
        slurred = 1 + random.nextInt(2);
        main.slur("start", slurred);
      }
      elements.add(main);
      if (random.nextInt(6) == 0) {
        elements.add(note("G3", length).chord().voice(number));
      }
    }
    return elements.stream().map(Object::toString).collect(Collectors.joining());
  }

  private static Optional<SlurChanges> someSlur(Random random, Passage passage) {
    List<Moment> moments = passage.moments();
    int[] named = IntStream.range(0, moments.size()).filter(m -> !moments.get(m).grace()).toArray();
    int from = random.nextInt(named.length);
    int to = Math.min(named.length - 1, from + 1 + random.nextInt(4));
    MeasureBeat start = place(moments.get(named[from]));
    if (random.nextInt(4) == 0) {
      return Optional.of(new SlurChanges(ImmutableList.of(new Change(start, Optional.empty()))));
    }
    return from == to
        ? Optional.empty()
        : Optional.of(
            new SlurChanges(
                ImmutableList.of(new Change(start, Optional.of(place(moments.get(named[to])))))));
  }

  private static MeasureBeat place(Moment moment) {
    return MeasureBeat.parse(moment.place().measure() + "." + moment.place().beatText());
  }

  @Property(tries = 300)
  void writtenSlursAreReadAsChanged(@ForAll long seed) {
    Random random = new Random(seed);
    String score = music(random);
    Optional<SlurChanges> changes = someSlur(random, ScoreText.passage(score));
    if (changes.isEmpty()) {
      return;
    }
    Passage changed;
    try {
      changed = changed(score, changes.get());
    } catch (SelectionException overARest) {
      assertThat(overARest.getMessage()).contains("over a rest");
      return;
    }
    String copy = written(score, changes.get());

    assertThat(ScoreText.passage(copy).moments()).isEqualTo(changed.moments());
    assertThat(printed(copy, SlurChanges.NONE)).isEqualTo(printed(score, changes.get()));

    // Taken off again, a slur that replaced none leaves the score as it was.
    if (changed.slurs().removed().isEmpty()) {
      MeasureBeat start = changes.get().changes().get(0).from();
      SlurChanges off = new SlurChanges(ImmutableList.of(new Change(start, Optional.empty())));
      assertThat(written(copy, off)).isEqualTo(score);
      assertThat(changed(copy, off).moments()).isEqualTo(ScoreText.passage(score).moments());
    }
  }
}
