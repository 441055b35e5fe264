package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Spot;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Pitch;

/** Notes below the lowest string and beyond the fingerboard. */
public final class RangeRule implements CheckRule {
  private final CheckLevel level;
  private final Instruments instruments;

  public RangeRule(CheckLevel level, Instruments instruments) {
    this.level = level;
    this.instruments = instruments;
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
          out(music, moment, note, findings);
        }
      }
    }
  }

  private void out(PartMusic music, Moment moment, Note note, Findings findings) {
    Instrument instrument = music.instrument();
    boolean low = note.midi() < instrument.lowest().midi();
    int off = low ? instrument.lowest().midi() - note.midi() : note.midi();
    boolean extended = low && extension(instrument, note);
    Severity severity =
        extended && level.yes(Threshold.BASS_TO_LOW_C) ? Severity.RISKY : Severity.UNPLAYABLE;
    findings.add(
        low && strungHigher(instrument, note)
            ? FindingKind.SCORDATURA_CONFLICT
            : FindingKind.OUT_OF_RANGE,
        Together.IN_A_MEASURE,
        moment.place(),
        new Spot(
            severity,
            off,
            ImmutableList.of(note),
            () -> low ? below(instrument, note, extended) : above(instrument, note)));
  }

  /** Whether the instrument has the note as it is usually strung. */
  private boolean strungHigher(Instrument instrument, Note note) {
    return note.midi() >= instruments.named(instrument.id()).lowest().midi();
  }

  /** Whether a fifth string or an extension of the bass has it. */
  private boolean extension(Instrument instrument, Note note) {
    return instruments.tunings(instrument).stream()
        .flatMap(tuning -> tuning.strings().stream())
        .anyMatch(
            string -> instrument.id().equals("bass") && string.lowest().midi() <= note.midi());
  }

  private Words below(Instrument instrument, Note note, boolean extended) {
    String why =
        "%s lies below the lowest string of the %s, %s"
            .formatted(
                note.written().display(),
                instrument.spoken(),
                written(instrument, instrument.lowest()));
    return new Words(
        why,
        extended
            ? "Only basses with a fifth string or an extension have it: write it an octave higher"
                + " for the others, as small notes."
            : "Write it an octave higher, or give it to a lower instrument.");
  }

  private static Words above(Instrument instrument, Note note) {
    return new Words(
        "%s lies beyond the end of the %s's fingerboard"
            .formatted(note.written().display(), instrument.spoken()),
        "Write it an octave lower, or give it to a higher instrument.");
  }

  /** A sounding pitch as the instrument's parts write it. */
  static String written(Instrument instrument, Pitch sounding) {
    return sounding.plusOctaves(-instrument.writtenOctaves()).display();
  }
}
