package fingering.playability;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.music.Moment;
import fingering.music.Note;
import fingering.music.OneString;
import fingering.playability.Findings.Spot;
import fingering.playability.Findings.Together;
import fingering.playability.Findings.Words;
import fingering.tables.Instrument;
import fingering.tables.OpenString;

/** Notes that do not lie on the string that words or a printed numeral ask for. */
final class StringRule implements CheckRule {

  @Override
  public void check(PartMusic music, Findings findings) {
    for (int m = 0; m < music.moments().size(); m++) {
      if (music.playable().get(m).isEmpty()) {
        continue;
      }
      Moment moment = music.playable().get(m).get();
      for (Note note : moment.struck()) {
        if (note.marks().string().isPresent()) {
          int string = note.marks().string().getAsInt();
          asked(music, m, moment, note, string, "string " + string, findings);
        }
      }
    }
    for (OneString asked : music.passage().oneString()) {
      findings.endRuns();
      for (int m = from(music, asked); m < music.moments().size(); m++) {
        if (music.moment(m).place().measureIndex() > asked.to().measureIndex()) {
          break;
        }
        if (music.playable().get(m).isPresent() && asked.concerns(music.moment(m))) {
          Moment moment = music.playable().get(m).get();
          Note note = moment.struck().get(0);
          asked(music, m, moment, note, asked.string(), "'" + asked.words() + "'", findings);
        }
      }
    }
  }

  private static int from(PartMusic music, OneString asked) {
    int low = 0;
    int high = music.moments().size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (music.moment(middle).place().measureIndex() < asked.from().measureIndex()) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static void asked(
      PartMusic music,
      int m,
      Moment moment,
      Note note,
      int string,
      String words,
      Findings findings) {
    Instrument instrument = music.instrument();
    boolean there = string <= instrument.strings().size();
    if (there && has(music.ways().get(m), moment, note, string)) {
      return;
    }
    boolean below = there && note.midi() < instrument.string(string).lowest().midi();
    findings.add(
        FindingKind.STRING_WITHOUT_NOTE,
        Together.IN_A_PASSAGE,
        moment.place(),
        new Spot(
            below || !there ? Severity.RISKY : Severity.WORTH_KNOWING,
            1,
            ImmutableList.of(note),
            () -> words(instrument, note, string, words)));
  }

  private static boolean has(ImmutableList<Grip> ways, Moment moment, Note note, int string) {
    for (Grip grip : ways) {
      int at = grip.notes(moment).indexOf(note);
      if (at >= 0 && grip.placements().get(at).string() == string) {
        return true;
      }
    }
    return false;
  }

  private static Words words(Instrument instrument, Note note, int string, String asked) {
    if (string > instrument.strings().size()) {
      return new Words(
          "%s asks for a string that the %s does not have".formatted(asked, instrument.spoken()),
          "Correct the number of the string.");
    }
    OpenString open = instrument.string(string);
    String lowest = RangeRule.written(instrument, open.lowest());
    return note.midi() < open.lowest().midi()
        ? new Words(
            "%s does not lie on the string that %s asks for: its lowest note is %s"
                .formatted(note.written().display(), asked, lowest),
            "Say where the string may be left, or ask for a lower one.")
        : new Words(
            "%s cannot be taken on the string that %s asks for"
                .formatted(note.written().display(), asked),
            "Say where the string may be left.");
  }
}
