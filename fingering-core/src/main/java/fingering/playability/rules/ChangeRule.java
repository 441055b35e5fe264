package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.print.PrintedText;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.PartMusic;
import fingering.playability.part.ScoreWords;
import fingering.playability.part.TextPlaces;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.playability.rules.Findings.Spot;
import fingering.tables.Tuning;
import java.util.Locale;

/**
 * Finds places with too little time to change between bow and pizzicato, for a mute, for another
 * instrument or for another tuning.
 */
public final class ChangeRule implements CheckRule {
  private static final double MICROS = 1e6;

  /** The share of a bowed note that may be cut before pizzicato (common practice, no source). */
  private static final double CUT = 0.25;

  /** The most seconds of a bowed note that may be cut before pizzicato. */
  private static final double MOST_CUT = 0.3;

  /** The share of the time needed that is still accepted (common practice, no source). */
  private static final double TOLERANCE = 0.9;

  /** Seconds below which there is no time at all. */
  private static final double NO_TIME = 0.02;

  /** Seconds to pluck (common practice, no source). */
  private static final double PLUCK = 0.1;

  private final CheckLevel level;
  private final double toPizzicato;
  private final double toArco;

  /** Creates the rule for a level. */
  public ChangeRule(CheckLevel level) {
    this.level = level;
    toPizzicato = level.seconds(Threshold.TO_PIZZICATO);
    toArco = level.seconds(Threshold.TO_ARCO);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 1; m < music.moments().size(); m++) {
      Moment moment = music.moment(m);
      if (moment.pizzicato() != music.moment(m - 1).pizzicato() && !music.movementStarts().get(m)) {
        pizzicatoChange(music, m, findings);
      }
    }
    boolean muted = false;
    for (PrintedText text : music.texts()) {
      ImmutableSet<ScoreWords.Kind> meanings = music.meanings(text);
      if (meanings.contains(ScoreWords.Kind.INSTRUMENT)) {
        change(music, text, FindingKind.CHANGE_OF_INSTRUMENT, Threshold.NEW_INSTRUMENT, findings);
      }
      if (meanings.contains(ScoreWords.Kind.TUNING)) {
        change(music, text, FindingKind.CHANGE_OF_TUNING, Threshold.TUNE_A_STRING, findings);
        tuning(music, text, findings);
      }
      boolean drawn = text.kind() == PrintedText.Kind.MUTE;
      boolean off =
          meanings.contains(ScoreWords.Kind.MUTE_OFF) || (drawn && text.text().endsWith("off"));
      boolean on = !off && (meanings.contains(ScoreWords.Kind.MUTE_ON) || drawn);
      if (on && !muted) {
        change(music, text, FindingKind.CHANGE_OF_MUTE, Threshold.MUTE_ON, findings);
      } else if (off && muted) {
        change(music, text, FindingKind.CHANGE_OF_MUTE, Threshold.MUTE_OFF, findings);
      }
      muted = (muted || on) && !off;
    }
  }

  private void pizzicatoChange(PartMusic music, int m, Findings findings) {
    Moment before = music.moment(m - 1);
    Moment moment = music.moment(m);
    boolean toPluck = moment.pizzicato();
    double since = (moment.startMicros() - before.startMicros()) / MICROS;
    double sounds = Math.min(since, before.soundMicros() / MICROS);
    // A plucked note rings on while the hand takes up the bow.
    double free =
        toPluck ? since - sounds + Math.min(MOST_CUT, CUT * sounds) : Math.max(0, since - PLUCK);
    double needed = toPluck ? toPizzicato : toArco;
    if (free < needed * TOLERANCE && !plucksByLeftHand(toPluck ? moment : before)) {
      findings.add(
          toPluck ? FindingKind.CHANGE_TO_PIZZICATO : FindingKind.CHANGE_TO_ARCO,
          Merge.IN_A_PASSAGE,
          free < needed / 2 ? Severity.RISKY : Severity.WORTH_KNOWING,
          needed - free,
          moment,
          () ->
              message(
                  music,
                  toPluck ? "The change to pizzicato" : "The change back to the bow",
                  needed,
                  free));
    }
  }

  private static boolean plucksByLeftHand(Moment moment) {
    return moment.starting().stream().anyMatch(note -> note.marks().leftPlucked());
  }

  /** Reports words that ask for another tuning if the notes were checked in the standard one. */
  private static void tuning(PartMusic music, PrintedText text, Findings findings) {
    if (music.instrument().tuning().equals(Tuning.STANDARD)) {
      findings.add(
          FindingKind.SCORDATURA_CONFLICT,
          Merge.NEVER,
          text.place(),
          new Spot(
              Severity.WORTH_KNOWING,
              0,
              ImmutableList.of(),
              () ->
                  new Message(
                      "'%s' asks for another tuning, but the part was checked in the standard one"
                          .formatted(text.text()),
                      "Check it again in that tuning.")));
    }
  }

  private void change(
      PartMusic music, PrintedText text, FindingKind kind, Threshold threshold, Findings findings) {
    int m = TextPlaces.momentAt(music.moments(), text);
    if (m == music.moments().size() || music.movementStarts().get(m)) {
      return;
    }
    Moment moment = music.moment(m);
    double needed = level.seconds(threshold);
    double free = moment.restMicros() / MICROS;
    if (free < needed * TOLERANCE) {
      findings.add(
          kind,
          Merge.NEVER,
          free < needed / 2 ? Severity.RISKY : Severity.WORTH_KNOWING,
          needed - free,
          moment,
          () -> message(music, "'" + text.text() + "'", needed, free));
    }
  }

  private static String seconds(double seconds) {
    return String.format(Locale.ROOT, seconds < 1 ? "%.2f s" : "%.1f s", seconds);
  }

  private static Message message(PartMusic music, String change, double needed, double free) {
    return new Message(
        String.format(
            Locale.ROOT,
            "%s takes %s, but there is %s",
            change,
            seconds(needed),
            free < NO_TIME ? "no time at all" : "only " + seconds(free)),
        music.section()
            ? "Write a longer rest before it, or let the section change desk by desk."
            : "Write a longer rest before it.");
  }
}
