package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import fingering.music.Moment;
import fingering.music.PrintedText;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.PartMusic;
import fingering.playability.part.ScoreWords;
import fingering.playability.part.TextPlaces;
import fingering.playability.rules.Findings.Spot;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Tuning;
import java.util.Locale;

/** Time to go from bow to pluck and back, for mutes, other instruments and other tunings. */
public final class ChangeRule implements CheckRule {
  private static final double MICROS = 1e6;

  /** Of a bowed note a player may give up so much for what follows (common practice, no source). */
  private static final double GIVEN_UP = 0.25;

  /** ... but no more than this, in seconds. */
  private static final double GIVEN_UP_MOST = 0.3;

  /** So much of the time needed is enough; nobody measures finer (common practice, no source). */
  private static final double NEARLY = 0.9;

  /** Less time than this is none, in seconds. */
  private static final double NOTHING = 0.02;

  /** To pluck takes this, in seconds (common practice, no source). */
  private static final double PLUCK = 0.1;

  private final CheckLevel level;
  private final double toPizzicato;
  private final double toArco;

  public ChangeRule(CheckLevel level) {
    this.level = level;
    toPizzicato = level.seconds(Threshold.TO_PIZZICATO);
    toArco = level.seconds(Threshold.TO_ARCO);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 1; m < music.moments().size(); m++) {
      Moment moment = music.moment(m);
      if (moment.pizzicato() != music.moment(m - 1).pizzicato() && !music.movements().get(m)) {
        plucking(music, m, findings);
      }
    }
    boolean muted = false;
    for (PrintedText text : music.texts()) {
      ImmutableSet<ScoreWords.Kind> told = music.told(text);
      if (told.contains(ScoreWords.Kind.INSTRUMENT)) {
        change(music, text, FindingKind.CHANGE_OF_INSTRUMENT, Threshold.NEW_INSTRUMENT, findings);
      }
      if (told.contains(ScoreWords.Kind.TUNING)) {
        change(music, text, FindingKind.CHANGE_OF_TUNING, Threshold.TUNE_A_STRING, findings);
        tuning(music, text, findings);
      }
      boolean drawn = text.kind() == PrintedText.Kind.MUTE;
      boolean off =
          told.contains(ScoreWords.Kind.MUTE_OFF) || (drawn && text.text().endsWith("off"));
      boolean on = !off && (told.contains(ScoreWords.Kind.MUTE_ON) || drawn);
      if (on && !muted) {
        change(music, text, FindingKind.CHANGE_OF_MUTE, Threshold.MUTE_ON, findings);
      } else if (off && muted) {
        change(music, text, FindingKind.CHANGE_OF_MUTE, Threshold.MUTE_OFF, findings);
      }
      muted = (muted || on) && !off;
    }
  }

  private void plucking(PartMusic music, int m, Findings findings) {
    Moment before = music.moment(m - 1);
    Moment moment = music.moment(m);
    boolean toPluck = moment.pizzicato();
    double since = (moment.startMicros() - before.startMicros()) / MICROS;
    double sounds = Math.min(since, before.soundMicros() / MICROS);
    // A plucked note rings on by itself while the hand does something else.
    double free =
        toPluck
            ? since - sounds + Math.min(GIVEN_UP_MOST, GIVEN_UP * sounds)
            : Math.max(0, since - PLUCK);
    double needed = toPluck ? toPizzicato : toArco;
    if (free < needed * NEARLY && !plucksByLeftHand(toPluck ? moment : before)) {
      findings.add(
          toPluck ? FindingKind.CHANGE_TO_PIZZICATO : FindingKind.CHANGE_TO_ARCO,
          Together.IN_A_PASSAGE,
          free < needed / 2 ? Severity.RISKY : Severity.WORTH_KNOWING,
          needed - free,
          moment,
          () -> words(music, toPluck ? "The change to pizzicato" : "The bow", needed, free));
    }
  }

  private static boolean plucksByLeftHand(Moment moment) {
    return moment.starting().stream().anyMatch(note -> note.marks().leftPlucked());
  }

  /** The notes are read as the instrument is strung usually, whatever words ask for. */
  private static void tuning(PartMusic music, PrintedText text, Findings findings) {
    if (music.instrument().tuning().equals(Tuning.STANDARD)) {
      findings.add(
          FindingKind.SCORDATURA_CONFLICT,
          Together.NEVER,
          text.place(),
          new Spot(
              Severity.WORTH_KNOWING,
              0,
              ImmutableList.of(),
              () ->
                  new Words(
                      "'%s' asks for another tuning, and the part was checked in the usual one"
                          .formatted(text.text()),
                      "Check it again with --tuning.")));
    }
  }

  private void change(
      PartMusic music, PrintedText text, FindingKind kind, Threshold threshold, Findings findings) {
    int m = TextPlaces.momentAt(music.moments(), text);
    if (m == music.moments().size() || music.movements().get(m)) {
      return;
    }
    Moment moment = music.moment(m);
    double needed = level.seconds(threshold);
    double free = moment.restMicros() / MICROS;
    if (free < needed * NEARLY) {
      findings.add(
          kind,
          Together.NEVER,
          free < needed / 2 ? Severity.RISKY : Severity.WORTH_KNOWING,
          needed - free,
          moment,
          () -> words(music, "'" + text.text() + "'", needed, free));
    }
  }

  private static String told(double seconds) {
    return String.format(Locale.ROOT, seconds < 1 ? "%.2f s" : "%.1f s", seconds);
  }

  private static Words words(PartMusic music, String what, double needed, double free) {
    return new Words(
        String.format(
            Locale.ROOT,
            "%s takes %s, and there %s",
            what,
            told(needed),
            free < NOTHING ? "is no time at all" : "are " + told(free)),
        music.section()
            ? "Leave some notes out before it, or let the section do it desk by desk."
            : "Leave some notes out before it.");
  }
}
