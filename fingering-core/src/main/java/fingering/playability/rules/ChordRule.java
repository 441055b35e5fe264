package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.print.PrintedNote.Tremolo.Role;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLines;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.tables.Instrument;
import fingering.tables.OpenString;
import fingering.tables.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds double stops and chords that are unplayable, or that players at the level have not learned.
 */
public final class ChordRule implements CheckRule {
  private static final int BOWED_AT_ONCE = 2;
  private static final double MICROS = 1e6;
  private static final String DIVIDE = "Write 'div.' above it.";

  private final CheckLevel level;
  private final int mostStrings;
  private final int mostStopped;
  private final double longestMicros;
  private final Severity undivided;

  /** Creates the rule for a level. */
  public ChordRule(CheckLevel level) {
    this.level = level;
    mostStrings = level.number(Threshold.STRINGS_AT_ONCE);
    mostStopped = level.number(Threshold.STOPPED_AT_ONCE);
    longestMicros = level.seconds(Threshold.CHORD_HELD) * MICROS;
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
      chord(music, m, moment.get(), music.grips().get(m), findings);
    }
  }

  private void chord(
      PartMusic music, int m, Moment moment, ImmutableList<Grip> grips, Findings findings) {
    boolean canDivide = music.players().canDivide(m);
    if (grips.get(0).divided()) {
      outOfReach(music, moment, canDivide, findings);
      return;
    }
    if (grips.get(0).placements().size() < moment.starting().size() + moment.held().size()) {
      findings.add(
          FindingKind.HELD_NOTE_LET_GO,
          Merge.IN_A_PASSAGE,
          Severity.WORTH_KNOWING,
          moment.held().size(),
          moment,
          () -> heldNoteCutShort(moment, canDivide));
      return;
    }
    int strings = grips.get(0).placements().size();
    int fingers = fewestFingers(grips);
    boolean beyondLevel = strings > mostStrings || fingers > mostStopped;
    if (beyondLevel) {
      findings.add(
          FindingKind.DOUBLE_STOP_BEYOND_LEVEL,
          Merge.IN_A_SECTION,
          Severity.RISKY,
          strings + fingers,
          moment,
          () -> beyondLevel(moment, strings, fingers, canDivide));
    }
    if (canDivide && !beyondLevel && inPosition(music.instrument(), grips)) {
      findings.add(
          FindingKind.DIVISI_NOT_MARKED,
          Merge.IN_A_SECTION,
          undivided,
          strings,
          moment,
          () -> divisiNotMarked(moment));
    } else if (!canDivide
        && moment.starting().size() > BOWED_AT_ONCE
        && !moment.pizzicato()
        && moment.soundMicros() > longestMicros
        && !music.prints().tremolo(moment.starting(), Role.ALONE)) {
      findings.add(
          FindingKind.CHORD_NOT_HELD,
          Merge.IN_A_PASSAGE,
          Severity.WORTH_KNOWING,
          moment.soundMicros() / MICROS,
          moment,
          () -> notSustained(moment));
    }
  }

  private boolean inPosition(Instrument instrument, ImmutableList<Grip> grips) {
    Position highest = level.highest(instrument);
    return grips.stream().anyMatch(grip -> grip.frame().position().compareTo(highest) <= 0);
  }

  private void outOfReach(PartMusic music, Moment moment, boolean canDivide, Findings findings) {
    Severity severity =
        canDivide
            ? undivided
            : !onStrings(music.instrument(), moment)
                ? Severity.UNPLAYABLE
                : broken(music, moment) ? Severity.WORTH_KNOWING : Severity.RISKY;
    findings.add(
        FindingKind.CHORD_NO_HAND,
        Merge.IN_A_MEASURE,
        severity,
        moment.starting().size(),
        moment,
        () -> outOfReach(music, moment, canDivide));
  }

  private static Message outOfReach(PartMusic music, Moment moment, boolean canDivide) {
    Instrument instrument = music.instrument();
    String notes = NoteText.of(moment);
    String reason =
        moment.starting().size() > instrument.strings().size()
            ? "%s has more notes than the %s has strings"
                .formatted(notes, instrument.nameInSentence())
            : onStrings(instrument, moment)
                ? (broken(music, moment)
                        ? "%s can only be broken on the %s, because the hand has to move within it"
                        : "%s is beyond the reach of one hand on the %s")
                    .formatted(notes, instrument.nameInSentence())
                : "%s notes of %s need the same string of the %s"
                    .formatted(
                        moment.starting().size() == 2 ? "Both" : "Two",
                        notes,
                        instrument.nameInSentence());
    String fix =
        canDivide
            ? DIVIDE
            : noteToOmit(music, moment)
                .map(note -> "Leave out " + note.written().display() + ".")
                .orElse("Write the notes one after another, or give some to another player.");
    return new Message(reason, fix);
  }

  /** Returns whether a moving hand can play a chord broken, one pair of notes after the other. */
  private static boolean broken(PartMusic music, Moment moment) {
    ImmutableList<Note> notes = moment.starting();
    for (int i = 1; i < notes.size(); i++) {
      ImmutableList<Note> pair = notes.subList(i - 1, i + 1);
      if (music.gripFinder().apply(PlayerLines.with(moment, pair)).get(0).divided()) {
        return false;
      }
    }
    return notes.size() > BOWED_AT_ONCE && !moment.grace();
  }

  /** Returns a note without which one hand can play the rest, an inner one if possible. */
  private static Optional<Note> noteToOmit(PartMusic music, Moment moment) {
    List<Note> notes = moment.starting();
    // The outer notes are heard most: try the inner ones first.
    for (int i = 1; i <= notes.size(); i++) {
      Note left = notes.get(i % notes.size());
      ImmutableList<Note> rest =
          notes.stream()
              .filter(note -> !note.equals(left))
              .collect(ImmutableList.toImmutableList());
      if (!music.gripFinder().apply(PlayerLines.with(moment, rest)).get(0).divided()) {
        return Optional.of(left);
      }
    }
    return Optional.empty();
  }

  /** Returns whether each note can have its own string, regardless of the reach of the hand. */
  private static boolean onStrings(Instrument instrument, Moment moment) {
    List<Integer> free = new ArrayList<>();
    for (OpenString string : instrument.strings()) {
      free.add(string.lowest().midi());
    }
    // From the highest note down, assign the highest free string that is low enough.
    for (Note note : moment.starting().reverse()) {
      Optional<Integer> string = free.stream().filter(open -> open <= note.midi()).findFirst();
      if (string.isEmpty()) {
        return false;
      }
      free.remove(string.get());
    }
    return true;
  }

  /** Returns the fewest stopped strings in any of the grips. */
  private static int fewestFingers(ImmutableList<Grip> grips) {
    int least = Integer.MAX_VALUE;
    for (Grip grip : grips) {
      int fingers = 0;
      for (Placement placement : grip.placements()) {
        fingers += placement.open() ? 0 : 1;
      }
      least = Math.min(least, fingers);
    }
    return least;
  }

  private static Message heldNoteCutShort(Moment moment, boolean canDivide) {
    return new Message(
        "One hand cannot hold %s while it plays %s"
            .formatted(NoteText.of(moment.held()), NoteText.of(moment)),
        canDivide ? DIVIDE : "Shorten the held note.");
  }

  private static Message beyondLevel(Moment moment, int strings, int fingers, boolean canDivide) {
    String what =
        fingers == 0
            ? strings + " open strings at once"
            : strings == fingers
                ? strings + " stopped strings at once"
                : strings + " strings at once, " + fingers + " of them stopped";
    return new Message(
        "%s needs %s, which players at this level have not learned"
            .formatted(NoteText.of(moment.sounding()), what),
        canDivide ? DIVIDE : "Keep one note, or one note with an open string.");
  }

  private static Message divisiNotMarked(Moment moment) {
    return new Message(
        "The part does not say whether to divide %s or to play double stops"
            .formatted(NoteText.of(moment.sounding())),
        "Write 'div.' or 'non div.' above it.");
  }

  private static Message notSustained(Moment moment) {
    return new Message(
        "The bow can sustain only two notes of %s for %.1f s"
            .formatted(NoteText.of(moment), moment.soundMicros() / MICROS),
        "Shorten the notes that are not to be sustained.");
  }
}
