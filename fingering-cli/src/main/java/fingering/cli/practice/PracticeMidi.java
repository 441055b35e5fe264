package fingering.cli.practice;

import fingering.cli.text.HeadingText;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.music.print.PrintedPart;
import fingering.practice.NoteTimes;
import fingering.practice.NoteTimes.Click.Kind;
import fingering.tables.Instrument;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/**
 * A passage as a Standard MIDI File with a metronome, to play along with: tempi in the first track,
 * notes in the second, clicks in the third, on the channel of the percussion (Standard MIDI Files
 * 1.0; sounds of General MIDI 1; from memory).
 */
public final class PracticeMidi {
  /** Ticks of a quarter note. */
  private static final int QUARTER = 960;

  private static final double MINUTE = 60e6;
  private static final int TEMPO = 0x51;
  private static final int NAME = 0x03;

  /** The slowest tempo of a file: three bytes of microseconds. */
  private static final int SLOWEST = 0xFFFFFF;

  private static final int CLICK_CHANNEL = 9;
  private static final int HIGH_WOOD_BLOCK = 76;
  private static final int LOW_WOOD_BLOCK = 77;
  private static final int PIZZICATO = 45;
  private static final int NOTE_LOUD = 80;
  private static final int CLICK_LOUD = 110;
  private static final int CLICK_SOFT = 80;
  private static final int CLICK_TICKS = QUARTER / 16;

  /** One event: its tick, and 0 for what ends, 1 for changes, 2 for what begins. */
  private record Timed(long tick, int order, MidiMessage message) {}

  private final NoteTimes times;
  private final List<Long> tempoTicks = new ArrayList<>();

  private PracticeMidi(NoteTimes times) {
    this.times = times;
    long tick = 0;
    for (int i = 0; i < times.tempi().size(); i++) {
      if (i > 0) {
        NoteTimes.Change before = times.tempi().get(i - 1);
        tick += ticks(times.tempi().get(i).start() - before.start(), before.tempo());
      }
      tempoTicks.add(tick);
    }
  }

  /**
   * The passage at a tempo, with its repeats, as the bytes of a file.
   *
   * @param printed what is printed in it
   */
  public static byte[] of(Passage passage, PrintedPart printed, Tempo tempo) {
    try {
      return new PracticeMidi(NoteTimes.of(passage, printed, tempo)).bytes(passage);
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException("a MIDI message out of range", e);
    } catch (IOException e) {
      throw new UncheckedIOException("a MIDI file in memory cannot be written", e);
    }
  }

  private byte[] bytes(Passage passage) throws InvalidMidiDataException, IOException {
    Sequence sequence = new Sequence(Sequence.PPQ, QUARTER);
    List<Timed> tempi = new ArrayList<>();
    tempi.add(new Timed(0, 0, text(HeadingText.title(passage))));
    for (int i = 0; i < times.tempi().size(); i++) {
      tempi.add(new Timed(tempoTicks.get(i), 1, tempo(times.tempi().get(i).tempo())));
    }
    add(sequence.createTrack(), tempi);
    add(sequence.createTrack(), notes(passage));
    add(sequence.createTrack(), clicks());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    MidiSystem.write(sequence, 1, bytes);
    return bytes.toByteArray();
  }

  private List<Timed> notes(Passage passage) throws InvalidMidiDataException {
    List<Timed> notes = new ArrayList<>();
    notes.add(new Timed(0, 0, text(passage.partName())));
    int program = -1;
    for (NoteTimes.Sound sound : times.sounds()) {
      long from = tick(sound.start());
      int next = sound.pizzicato() ? PIZZICATO : bowed(passage.instrument());
      if (next != program) {
        notes.add(new Timed(from, 1, new ShortMessage(ShortMessage.PROGRAM_CHANGE, 0, next, 0)));
        program = next;
      }
      long to = Math.max(from + 1, tick(sound.start() + sound.length()));
      note(notes, from, to, 0, sound.note().midi(), NOTE_LOUD);
    }
    return notes;
  }

  private List<Timed> clicks() throws InvalidMidiDataException {
    List<Timed> clicks = new ArrayList<>();
    clicks.add(new Timed(0, 0, text("Metronome")));
    for (NoteTimes.Click click : times.clicks()) {
      if (click.kind() == Kind.SUBDIVISION) {
        continue;
      }
      boolean first = click.kind() == Kind.FIRST;
      long from = tick(click.start());
      note(
          clicks,
          from,
          from + CLICK_TICKS,
          CLICK_CHANNEL,
          first ? HIGH_WOOD_BLOCK : LOW_WOOD_BLOCK,
          first ? CLICK_LOUD : CLICK_SOFT);
    }
    return clicks;
  }

  private static void note(List<Timed> events, long from, long to, int channel, int key, int loud)
      throws InvalidMidiDataException {
    events.add(new Timed(from, 2, new ShortMessage(ShortMessage.NOTE_ON, channel, key, loud)));
    events.add(new Timed(to, 0, new ShortMessage(ShortMessage.NOTE_OFF, channel, key, 0)));
  }

  /** The sound of the instrument: violin, viola, cello and double bass follow one another. */
  private static int bowed(Instrument instrument) {
    return switch (instrument.kind()) {
      case VIOLIN -> instrument.id().equals("viola") ? 41 : 40;
      case CELLO -> 42;
      case BASS -> 43;
    };
  }

  private static MetaMessage text(String text) throws InvalidMidiDataException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new MetaMessage(NAME, bytes, bytes.length);
  }

  private static MetaMessage tempo(Tempo tempo) throws InvalidMidiDataException {
    int micros =
        (int) Math.min(SLOWEST, Math.round(MINUTE / tempo.quartersPerMinute().doubleValue()));
    byte[] bytes = {(byte) (micros >> 16), (byte) (micros >> 8), (byte) micros};
    return new MetaMessage(TEMPO, bytes, bytes.length);
  }

  private static void add(Track track, List<Timed> events) {
    events.sort(Comparator.comparingLong(Timed::tick).thenComparingInt(Timed::order));
    events.forEach(event -> track.add(new MidiEvent(event.message(), event.tick())));
  }

  private long tick(long micros) {
    int tempo = times.tempi().size() - 1;
    while (tempo > 0 && times.tempi().get(tempo).start() > micros) {
      tempo--;
    }
    NoteTimes.Change change = times.tempi().get(tempo);
    return tempoTicks.get(tempo) + ticks(micros - change.start(), change.tempo());
  }

  private static long ticks(long micros, Tempo tempo) {
    return Math.round(micros / MINUTE * tempo.quartersPerMinute().doubleValue() * QUARTER);
  }
}
