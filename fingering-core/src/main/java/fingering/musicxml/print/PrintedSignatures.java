package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.print.Clef;
import fingering.music.print.PrintedMeasure.ClefChange;
import fingering.music.print.PrintedMeasure.KeyChange;
import fingering.music.print.PrintedMeasure.TimeChange;
import fingering.music.print.TimeSign;
import fingering.music.print.TimeSign.Symbol;
import fingering.music.print.TimeSign.Term;
import fingering.musicxml.element.Meter;
import fingering.musicxml.element.Quarters;
import jakarta.xml.bind.JAXBElement;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.MeasureStyle;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** Collects clefs, key and time signatures, and rests of several measures. */
final class PrintedSignatures {
  /** More measures of rest are a mistake (common practice, no source). */
  private static final int MOST_RESTS = 1_000;

  private Clef atStart = Clef.TREBLE;
  private boolean afterBar;
  private List<ClefChange> clefs = new ArrayList<>();
  private List<KeyChange> keys = new ArrayList<>();
  private List<TimeChange> times = new ArrayList<>();
  private int multipleRest;

  /** Adds a clef; those of other staves than the first are ignored. */
  void clef(org.audiveris.proxymusic.Clef printed, BigFraction onset) {
    Optional<Clef> read = onFirstStaff(printed.getNumber()) ? read(printed) : Optional.empty();
    if (read.isEmpty()) {
      return;
    }
    if (onset.signum() == 0) {
      atStart = read.get();
      afterBar = printed.getAfterBarline() == YesNo.YES;
    } else {
      clefs.removeIf(other -> other.onset().equals(onset));
      clefs.add(new ClefChange(onset, read.get()));
    }
  }

  private static boolean onFirstStaff(@Nullable BigInteger number) {
    return number == null || number.equals(BigInteger.ONE);
  }

  private static Optional<Clef> read(org.audiveris.proxymusic.Clef printed) {
    if (printed.getSign() == null) {
      return Optional.empty();
    }
    int octaves =
        printed.getClefOctaveChange() == null
            ? 0
            : Math.max(-2, Math.min(2, printed.getClefOctaveChange().intValue()));
    Optional<Clef.Sign> sign =
        switch (printed.getSign()) {
          case G -> Optional.of(Clef.Sign.G);
          case F -> Optional.of(Clef.Sign.F);
          case C -> Optional.of(Clef.Sign.C);
          default -> Optional.empty();
        };
    int usual =
        sign.equals(Optional.of(Clef.Sign.G)) ? 2 : sign.equals(Optional.of(Clef.Sign.F)) ? 4 : 3;
    int line = printed.getLine() == null ? usual : printed.getLine().intValue();
    return sign.map(shape -> new Clef(shape, line < 1 || line > 5 ? usual : line, octaves));
  }

  /** Adds a change of key. */
  void key(Key key, int before, int fifths, BigFraction onset) {
    if (before != fifths) {
      // A key that another staff or voice states at the same time was read already.
      Optional<KeyChange> together =
          keys.stream().filter(other -> other.onset().equals(onset)).findFirst();
      together.ifPresent(keys::remove);
      keys.add(
          new KeyChange(
              onset,
              together.map(KeyChange::before).orElse(before),
              fifths,
              key.getCancel() != null));
    }
  }

  /** Adds a time signature if it is printed. */
  void time(Time time, BigFraction onset) {
    if (time.getPrintObject() == YesNo.NO || !onFirstStaff(time.getNumber())) {
      return;
    }
    sign(time)
        .ifPresent(
            sign -> {
              times.removeIf(other -> other.onset().equals(onset));
              times.add(new TimeChange(onset, sign));
            });
  }

  private static Optional<TimeSign> sign(Time time) {
    if (time.getSenzaMisura() != null) {
      return Optional.of(new TimeSign(Symbol.SENZA_MISURA, ImmutableList.of()));
    }
    if (Meter.of(time).isEmpty()) {
      return Optional.empty();
    }
    ImmutableList.Builder<Term> terms = ImmutableList.builder();
    String upper = "";
    for (JAXBElement<String> figure : time.getTimeSignature()) {
      String text = figure.getValue().strip();
      if (figure.getName().getLocalPart().equals("beats")) {
        upper = text;
      } else {
        terms.add(new Term(upper, Integer.parseInt(text)));
      }
    }
    return Optional.of(new TimeSign(symbol(time), terms.build()));
  }

  private static Symbol symbol(Time time) {
    if (time.getSymbol() == null) {
      return Symbol.NUMBERS;
    }
    return switch (time.getSymbol()) {
      case COMMON -> Symbol.COMMON;
      case CUT -> Symbol.CUT;
      case SINGLE_NUMBER -> Symbol.SINGLE_NUMBER;
      default -> Symbol.NUMBERS;
    };
  }

  /** Adds the sign of a rest of several measures. A repeated measure is printed as its notes. */
  void style(MeasureStyle style) {
    if (style.getMultipleRest() != null && style.getMultipleRest().getValue() != null) {
      BigInteger count = style.getMultipleRest().getValue();
      boolean plausible =
          count.signum() > 0 && count.compareTo(BigInteger.valueOf(MOST_RESTS)) <= 0;
      multipleRest = plausible ? count.intValue() : 0;
    }
  }

  Clef atStart() {
    return atStart;
  }

  boolean afterBar() {
    return afterBar;
  }

  ImmutableList<ClefChange> clefs() {
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(ClefChange::onset, Quarters.ORDER), clefs);
  }

  Optional<KeyChange> keyAtStart() {
    return keys.stream().filter(change -> change.onset().signum() == 0).findFirst();
  }

  ImmutableList<KeyChange> keysWithin() {
    return keys.stream()
        .filter(change -> change.onset().signum() > 0)
        .sorted(Comparator.comparing(KeyChange::onset, Quarters.ORDER))
        .collect(ImmutableList.toImmutableList());
  }

  ImmutableList<TimeChange> times() {
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(TimeChange::onset, Quarters.ORDER), times);
  }

  int multipleRest() {
    return multipleRest;
  }

  /** Ends the measure: its last clef holds on. */
  void endMeasure() {
    ImmutableList<ClefChange> inTime = clefs();
    atStart = inTime.isEmpty() ? atStart : inTime.get(inTime.size() - 1).clef();
    afterBar = false;
    clefs = new ArrayList<>();
    keys = new ArrayList<>();
    times = new ArrayList<>();
    multipleRest = 0;
  }
}
