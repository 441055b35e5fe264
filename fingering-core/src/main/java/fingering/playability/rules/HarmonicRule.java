package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.music.Harmonic;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.playability.rules.Findings.Spot;
import fingering.tables.Instrument;
import java.util.Optional;

/**
 * Finds harmonics that no string has, and kinds of harmonics that players at the level have not
 * learned.
 */
public final class HarmonicRule implements CheckRule {
  private final boolean natural;
  private final boolean artificial;

  /** Creates the rule for a level. */
  public HarmonicRule(CheckLevel level) {
    natural = level.yes(Threshold.NATURAL_HARMONICS);
    artificial = level.yes(Threshold.ARTIFICIAL_HARMONICS);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 0; m < music.moments().size(); m++) {
      Optional<Moment> playable = music.playable().get(m);
      if (playable.isEmpty()) {
        continue;
      }
      for (Note note : playable.get().starting()) {
        if (note.marks().harmonic().isPresent() && !open(music.instrument(), note)) {
          harmonic(playable.get(), note, music.grips().get(m), findings);
        }
      }
    }
  }

  /** Returns whether a note is an open string: a circle above one only says that it is open. */
  private static boolean open(Instrument instrument, Note note) {
    return instrument.strings().stream().anyMatch(s -> s.pitch().midi() == note.midi());
  }

  private void harmonic(Moment moment, Note note, ImmutableList<Grip> grips, Findings findings) {
    boolean touched = false;
    boolean byOneFinger = false;
    for (Grip grip : grips) {
      int at = grip.notes(moment).indexOf(note);
      Placement placement = grip.placements().get(at);
      touched |= placement.touch().isPresent();
      byOneFinger |=
          placement.touch().map(touch -> touch.finger() == placement.finger()).orElse(false);
    }
    Harmonic how = note.marks().harmonic().orElseThrow();
    if (!touched) {
      boolean alone = moment.starting().size() == 1 && moment.held().isEmpty();
      Severity severity = alone && how.touched().isPresent() ? Severity.UNPLAYABLE : Severity.RISKY;
      findings.add(
          FindingKind.HARMONIC_NOT_THERE,
          Merge.IN_A_SECTION,
          moment.place(),
          spot(severity, note, noSuchHarmonic(note, how)));
    } else if (byOneFinger ? !natural : !artificial) {
      findings.add(
          FindingKind.HARMONIC_BEYOND_LEVEL,
          Merge.IN_A_SECTION,
          moment.place(),
          spot(Severity.RISKY, note, notLearned(note, byOneFinger)));
    }
  }

  private static Spot spot(Severity severity, Note note, Message message) {
    return new Spot(severity, note.midi(), ImmutableList.of(note), () -> message);
  }

  private static Message notLearned(Note note, boolean natural) {
    return new Message(
        "%s is %s harmonic, which players at this level have not learned"
            .formatted(note.sounding().display(), natural ? "a natural" : "an artificial"),
        "Write an ordinary note, or give the harmonic to players who know it.");
  }

  private static Message noSuchHarmonic(Note note, Harmonic how) {
    String where =
        how.touched()
            .map(
                touched ->
                    how.stopped()
                        .map(
                            stopped ->
                                "touching %s above %s gives no harmonic that a hand can reach"
                                    .formatted(touched.display(), stopped.display()))
                        .orElse("no open string has a harmonic at " + touched.display()))
            .orElse("no open string has it, and no hand can reach it as an artificial harmonic");
    return new Message(
        "%s cannot be played as a harmonic: %s".formatted(note.sounding().display(), where),
        "Stop the note two octaves lower and touch a fourth above it, or remove the sign.");
  }
}
