package fingering.page;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import fingering.engraving.EngravedSystem;
import fingering.page.music.MusicPanel;
import fingering.page.view.Ladder;
import fingering.page.view.PractisedSpot;
import fingering.svg.TextWidth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Fits a handout on as few sides as possible, with the music as large as possible. Heights are
 * known before it is printed: lines of text have fixed heights, and their number is an upper
 * estimate. All lengths are in millimetres.
 */
final class HandoutFit {
  /** The sizes of a staff space, the largest first: staves from 7.6 to 5.2 mm high. */
  private static final ImmutableList<Double> SPACES =
      ImmutableList.of(1.9, 1.85, 1.8, 1.75, 1.7, 1.65, 1.6, 1.55, 1.5, 1.45, 1.4, 1.35, 1.3);

  /** The smallest staff space that is comfortable on a music stand. */
  private static final double COMFORTABLE = 1.4;

  /** A handout on more sides needs no larger music than is comfortable. */
  private static final int FEW_SIDES = 4;

  /** The rows of the ladder, at the most and where there is less and less room. */
  private static final ImmutableList<Integer> ROWS = ImmutableList.of(14, 10, 6);

  static final double TITLE = 7.6;

  /** The size of the letters of the title, with what bold ones take more. */
  static final double TITLE_LETTERS = 5.4 * 1.12;

  static final double ABOUT = 4.6;
  static final double RUNNING = 7;
  static final double GAP = 5;
  static final double HEADING = 6.4;
  static final double ROW = 4.7;

  /** The head of the ladder has two lines of text. */
  static final double COLUMNS = 8.4;

  static final double TEXT = 3.9;
  static final double LETTERS = 3;
  static final double SMALL = 3.4;
  static final double SMALL_LETTERS = 2.6;
  static final double SPOT = 2.4;
  static final double CARE = 3.4;

  /** A line to write on. */
  static final double WRITING = 8.5;

  /** White that may be added below each line of music before there are lines to write on. */
  private static final double LOOSE = 2.5;

  /**
   * The width of text in the typefaces that the style sheet asks for, compared with the widest ones
   * (measured, no source).
   */
  private static final double NORMAL = 0.9;

  /** By how many staff spaces the pictures of two lines may overlap: their edges are white. */
  static final double OVERLAP = 0.8;

  /** What rounding may add to a side. */
  private static final double SLACK = 0.8;

  private final HandoutParts parts;
  private final Map<Double, Lines> drawn = new HashMap<>();

  private HandoutFit(HandoutParts parts) {
    this.parts = parts;
  }

  /**
   * What is fitted.
   *
   * @param music the music
   * @param exercises the exercise of each spot, if it has one
   * @param spots the spots, the most important first
   * @param ladder the ladder
   * @param how how to climb it
   * @param about the number of lines below the title
   * @param title the title
   * @param signs what the signs in the music mean
   * @param care the warning about strain
   * @param width the width of a side
   * @param height the height of a side
   */
  record HandoutParts(
      MusicPanel music,
      ImmutableList<Optional<MusicPanel>> exercises,
      ImmutableList<PractisedSpot> spots,
      Ladder ladder,
      ImmutableList<String> how,
      int about,
      String title,
      String signs,
      String care,
      double width,
      double height) {
    /** The width of each of two columns. */
    double column() {
      return (width - GAP) / 2;
    }
  }

  /**
   * A handout that fits.
   *
   * @param space a staff space of the music
   * @param exerciseSpace a staff space of the exercises
   * @param spots the number of spots
   * @param ladder the ladder, perhaps with fewer days
   * @param sides the lines of music on each side
   * @param writing the number of lines to write on, below them
   */
  record Fitted(
      double space,
      double exerciseSpace,
      int spots,
      Ladder ladder,
      ImmutableList<ImmutableList<EngravedSystem>> sides,
      int writing) {}

  /**
   * The lines of the music at a size: no more than needed are drawn, because that takes longest.
   */
  private static final class Lines {
    private final Iterator<EngravedSystem> next;
    private final List<EngravedSystem> drawn = new ArrayList<>();

    Lines(Iterator<EngravedSystem> next) {
      this.next = next;
    }

    boolean has(int line) {
      return line < drawn.size() || next.hasNext();
    }

    EngravedSystem get(int line) {
      while (line >= drawn.size()) {
        drawn.add(next.next());
      }
      return drawn.get(line);
    }
  }

  static Fitted of(HandoutParts parts) {
    return new HandoutFit(parts).fitted();
  }

  /**
   * The first way that fits one side: with all spots, music that is as large as possible; then with
   * fewer days, small music, and fewer spots.
   */
  private Fitted fitted() {
    for (int spots = parts.spots().size(); spots >= 0; spots--) {
      for (boolean comfortable : new boolean[] {true, false}) {
        for (int rows : ROWS) {
          for (double space : SPACES) {
            if (space >= COMFORTABLE == comfortable) {
              Optional<Fitted> fitted = at(space, spots, rows, 1);
              if (fitted.isPresent()) {
                return fitted.get();
              }
            }
          }
        }
      }
    }
    return onSeveralSides();
  }

  /**
   * On several sides there is room for all spots and days, and for comfortable music. On many sides
   * it is as small as is comfortable.
   */
  private Fitted onSeveralSides() {
    Fitted smallest = onSeveralSides(COMFORTABLE);
    if (smallest.sides().size() > FEW_SIDES) {
      return smallest;
    }
    List<Fitted> all =
        SPACES.stream().filter(space -> space >= COMFORTABLE).map(this::onSeveralSides).toList();
    int fewest = all.stream().mapToInt(each -> each.sides().size()).min().orElseThrow();
    return all.stream().filter(each -> each.sides().size() == fewest).findFirst().orElseThrow();
  }

  private Fitted onSeveralSides(double space) {
    return at(space, parts.spots().size(), ROWS.get(0), Integer.MAX_VALUE).orElseThrow();
  }

  /** A handout on no more than a number of sides; empty if it needs more. */
  private Optional<Fitted> at(double space, int spots, int rows, int most) {
    double exerciseSpace = Math.max(1.2, Math.min(1.5, space * 0.85));
    Ladder ladder = parts.ladder().atMost(rows);
    double work =
        Math.max(
            height(ladder, spots == 0 ? parts.width() : parts.column()),
            spots(spots, exerciseSpace));
    double foot =
        lines(parts.signs(), parts.width(), SMALL_LETTERS) * SMALL
            + lines(parts.care(), parts.width() - CARE, LETTERS) * TEXT
            + CARE;
    double tail = GAP + work + GAP + foot;
    List<ImmutableList<EngravedSystem>> sides = new ArrayList<>();
    List<EngravedSystem> side = new ArrayList<>();
    double room = parts.height() - SLACK - head();
    Lines lines = lines(space);
    for (int i = 0; lines.has(i); i++) {
      EngravedSystem line = lines.get(i);
      double height = height(line) * space;
      if (height > room && !side.isEmpty()) {
        if (sides.size() + 1 == most) {
          return Optional.empty();
        }
        sides.add(ImmutableList.copyOf(side));
        side.clear();
        room = parts.height() - SLACK - RUNNING;
      }
      side.add(line);
      room -= height;
    }
    sides.add(ImmutableList.copyOf(side));
    if (tail > room) {
      side.clear();
      sides.add(ImmutableList.of());
      room = parts.height() - SLACK - RUNNING;
    }
    if (sides.size() > most) {
      return Optional.empty();
    }
    double loose = room - tail - LOOSE * side.size() - HEADING - GAP;
    int writing = (int) Math.max(0, Math.floor(loose / WRITING));
    return Optional.of(
        new Fitted(
            space,
            exerciseSpace,
            spots,
            ladder,
            ImmutableList.copyOf(sides),
            writing < 2 ? 0 : writing));
  }

  private Lines lines(double space) {
    return drawn.computeIfAbsent(
        space, size -> new Lines(parts.music().drawing(parts.width() / size)));
  }

  /** The height of a line of music with the white around it, in staff spaces. */
  static double height(EngravedSystem line) {
    return MusicPanel.bottom(line) - MusicPanel.top(line) - OVERLAP;
  }

  private double head() {
    return lines(parts.title(), parts.width(), TITLE_LETTERS) * TITLE + parts.about() * ABOUT + 1;
  }

  private double height(Ladder ladder, double width) {
    double how = parts.how().stream().mapToInt(line -> lines(line, width, LETTERS)).sum() * TEXT;
    return HEADING + how + COLUMNS + ladder.rows().size() * ROW;
  }

  private double spots(int number, double space) {
    double height = number == 0 ? 0 : HEADING;
    for (int i = 0; i < number; i++) {
      PractisedSpot spot = parts.spots().get(i);
      height += lines(spot.measures() + "m. : " + spot.text(), parts.column(), LETTERS) * TEXT;
      height += SPOT;
      height +=
          parts.exercises().get(i).stream()
                  .flatMap(panel -> panel.lines(parts.column() / space).stream())
                  .mapToDouble(HandoutFit::height)
                  .sum()
              * space;
    }
    return height;
  }

  /** The number of lines of a text at a font size. */
  private static int lines(String text, double width, double size) {
    int lines = 1;
    double used = 0;
    for (String word : Splitter.on(' ').split(text)) {
      double more = NORMAL * TextWidth.of(word + " ", size);
      if (used > 0 && used + more > width) {
        lines++;
        used = 0;
      }
      used += more;
    }
    return lines;
  }
}
