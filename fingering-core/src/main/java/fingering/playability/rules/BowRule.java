package fingering.playability.rules;

import com.google.common.collect.ImmutableMap;
import fingering.music.Moment;
import fingering.music.print.PrintedNote.Tremolo.Role;
import fingering.music.print.PrintedText;
import fingering.playability.CheckLevel;
import fingering.playability.FindingKind;
import fingering.playability.Severity;
import fingering.playability.Threshold;
import fingering.playability.part.NoteText;
import fingering.playability.part.PartMusic;
import fingering.playability.rules.Findings.Merge;
import fingering.playability.rules.Findings.Message;
import fingering.tables.Instrument;
import java.util.Iterator;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** Finds notes and slurs that last longer than one bow at their dynamic. */
public final class BowRule implements CheckRule {
  private static final double MICROS = 1e6;

  /** Shares of the duration of a violin bow; thicker strings use more bow (common practice). */
  private static final double CELLO = 0.85;

  private static final double BASS = 0.7;

  /** The share of a bow that is still accepted (common practice, no source). */
  private static final double TOLERANCE = 1.15;

  private final ImmutableMap<Loudness, Double> seconds;
  private final double risky;

  /** The dynamics that differ in the use of the bow, the softest first. */
  private enum Loudness {
    PP,
    P,
    MF,
    F,
    FF
  }

  /**
   * A note or slur that is longer than one bow.
   *
   * @param first its first moment
   * @param slurred whether it has more than one moment
   * @param lasts its seconds
   * @param bow the seconds of one bow
   * @param loudness its dynamic
   */
  private record LongBow(
      Moment first, boolean slurred, double lasts, double bow, Loudness loudness) {

    Message message(boolean section) {
      return new Message(
          String.format(
              Locale.ROOT,
              "%s lasts %.1f s, but one bow at %s lasts only about %.1f s",
              slurred ? "The slur from " + NoteText.of(first) : NoteText.of(first),
              lasts,
              loudness.name().toLowerCase(Locale.ROOT),
              bow),
          section
              ? "Ask for staggered bow changes in the part."
              : "Mark where the player may change bow.");
    }
  }

  /** Creates the rule for a level. */
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
      double lasts = (end - first.startMicros()) / MICROS;
      if (lasts > bow * TOLERANCE && bowed(music, first)) {
        LongBow longBow = new LongBow(first, from > m + 1, lasts, bow, loudness);
        findings.add(
            FindingKind.BOW_TOO_SHORT,
            Merge.IN_A_PASSAGE,
            longBow.slurred() && lasts > bow * risky ? Severity.RISKY : Severity.WORTH_KNOWING,
            lasts / bow,
            first,
            () -> longBow.message(music.section()));
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

  /** Returns the first moment after the slur that begins at moment {@code m}. */
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

  /**
   * Returns the loudness from a dynamic on; empty for an accent such as sf, which does not last.
   */
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
