package fingering.musicxml;

import static fingering.musicxml.ScoreText.START;
import static fingering.musicxml.ScoreText.backup;
import static fingering.musicxml.ScoreText.measure;
import static fingering.musicxml.ScoreText.metronome;
import static fingering.musicxml.ScoreText.note;
import static fingering.musicxml.ScoreText.passage;
import static fingering.musicxml.ScoreText.rehearsal;
import static fingering.musicxml.ScoreText.rest;
import static fingering.musicxml.ScoreText.violin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class ScoreReaderPropertyTest {
  private static final String[] PITCHES = {"G3", "A3", "D4", "F#4", "A4", "Bb4", "E5", "C6"};

  private static String voice(Random random, String number) {
    List<Object> elements = new ArrayList<>();
    int left = 16;
    while (left > 0) {
      int length = 1 + random.nextInt(Math.min(6, left));
      left -= length;
      int kind = random.nextInt(8);
      String pitch = PITCHES[random.nextInt(PITCHES.length)];
      if (kind == 0) {
        elements.add(note(pitch, 0).grace().voice(number));
      }
      ScoreText.N main = kind == 1 ? rest(length).voice(number) : note(pitch, length).voice(number);
      if (kind == 2) {
        main.tie("start");
      } else if (kind == 3) {
        main.tie("stop");
      } else if (kind > 5) {
        main.slur(kind == 6 ? "start" : "stop", 1 + random.nextInt(2));
      }
      int print = random.nextInt(10);
      if (print == 0) {
        main.diamond();
      } else if (print == 1) {
        main.notation("<ornaments><trill-mark/></ornaments>");
      } else if (print == 2) {
        main.technical("<harmonic><artificial/></harmonic>");
      }
      elements.add(main);
      if (kind == 4) {
        elements.add(note("G3", length).chord().voice(number));
        elements.add(note("C4", length).chord().diamond().voice(number));
      }
    }
    StringBuilder text = new StringBuilder();
    elements.forEach(text::append);
    return text.toString();
  }

  private static String music(Random random) {
    String[] measures = new String[2 + random.nextInt(4)];
    for (int i = 0; i < measures.length; i++) {
      measures[i] =
          measure(
              String.valueOf(i + 1),
              i == 0 ? START : rehearsal("A" + i),
              random.nextBoolean() ? metronome("half", String.valueOf(30 + i * 20)) : "",
              voice(random, "1"),
              backup(16),
              voice(random, "2"));
    }
    // A score of rests only would be refused.
    measures[measures.length - 1] += measure("99", note("A4", 16));
    return violin(measures);
  }

  @Property(tries = 150)
  void timeNeverDecreasesAndHeldNotesStillSound(@ForAll long seed) {
    Passage passage = passage(music(new Random(seed)));
    long before = 0;
    for (Moment moment : passage.moments()) {
      assertThat(moment.startMicros()).isGreaterThanOrEqualTo(before);
      assertThat(moment.soundMicros()).isPositive();
      assertThat(moment.restMicros()).isNotNegative();
      assertThat(moment.starting()).isSortedAccordingTo((a, b) -> a.midi() - b.midi());
      Note first = moment.starting().get(0);
      assertThat(moment.starting()).allMatch(n -> n.start().equals(first.start()));
      assertThat(moment.held())
          .allMatch(n -> n.start().compareTo(first.start()) < 0)
          .allMatch(n -> n.end().compareTo(first.start()) > 0);
      before = moment.startMicros();
    }
    assertThat(passage.notes().stream().map(Note::address)).doesNotHaveDuplicates();
  }

  @Property(tries = 150)
  void aDamagedScoreIsReadOrRefusedInOneSentence(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 40) int cut) {
    Random random = new Random(seed);
    StringBuilder xml = new StringBuilder(music(random));
    for (int i = 0; i < 3; i++) {
      int at = random.nextInt(xml.length() - cut);
      if (random.nextBoolean()) {
        xml.delete(at, at + cut);
      } else {
        int digit = xml.indexOf(">", at) + 1;
        if (digit < xml.length() && Character.isDigit(xml.charAt(digit))) {
          xml.setCharAt(digit, "-09x.".charAt(random.nextInt(5)));
        }
      }
    }
    assertThatCode(
            () -> {
              try {
                passage(xml.toString());
              } catch (UnreadableScoreException | SelectionException e) {
                assertThat(e.getMessage()).matches("(?s)\\S.*\\S");
              }
            })
        .doesNotThrowAnyException();
  }
}
