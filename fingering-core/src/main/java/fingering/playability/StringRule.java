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
import java.util.BitSet;
import java.util.List;

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
      BitSet concerned = concerned(music.moments(), asked);
      for (int m = concerned.nextSetBit(0); m >= 0; m = concerned.nextSetBit(m + 1)) {
        if (music.playable().get(m).isPresent()) {
          Moment moment = music.playable().get(m).get();
          Note note = moment.struck().get(0);
          asked(music, m, moment, note, asked.string(), "'" + asked.words() + "'", findings);
        }
      }
    }
  }

  /** The moments that words ask for on one string. */
  static BitSet concerned(List<Moment> moments, OneString asked) {
    int low = 0;
    int high = moments.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments.get(middle).place().measureIndex() < asked.from().measureIndex()) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    BitSet concerned = new BitSet();
    for (int m = low; m < moments.size(); m++) {
      if (moments.get(m).place().measureIndex() > asked.to().measureIndex()) {
        break;
      }
      concerned.set(m, asked.concerns(moments.get(m)));
    }
    return concerned;
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
