package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The MIDI file of a practice plan, read by a small reader written for this test (Standard MIDI
 * Files 1.0, chunks, variable-length quantities, running status and tempo events; from memory).
 */
final class PracticeMidiTest {
  private static final String TUNE = "X:1\nM:3/4\nL:1/4\nQ:1/4=96\nK:G clef=alto\n";
  private static final int TEMPO = 0x51;
  private static final int PERCUSSION = 9;

  /** An event: its tick, its status byte or 0xFF, its first data byte or kind, and the rest. */
  private record Event(long tick, int status, int data, BigInteger rest) {
    boolean noteOn() {
      return (status & 0xF0) == 0x90 && rest.signum() != 0;
    }

    boolean noteOff() {
      return (status & 0xF0) == 0x80 || ((status & 0xF0) == 0x90 && rest.signum() == 0);
    }

    int channel() {
      return status & 0x0F;
    }
  }

  /** A note with its times in seconds. */
  private record Heard(int channel, int key, double start, double end) {}

  /** A file: its format, the ticks of a quarter note, and the events of all tracks. */
  private record Midi(int format, int quarter, int tracks, List<Event> events) {
    static Midi read(Path file) throws Exception {
      ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
      assertThat(chunk(bytes)).isEqualTo("MThd");
      assertThat(bytes.getInt()).isEqualTo(6);
      int format = bytes.getShort();
      int tracks = bytes.getShort();
      int quarter = bytes.getShort();
      assertThat(quarter).isPositive();
      List<Event> events = new ArrayList<>();
      for (int i = 0; i < tracks; i++) {
        assertThat(chunk(bytes)).isEqualTo("MTrk");
        int end = bytes.getInt() + bytes.position();
        track(bytes, end, events);
      }
      assertThat(bytes.remaining()).isZero();
      events.sort(Comparator.comparingLong(Event::tick));
      return new Midi(format, quarter, tracks, events);
    }

    private static String chunk(ByteBuffer bytes) {
      byte[] name = new byte[4];
      bytes.get(name);
      return new String(name, StandardCharsets.US_ASCII);
    }

    private static void track(ByteBuffer bytes, int end, List<Event> events) {
      long tick = 0;
      int status = 0;
      while (bytes.position() < end) {
        tick += quantity(bytes);
        int next = bytes.get() & 0xFF;
        if (next < 0x80) {
          bytes.position(bytes.position() - 1);
        } else {
          status = next;
        }
        if (status == 0xFF) {
          int kind = bytes.get();
          byte[] content = new byte[(int) quantity(bytes)];
          bytes.get(content);
          events.add(new Event(tick, status, kind, new BigInteger(1, content)));
          if (kind == 0x2F) {
            assertThat(bytes.position()).as("the end of a track").isEqualTo(end);
          }
        } else {
          int data = bytes.get();
          boolean one = (status & 0xF0) == 0xC0 || (status & 0xF0) == 0xD0;
          int second = one ? 0 : bytes.get();
          events.add(new Event(tick, status, data, BigInteger.valueOf(second)));
        }
      }
    }

    private static long quantity(ByteBuffer bytes) {
      long quantity = 0;
      int next;
      do {
        next = bytes.get() & 0xFF;
        quantity = (quantity << 7) | (next & 0x7F);
      } while (next >= 0x80);
      return quantity;
    }

    List<Integer> tempi() {
      return events.stream()
          .filter(event -> event.status() == 0xFF && event.data() == TEMPO)
          .map(event -> event.rest().intValueExact())
          .toList();
    }

    private double seconds(long tick) {
      double seconds = 0;
      long last = 0;
      double micros = 500_000;
      for (Event event : events) {
        if (event.status() == 0xFF && event.data() == TEMPO && event.tick() <= tick) {
          seconds += (event.tick() - last) * micros / quarter / 1e6;
          last = event.tick();
          micros = event.rest().doubleValue();
        }
      }
      return seconds + (tick - last) * micros / quarter / 1e6;
    }

    List<Heard> heard(int channel) {
      List<Heard> heard = new ArrayList<>();
      for (Event on : events) {
        if (on.noteOn() && on.channel() == channel) {
          Event off =
              events.stream()
                  .filter(other -> other.noteOff() && other.channel() == channel)
                  .filter(other -> other.data() == on.data() && other.tick() > on.tick())
                  .findFirst()
                  .orElseThrow();
          heard.add(new Heard(channel, on.data(), seconds(on.tick()), seconds(off.tick())));
        }
      }
      return heard;
    }
  }

  @TempDir Path folder;

  private Session practice(String tune, Path file, String... more) {
    List<Object> words =
        new ArrayList<>(
            List.of(
                "practice",
                "--abc",
                tune,
                "--from",
                "60",
                "--to",
                "96",
                "--by",
                "2026-12-12",
                "--today",
                "2026-11-21",
                "--midi",
                file));
    words.addAll(List.of(more));
    return Session.of(words.toArray());
  }

  private Midi played(String tune, String... more) throws Exception {
    Path file = folder.resolve("play.mid");
    practice(tune, file, more).succeeded();
    return Midi.read(file);
  }

  /** At quarter = 60, a measure of 3/4 takes three seconds. */
  @Test
  void notesFollowAMeasureOfClicks() throws Exception {
    Midi midi = played(TUNE + "G A/B/ z|c3|", "--midi-tempo", "60");
    assertThat(midi.format()).isEqualTo(1);
    assertThat(midi.tracks()).isEqualTo(3);
    assertThat(midi.tempi()).containsExactly(1_000_000);
    List<Heard> notes = midi.heard(0);
    assertThat(notes).extracting(Heard::key).containsExactly(67, 69, 71, 72);
    double[][] expected = {{3, 4}, {4, 4.5}, {4.5, 5}, {6, 9}};
    for (int i = 0; i < expected.length; i++) {
      assertThat(notes.get(i).start()).isCloseTo(expected[i][0], within(0.002));
      assertThat(notes.get(i).end()).isCloseTo(expected[i][1], within(0.002));
    }
    List<Heard> clicks = midi.heard(PERCUSSION);
    assertThat(clicks).hasSize(9);
    for (int i = 0; i < clicks.size(); i++) {
      assertThat(clicks.get(i).start()).isCloseTo(i, within(0.002));
      assertThat(clicks.get(i).key()).as("click " + i).isEqualTo(i % 3 == 0 ? 76 : 77);
    }
  }

  /** The first day starts four steps below 60, at 52, where the metronome clicks eighths. */
  @Test
  void withoutATempoItIsTheFirstStepOfTheDay() throws Exception {
    Midi midi = played(TUNE + "G A B|c3|");
    assertThat(midi.tempi()).containsExactly((int) Math.round(60e6 / 52));
    assertThat(midi.heard(PERCUSSION)).hasSize(18);
    assertThat(midi.heard(0).get(0).start()).isCloseTo(3 * 60 / 52.0, within(0.002));
  }

  @Test
  void aPickupIsCountedInWithItsMeasure() throws Exception {
    Midi midi = played(TUNE + "G|A B c|", "--midi-tempo", "60");
    assertThat(midi.heard(0)).extracting(Heard::start).first().isEqualTo(5.0);
    assertThat(midi.heard(PERCUSSION)).hasSize(9);
    assertThat(midi.heard(PERCUSSION).stream().filter(click -> click.key() == 76))
        .extracting(Heard::start)
        .containsExactly(0.0, 3.0, 6.0);
  }

  /** The second tempo is half of the first, and stays half of it. */
  @Test
  void laterTempiChangeInProportion() throws Exception {
    Midi midi = played(TUNE + "G A B|[Q:1/4=48] c3|d3|", "--midi-tempo", "60");
    assertThat(midi.tempi()).containsExactly(1_000_000, 2_000_000);
    assertThat(midi.heard(0).get(3).start()).isCloseTo(6, within(0.002));
    assertThat(midi.heard(0).get(4).start()).isCloseTo(12, within(0.002));
    assertThat(midi.heard(PERCUSSION)).hasSize(12);
  }

  @Test
  void compoundMetersClickTheirBeats() throws Exception {
    String tune = "X:1\nM:6/8\nL:1/8\nQ:3/8=60\nK:G clef=alto\nGABcBA|G3A3|";
    Midi midi = played(tune, "--midi-tempo", "dotted-quarter=60");
    assertThat(midi.heard(PERCUSSION)).hasSize(6);
    assertThat(midi.heard(0).get(0).start()).isCloseTo(2, within(0.002));
  }

  /** A measure to count in, A, the first ending, A and the second ending: at 60, 18 seconds. */
  @Test
  void repeatsAndEndingsArePlayed() throws Exception {
    Midi midi = played(TUNE + "|:G A B|1 c3:|2 d3|e3|]", "--midi-tempo", "60");
    assertThat(midi.heard(0))
        .extracting(Heard::key)
        .containsExactly(67, 69, 71, 72, 67, 69, 71, 74, 76);
    assertThat(midi.heard(0)).extracting(Heard::start).last().isEqualTo(15.0);
    assertThat(midi.heard(PERCUSSION)).hasSize(18);
  }

  /** The repeat goes back to the first tempo. */
  @Test
  void repeatGoesBackToItsTempo() throws Exception {
    Midi midi = played(TUNE + "|:G A B|[Q:1/4=48] c3:|", "--midi-tempo", "60");
    assertThat(midi.tempi()).containsExactly(1_000_000, 2_000_000, 1_000_000, 2_000_000);
    assertThat(midi.heard(0).get(4).start()).isCloseTo(12, within(0.002));
    assertThat(midi.heard(0).get(7).end()).isCloseTo(21, within(0.002));
  }

  @Test
  void existingFileIsKept() throws Exception {
    Path file = Files.writeString(folder.resolve("mine.mid"), "mine");
    practice(TUNE + "G A B|", file).refused(2);
    assertThat(Files.readString(file)).isEqualTo("mine");
    assertThat(
            Session.of(
                    "practice",
                    Session.DEMO,
                    "--from",
                    "60",
                    "--to",
                    "96",
                    "--by",
                    "2026-12-12",
                    "--midi-tempo",
                    "60")
                .refused(2)
                .err())
        .contains("--midi-tempo needs a file");
  }
}
