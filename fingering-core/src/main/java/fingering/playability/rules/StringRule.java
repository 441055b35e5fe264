package fingering.playability.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.PrintedString;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.part.PartMusic;
import fingering.playability.part.PlayerLines;
import fingering.playability.rules.Findings.Spot;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Instrument;
import java.util.BitSet;

/** Notes that do not lie on the string that words or a printed numeral ask for. */
public final class StringRule implements CheckRule {

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 0; m < music.moments().size(); m++) {
      if (music.playable().get(m).isEmpty()) {
        continue;
      }
      Moment moment = music.playable().get(m).get();
      for (Note note : moment.starting()) {
        if (note.marks().string().isPresent()) {
          int string = note.marks().string().getAsInt();
          check(music, m, new Asked(note, string, "string " + string), findings);
        }
      }
    }
    for (PrintedString asked : music.passage().oneString()) {
      findings.endRuns();
      BitSet concerned = PlayerLines.concerned(music.moments(), asked);
      for (int m = concerned.nextSetBit(0); m >= 0; m = concerned.nextSetBit(m + 1)) {
        if (music.playable().get(m).isPresent()) {
          Note note = music.playable().get(m).get().starting().get(0);
          check(music, m, new Asked(note, asked.string(), "'" + asked.words() + "'"), findings);
        }
      }
    }
  }

  private static void check(PartMusic music, int m, Asked asked, Findings findings) {
    Instrument instrument = music.instrument();
    Moment moment = music.playable().get(m).orElseThrow();
    if (asked.strung(instrument) && asked.taken(music.ways().get(m), moment)) {
      return;
    }
    boolean never = !asked.strung(instrument) || asked.below(instrument);
    findings.add(
        FindingKind.STRING_WITHOUT_NOTE,
        Together.IN_A_PASSAGE,
        moment.place(),
        new Spot(
            never ? Severity.RISKY : Severity.WORTH_KNOWING,
            1,
            ImmutableList.of(asked.note),
            () -> asked.told(instrument)));
  }

  /**
   * A note that is asked for on a string.
   *
   * @param words what asks for it
   */
  private record Asked(Note note, int string, String words) {

    /** Whether the instrument has the string. */
    boolean strung(Instrument instrument) {
      return string <= instrument.strings().size();
    }

    /** Whether the note lies below the string. */
    boolean below(Instrument instrument) {
      return note.midi() < instrument.string(string).lowest().midi();
    }

    /** Whether one of the ways to take a moment takes the note there. */
    boolean taken(ImmutableList<Grip> ways, Moment moment) {
      for (Grip grip : ways) {
        int at = grip.notes(moment).indexOf(note);
        if (at >= 0 && grip.placements().get(at).string() == string) {
          return true;
        }
      }
      return false;
    }

    Words told(Instrument instrument) {
      if (!strung(instrument)) {
        return new Words(
            "%s asks for a string that the %s does not have".formatted(words, instrument.spoken()),
            "Correct the number of the string.");
      }
      String lowest = RangeRule.written(instrument, instrument.string(string).lowest());
      return below(instrument)
          ? new Words(
              "%s does not lie on the string that %s asks for: its lowest note is %s"
                  .formatted(note.written().display(), words, lowest),
              "Say where the string may be left, or ask for a lower one.")
          : new Words(
              "%s cannot be taken on the string that %s asks for"
                  .formatted(note.written().display(), words),
              "Say where the string may be left.");
    }
  }
}
