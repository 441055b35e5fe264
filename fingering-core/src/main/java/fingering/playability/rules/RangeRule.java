package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
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
import fingering.tables.Instruments;
import fingering.tables.Pitch;

/** Finds notes below the lowest string or beyond the fingerboard. */
public final class RangeRule implements CheckRule {
  private final CheckLevel level;
  private final Instruments instruments;
  private final OctaveMove move;

  /**
   * Creates the rule for a level.
   *
   * @param instruments the instruments with their tunings
   */
  public RangeRule(CheckLevel level, Instruments instruments) {
    this.level = level;
    this.instruments = instruments;
    move = new OctaveMove(level);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 0; m < music.moments().size(); m++) {
      Moment moment = music.moments().get(m);
      int left = music.playable().get(m).map(kept -> kept.starting().size()).orElse(0);
      if (left == moment.starting().size()) {
        continue;
      }
      for (Note note : moment.starting()) {
        if (music.playable().get(m).map(kept -> !kept.starting().contains(note)).orElse(true)) {
          outOfRange(music, moment, note, findings);
        }
      }
    }
  }

  private void outOfRange(PartMusic music, Moment moment, Note note, Findings findings) {
    Instrument instrument = music.instrument();
    boolean low = note.midi() < instrument.lowest().midi();
    int distance = low ? instrument.lowest().midi() - note.midi() : note.midi();
    boolean extended = low && extension(instrument, note);
    Severity severity =
        extended && level.yes(Threshold.BASS_TO_LOW_C) ? Severity.RISKY : Severity.UNPLAYABLE;
    findings.add(
        low && standardTuningHas(instrument, note)
            ? FindingKind.SCORDATURA_CONFLICT
            : FindingKind.OUT_OF_RANGE,
        Merge.IN_A_MEASURE,
        moment.place(),
        new Spot(
            severity,
            distance,
            ImmutableList.of(note),
            () ->
                low
                    ? below(music, moment, note, extended)
                    : new Message(
                        note.written().display()
                            + " is beyond the end of the %s fingerboard"
                                .formatted(instrument.nameInSentence()),
                        moved(music, moment, note, true))));
  }

  /** Returns whether the instrument has the note in its standard tuning. */
  private boolean standardTuningHas(Instrument instrument, Note note) {
    return note.midi() >= instruments.named(instrument.id()).lowest().midi();
  }

  /** Returns whether a bass with a fifth string or a C extension has the note. */
  private boolean extension(Instrument instrument, Note note) {
    return instruments.tunings(instrument).stream()
        .flatMap(tuning -> tuning.strings().stream())
        .anyMatch(
            string -> instrument.id().equals("bass") && string.lowest().midi() <= note.midi());
  }

  private Message below(PartMusic music, Moment moment, Note note, boolean extended) {
    Instrument instrument = music.instrument();
    String reason =
        "%s is below the lowest string of the %s, %s"
            .formatted(
                note.written().display(),
                instrument.nameInSentence(),
                written(instrument, instrument.lowest()));
    return new Message(
        reason,
        !extended
            ? moved(music, moment, note, false)
            : level.yes(Threshold.BASS_TO_LOW_C)
                ? "Only basses with a fifth string or a C extension have it: add the upper octave"
                    + " in small notes for the others."
                : "Only basses with a fifth string or a C extension have it: write it an octave"
                    + " higher.");
  }

  private String moved(PartMusic music, Moment moment, Note note, boolean high) {
    String other = "to a " + (high ? "higher" : "lower") + " instrument.";
    return move.words(music, moment, note, !high)
        .map(octaves -> "Write it " + octaves + ", or give it " + other)
        .orElse("Give it " + other);
  }

  /** Returns a sounding pitch as written in the instrument's parts. */
  static String written(Instrument instrument, Pitch sounding) {
    return sounding.plusOctaves(-instrument.writtenOctaves()).display();
  }
}
