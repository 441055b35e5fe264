package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.print.PrintedMeasure.Bar;
import fingering.music.print.PrintedMeasure.InnerBar;
import fingering.music.print.PrintedPart.Ending;
import fingering.musicxml.element.Quarters;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.RightLeftMiddle;
import org.audiveris.proxymusic.StartStopDiscontinue;

/** Collects bar lines and the endings of repeats. */
final class PrintedBars {
  /** A repeat is played twice, unless it says more (MusicXML 4.0, {@code repeat}). */
  private static final int USUAL = 2;

  private static final BigInteger MOST = BigInteger.valueOf(Integer.MAX_VALUE);

  private final ImmutableList.Builder<Ending> endings = ImmutableList.builder();
  private Optional<Ending> ending = Optional.empty();

  private boolean repeatStart;
  private List<InnerBar> inner = new ArrayList<>();
  private Bar end = Bar.SINGLE;
  private int times = USUAL;
  private boolean fermata;
  private Optional<Bar> before = Optional.empty();

  void beginMeasure() {
    repeatStart = false;
    inner = new ArrayList<>();
    end = Bar.SINGLE;
    times = USUAL;
    fermata = false;
    before = Optional.empty();
  }

  /** Adds a bar line. */
  void add(Barline bar, int measure, BigFraction onset) {
    ending(bar, measure);
    boolean repeat = bar.getRepeat() != null;
    boolean forward = repeat && bar.getRepeat().getDirection() == BackwardForward.FORWARD;
    Bar style = repeat && !forward ? Bar.REPEAT : style(bar);
    if (bar.getLocation() == RightLeftMiddle.MIDDLE && onset.signum() > 0) {
      inner.add(new InnerBar(onset, style, forward));
      return;
    }
    repeatStart |= forward;
    if (bar.getLocation() == RightLeftMiddle.LEFT
        || bar.getLocation() == RightLeftMiddle.MIDDLE
        || forward) {
      // A repeat starts with its own sign, whatever the style says.
      if (!repeat && bar.getBarStyle() != null) {
        before = Optional.of(style);
      }
      return;
    }
    fermata |= !bar.getFermata().isEmpty();
    if (repeat || bar.getBarStyle() != null) {
      end = style;
    }
    if (repeat && bar.getRepeat().getTimes() != null) {
      times = bar.getRepeat().getTimes().min(MOST).max(BigInteger.TWO).intValue();
    }
  }

  private static Bar style(Barline bar) {
    if (bar.getBarStyle() == null || bar.getBarStyle().getValue() == null) {
      return Bar.SINGLE;
    }
    return switch (bar.getBarStyle().getValue()) {
      case LIGHT_LIGHT -> Bar.DOUBLE;
      case LIGHT_HEAVY, HEAVY, HEAVY_HEAVY -> Bar.FINAL;
      case DASHED -> Bar.DASHED;
      case DOTTED -> Bar.DOTTED;
      case TICK -> Bar.TICK;
      case SHORT -> Bar.SHORT;
      case NONE -> Bar.NONE;
      default -> Bar.SINGLE;
    };
  }

  private void ending(Barline barline, int measure) {
    if (barline.getEnding() == null || barline.getEnding().getType() == null) {
      return;
    }
    StartStopDiscontinue type = barline.getEnding().getType();
    if (type == StartStopDiscontinue.START) {
      endEnding(measure - 1, false);
      String number = barline.getEnding().getNumber();
      ending = Optional.of(new Ending(measure, measure, number == null ? "" : number, false));
    } else {
      endEnding(measure, type == StartStopDiscontinue.STOP);
    }
  }

  private void endEnding(int last, boolean closed) {
    ending.ifPresent(
        one ->
            endings.add(
                new Ending(one.first(), Math.max(one.first(), last), one.number(), closed)));
    ending = Optional.empty();
  }

  boolean repeatStart() {
    return repeatStart;
  }

  /** The bar lines within the measure, in order of time. */
  ImmutableList<InnerBar> inner() {
    return ImmutableList.sortedCopyOf(Comparator.comparing(InnerBar::onset, Quarters.ORDER), inner);
  }

  Bar end() {
    return end;
  }

  int times() {
    return times;
  }

  boolean fermata() {
    return fermata;
  }

  /** The bar line before the measure, if the measure itself states it. */
  Optional<Bar> before() {
    return before;
  }

  /** The endings of repeats; one without an end is as long as its measure. */
  ImmutableList<Ending> endings() {
    ImmutableList.Builder<Ending> all = ImmutableList.builder();
    all.addAll(endings.build());
    ending.ifPresent(all::add);
    return all.build();
  }
}
