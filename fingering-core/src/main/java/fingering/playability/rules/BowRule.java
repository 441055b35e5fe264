package fingering.playability.rules;

import com.google.common.collect.ImmutableMap;
import fingering.music.Moment;
import fingering.music.PrintedNote.Tremolo.Role;
import fingering.music.PrintedText;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Together;
import fingering.playability.rules.Findings.Words;
import fingering.tables.Instrument;
import java.util.Iterator;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** Notes and slurs that last longer than a bow does at their dynamic. */
public final class BowRule implements CheckRule {
  private static final double MICROS = 1e6;

  /** Heavier strings take more bow (common practice, no source). */
  private static final double CELLO = 0.85;

  private static final double BASS = 0.7;

  /** Nobody notices a bow that is so much longer (common practice, no source). */
  private static final double LITTLE = 1.15;

  private final ImmutableMap<Loudness, Double> seconds;
  private final double risky;

  /** Loudness as far as it asks for bow, the softest first. */
  private enum Loudness {
    PP,
    P,
    MF,
    F,
    FF
  }

  /**
   * A bow that has to last longer than it does.
   *
   * @param first where it begins
   * @param slurred whether it takes more than one moment
   * @param asked how many seconds it is to last
   * @param bow how many seconds a bow lasts
   * @param loudness how loud that is
   */
  private record LongBow(
      Moment first, boolean slurred, double asked, double bow, Loudness loudness) {

    Words words(boolean section) {
      return new Words(
          String.format(
              Locale.ROOT,
              "%s lasts %.1f s, and a bow about %.1f s at %s",
              slurred ? "The slur from " + NoteText.of(first) : NoteText.of(first),
              asked,
              bow,
              loudness.name().toLowerCase(Locale.ROOT)),
          section
              ? "Let the players change bows at different times, and say so."
              : "Show where the bow may change.");
    }
  }

  public BowRule(CheckLevel level) {
    seconds =
        ImmutableMap.of(
            Loudness.PP, level.seconds(Threshold.BOW_PP),
            Loudness.P, level.seconds(Threshold.BOW_P),
            Loudness.MF, level.seconds(Threshold.BOW_MF),
            Loudness.F, level.seconds(Threshold.BOW_F),
            Loudness.FF, level.seconds(Threshold.BOW_FF));
    risky = level.share(Threshold.BOW_RISKY);
  }

  @Override
  public void check(PartMusic music, Findings findings) {
    double share = share(music.instrument());
    Iterator<PrintedText> texts = music.texts().iterator();
    Optional<PrintedText> next = next(texts);
    Loudness loudness = Loudness.MF;
    int from = 0;
    for (int m = 0; m < music.moments().size(); m = from) {
      Moment first = music.moment(m);
      from = end(music, m);
      while (next.isPresent()
          && next.get().start().compareTo(first.starting().get(0).start()) <= 0) {
        loudness = loudness(next.get().text()).orElse(loudness);
        next = next(texts);
      }
      long end = first.startMicros() + first.soundMicros();
      for (int i = m + 1; i < from; i++) {
        end = Math.max(end, music.moment(i).startMicros() + music.moment(i).soundMicros());
      }
      double bow = Objects.requireNonNull(seconds.get(loudness)) * share;
      double asked = (end - first.startMicros()) / MICROS;
      if (asked > bow * LITTLE && bowed(music, first)) {
        LongBow context = new LongBow(first, from > m + 1, asked, bow, loudness);
        findings.add(
            FindingKind.BOW_TOO_SHORT,
            Together.IN_A_PASSAGE,
            context.slurred() && asked > bow * risky ? Severity.RISKY : Severity.WORTH_KNOWING,
            asked / bow,
            first,
            () -> context.words(music.section()));
      }
    }
  }

  private static double share(Instrument instrument) {
    return switch (instrument.kind()) {
      case VIOLIN -> 1;
      case CELLO -> CELLO;
      case BASS -> BASS;
    };
  }

  /** The first moment behind the slur that begins at one. */
  private static int end(PartMusic music, int m) {
    int end = m + 1;
    while (end < music.moments().size() && music.moment(end).slurred()) {
      end++;
    }
    return end;
  }

  private static Optional<PrintedText> next(Iterator<PrintedText> texts) {
    while (texts.hasNext()) {
      PrintedText text = texts.next();
      if (text.kind() == PrintedText.Kind.DYNAMIC) {
        return Optional.of(text);
      }
    }
    return Optional.empty();
  }

  /** What a dynamic asks for from there on; an accent such as sf asks for nothing that lasts. */
  private static Optional<Loudness> loudness(String dynamic) {
    return switch (dynamic) {
      case "p", "fp", "sfp", "rfp" -> Optional.of(Loudness.P);
      case "mp", "mf" -> Optional.of(Loudness.MF);
      case "f" -> Optional.of(Loudness.F);
      default ->
          dynamic.startsWith("pp")
              ? Optional.of(Loudness.PP)
              : dynamic.startsWith("ff") ? Optional.of(Loudness.FF) : Optional.empty();
    };
  }

  private static boolean bowed(PartMusic music, Moment first) {
    return !first.pizzicato()
        && !music.prints().tremolo(first.starting(), Role.ALONE)
        && !music.prints().tremolo(first.starting(), Role.FIRST);
  }
}
