package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PrintedNote.Tremolo.Role;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLines;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Double stops and chords: what hand and bow can take at once, and what the level has learned. */
public final class ChordRule implements CheckRule {
  private static final int BOWED_AT_ONCE = 2;
  private static final double MICROS = 1e6;

  private final int strings;
  private final int stopped;
  private final double held;
  private final Severity undivided;

  public ChordRule(CheckLevel level) {
    strings = level.number(Threshold.STRINGS_AT_ONCE);
    stopped = level.number(Threshold.STOPPED_AT_ONCE);
    held = level.seconds(Threshold.CHORD_HELD) * MICROS;
    undivided = level.severity(Threshold.UNDIVIDED_CHORD);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 0; m < music.moments().size(); m++) {
      Optional<Moment> moment = music.playable().get(m);
      if (moment.isEmpty()
          || moment.get().starting().size() + moment.get().held().size() < 2
          || music.players().divides(m)) {
        continue;
      }
      chord(music, m, moment.get(), music.ways().get(m), findings);
    }
  }

  private void chord(
      PartMusic music, int m, Moment moment, ImmutableList<Grip> ways, Findings findings) {
    boolean canDivide = music.players().canDivide(m);
    if (ways.get(0).divided()) {
      noHand(music, moment, canDivide, findings);
      return;
    }
    if (ways.get(0).placements().size() < moment.starting().size() + moment.held().size()) {
      findings.add(
          FindingKind.HELD_NOTE_LET_GO,
          Together.IN_A_PASSAGE,
          Severity.WORTH_KNOWING,
          moment.held().size(),
          moment,
          () -> letGo(moment, canDivide));
      return;
    }
    int together = ways.get(0).placements().size();
    int fingers = least(ways);
    if (together > strings || fingers > stopped) {
      findings.add(
          FindingKind.DOUBLE_STOP_BEYOND_LEVEL,
          Together.IN_A_SECTION,
          Severity.RISKY,
          together + fingers,
          moment,
          () -> beyond(moment, together, fingers, canDivide));
    }
    if (canDivide) {
      findings.add(
          FindingKind.DIVISI_NOT_MARKED,
          Together.IN_A_SECTION,
          undivided,
          together,
          moment,
          () -> unmarked(moment));
    } else if (moment.starting().size() > BOWED_AT_ONCE
        && !moment.pizzicato()
        && moment.soundMicros() > held
        && !music.prints().tremolo(moment.starting(), Role.ALONE)) {
      findings.add(
          FindingKind.CHORD_NOT_HELD,
          Together.IN_A_PASSAGE,
          Severity.WORTH_KNOWING,
          moment.soundMicros() / MICROS,
          moment,
          () -> notHeld(moment));
    }
  }

  private void noHand(PartMusic music, Moment moment, boolean canDivide, Findings findings) {
    Severity severity =
        canDivide
            ? undivided
            : !onStrings(music.instrument(), moment)
                ? Severity.UNPLAYABLE
                : broken(music, moment) ? Severity.WORTH_KNOWING : Severity.RISKY;
    findings.add(
        FindingKind.CHORD_NO_HAND,
        Together.IN_A_MEASURE,
        severity,
        moment.starting().size(),
        moment,
        () -> noHand(music, moment, canDivide));
  }

  private static Words noHand(PartMusic music, Moment moment, boolean canDivide) {
    Instrument instrument = music.instrument();
    String notes = NoteText.of(moment);
    String reason =
        moment.starting().size() > instrument.strings().size()
            ? "%s has more notes than the %s has strings".formatted(notes, instrument.spoken())
            : onStrings(instrument, moment)
                ? (broken(music, moment)
                        ? "The hand has to move within %s on the %s, so that it can only be broken"
                        : "%s is out of one hand's reach on the %s")
                    .formatted(notes, instrument.spoken())
                : "%s needs one string of the %s for two notes"
                    .formatted(notes, instrument.spoken());
    String way =
        canDivide
            ? "Write 'div.' over it."
            : without(music, moment)
                .map(note -> "Leave " + note.written().display() + " out.")
                .orElse("Spread the notes, or give some of them to another player.");
    return new Words(reason, way);
  }

  /** Whether a hand that moves can play a chord one pair of notes after the other, as bows do. */
  private static boolean broken(PartMusic music, Moment moment) {
    ImmutableList<Note> notes = moment.starting();
    for (int i = 1; i < notes.size(); i++) {
      ImmutableList<Note> pair = notes.subList(i - 1, i + 1);
      if (music.grips().apply(PlayerLines.with(moment, pair)).get(0).divided()) {
        return false;
      }
    }
    return notes.size() > BOWED_AT_ONCE && !moment.grace();
  }

  /** A note without which a hand can take the rest. */
  private static Optional<Note> without(PartMusic music, Moment moment) {
    List<Note> notes = moment.starting();
    // The outer notes are heard most.
    for (int i = 1; i <= notes.size(); i++) {
      Note left = notes.get(i % notes.size());
      ImmutableList<Note> rest =
          notes.stream()
              .filter(note -> !note.equals(left))
              .collect(ImmutableList.toImmutableList());
      if (!music.grips().apply(PlayerLines.with(moment, rest)).get(0).divided()) {
        return Optional.of(left);
      }
    }
    return Optional.empty();
  }

  /** Whether each note can have a string of its own, however far the hand would have to reach. */
  private static boolean onStrings(Instrument instrument, Moment moment) {
    List<Integer> free = new ArrayList<>();
    for (OpenString string : instrument.strings()) {
      free.add(string.lowest().midi());
    }
    // From the highest note down, each takes the highest string that is low enough.
    for (Note note : moment.starting().reverse()) {
      Optional<Integer> string = free.stream().filter(open -> open <= note.midi()).findFirst();
      if (string.isEmpty()) {
        return false;
      }
      free.remove(string.get());
    }
    return true;
  }

  /** The fewest fingers that one of the grips asks for; a finger across two strings is one. */
  private static int least(ImmutableList<Grip> ways) {
    int least = Integer.MAX_VALUE;
    for (Grip grip : ways) {
      int fingers = 0;
      for (Placement placement : grip.placements()) {
        fingers += placement.open() ? 0 : 1;
      }
      least = Math.min(least, fingers);
    }
    return least;
  }

  private static Words letGo(Moment moment, boolean canDivide) {
    return new Words(
        "%s cannot be held on under %s by one hand"
            .formatted(NoteText.of(moment.held()), NoteText.of(moment)),
        canDivide ? "Write 'div.' over it." : "Write it shorter.");
  }

  private static Words beyond(Moment moment, int together, int fingers, boolean canDivide) {
    String what =
        fingers == 0
            ? together + " open strings together"
            : together == fingers
                ? together + " stopped strings together"
                : together + " strings together, " + fingers + " of them stopped";
    return new Words(
        "%s takes %s, which the level has not learned"
            .formatted(NoteText.of(moment.sounding()), what),
        canDivide ? "Write 'div.' over it." : "Keep one of the notes, or one and an open string.");
  }

  private static Words unmarked(Moment moment) {
    return new Words(
        "%s can be divided or played by each, and the part does not say which"
            .formatted(NoteText.of(moment.sounding())),
        "Write 'div.' or 'non div.' over it.");
  }

  private static Words notHeld(Moment moment) {
    return new Words(
        "Of %s a bow holds two notes for %.1f s, and the others are only touched"
            .formatted(NoteText.of(moment), moment.soundMicros() / MICROS),
        "Show by shorter notes which two are held.");
  }
}
