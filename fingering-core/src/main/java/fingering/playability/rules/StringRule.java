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
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.playability.rules.Findings.Spot;
import fingering.tables.Instrument;
import java.util.BitSet;

/** Finds notes that cannot be played on the string that words or a printed numeral ask for. */
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
          check(music, m, new Request(note, string, "string " + string), findings);
        }
      }
    }
    for (PrintedString words : music.passage().stringWords()) {
      findings.endRuns();
      BitSet onString = PlayerLines.momentsOn(music.moments(), words);
      for (int m = onString.nextSetBit(0); m >= 0; m = onString.nextSetBit(m + 1)) {
        if (music.playable().get(m).isPresent()) {
          Note note = music.playable().get(m).get().starting().get(0);
          check(music, m, new Request(note, words.string(), "'" + words.words() + "'"), findings);
        }
      }
    }
  }

  private static void check(PartMusic music, int m, Request request, Findings findings) {
    Instrument instrument = music.instrument();
    Moment moment = music.playable().get(m).orElseThrow();
    if (request.exists(instrument) && request.reachable(music.grips().get(m), moment)) {
      return;
    }
    boolean impossible = !request.exists(instrument) || request.below(instrument);
    findings.add(
        FindingKind.STRING_WITHOUT_NOTE,
        Merge.IN_A_PASSAGE,
        moment.place(),
        new Spot(
            impossible ? Severity.RISKY : Severity.WORTH_KNOWING,
            1,
            ImmutableList.of(request.note),
            () -> request.message(instrument)));
  }

  /**
   * A note with the string that the part asks for.
   *
   * @param note the note
   * @param string the number of the string, 1 for the highest
   * @param words the words or the numeral, to show
   */
  private record Request(Note note, int string, String words) {

    /** Returns whether the instrument has the string. */
    boolean exists(Instrument instrument) {
      return string <= instrument.strings().size();
    }

    /** Returns whether the note is below the string. */
    boolean below(Instrument instrument) {
      return note.midi() < instrument.string(string).lowest().midi();
    }

    /** Returns whether one of the grips of a moment has the note on the string. */
    boolean reachable(ImmutableList<Grip> grips, Moment moment) {
      for (Grip grip : grips) {
        int at = grip.notes(moment).indexOf(note);
        if (at >= 0 && grip.placements().get(at).string() == string) {
          return true;
        }
      }
      return false;
    }

    Message message(Instrument instrument) {
      if (!exists(instrument)) {
        return new Message(
            "The part asks for %s, which the %s does not have"
                .formatted(words, instrument.nameInSentence()),
            "Correct the string.");
      }
      String lowest = RangeRule.written(instrument, instrument.string(string).lowest());
      return below(instrument)
          ? new Message(
              "%s is too low for %s: the lowest note of that string is %s"
                  .formatted(note.written().display(), words, lowest),
              "Mark where the player may leave the string, or choose a lower one.")
          : new Message(
              "%s cannot be played as marked (%s)".formatted(note.written().display(), words),
              "Mark where the player may leave the string.");
    }
  }
}
