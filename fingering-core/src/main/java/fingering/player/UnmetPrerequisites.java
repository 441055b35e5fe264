package fingering.player;

import fingering.fingerboard.Finger;
import fingering.fingerboard.Frame;
import fingering.fingerboard.Frame.Shape;
import fingering.fingerboard.Grip;
import fingering.fingerboard.Placement;
import fingering.scoring.HandMovement;
import fingering.scoring.Transition;
import fingering.tables.Position;
import java.util.BitSet;
import java.util.Optional;

/**
 * What a player has not learned of a note, or of the way from one to the next. Where a heading of
 * the player is empty, nothing of its kind is.
 */
public final class UnmetPrerequisites {
  /** A fourth finger this far above its place still lies in the hand, in semitones. */
  private static final double IN_THE_HAND = 0.3;

  private final Player player;
  private final BitSet positions = new BitSet();
  private final Optional<HandPatterns> patterns;
  private final boolean closed;
  private final boolean thumb;
  private final boolean back;
  private final boolean forward;

  public UnmetPrerequisites(Player player) {
    this.player = player;
    player.positions().ifPresent(all -> all.forEach(one -> positions.set(one.rank())));
    thumb = lists(FingerPattern.THUMB);
    if (thumb) {
      positions.set(Position.THUMB.rank());
    }
    closed = lists(FingerPattern.CLOSED);
    patterns = player.patterns().map(HandPatterns::new);
    back = lists(Extension.FIRST_BACK) || lists(FingerPattern.EXTENDED_BACK);
    forward = lists(Extension.FOURTH_FORWARD) || lists(FingerPattern.EXTENDED_FORWARD);
  }

  private boolean lists(FingerPattern pattern) {
    return player.patterns().map(all -> all.contains(pattern)).orElse(false);
  }

  private boolean lists(Extension extension) {
    return player.extensions().map(all -> all.contains(extension)).orElse(false);
  }

  /** Whether finger patterns are judged at all. */
  public boolean judgesPatterns() {
    return patterns.isPresent();
  }

  /** Whether a finger is down in a position that is not learned. */
  public boolean position(Placement placement) {
    return player.positions().isPresent()
        && !placement.open()
        && !positions.get(placement.frame().position().rank());
  }

  /** Whether a finger stops where no learned pattern has it. */
  public boolean pattern(Placement placement) {
    if (patterns.isEmpty() || !placement.stopped()) {
      return false;
    }
    return switch (placement.frame().shape()) {
      case LETTERS ->
          placement.frame().position().equals(Position.FIRST)
              && !reaches(placement)
              && patterns.get().unlearned(0, placement.finger().number(), placement.semitones());
      case CLOSED -> !closed;
      case EXTENDED_BACK, EXTENDED_FORWARD -> opens(placement) ? !extended(placement) : !closed;
      case THUMB -> player.positions().isEmpty() && !thumb;
    };
  }

  /** Which pattern it is that {@link #pattern} finds. */
  public static String patternTold(Placement placement) {
    return switch (placement.frame().shape()) {
      case LETTERS -> HandPatterns.placeTold(placement.finger().number(), placement.semitones());
      case CLOSED -> "the closed hand";
      case EXTENDED_BACK, EXTENDED_FORWARD ->
          opens(placement) ? openHand(placement) : "the closed hand";
      case THUMB -> "thumb position";
    };
  }

  /**
   * Whether two fingers that follow one another on a string, in one position, lie as far apart as
   * in no learned pattern, though each alone lies where one has it. Violin and viola only.
   */
  public boolean spacing(Placement before, Placement now) {
    return judgesPatterns()
        && before.frame().shape() == Shape.LETTERS
        && before.frame().index() == now.frame().index()
        && before.string() == now.string()
        && before.finger() != now.finger()
        && inHand(before)
        && inHand(now)
        && (before.finger().number() < now.finger().number()
            ? unlearned(before, now)
            : unlearned(now, before));
  }

  private boolean inHand(Placement placement) {
    return placement.stopped() && !reaches(placement) && !pattern(placement);
  }

  private boolean unlearned(Placement below, Placement above) {
    return patterns
        .orElseThrow()
        .unlearned(
            below.finger().number(),
            above.finger().number(),
            above.semitones() - below.semitones());
  }

  /** Which distance it is that {@link #spacing} finds. */
  public static String spacingTold(Placement before, Placement now) {
    boolean up = before.finger().number() < now.finger().number();
    Placement below = up ? before : now;
    Placement above = up ? now : before;
    return HandPatterns.spacingTold(
        below.finger().number(), above.finger().number(), above.semitones() - below.semitones());
  }

  /** Whether a finger stretches, or the hand opens for it, in a way that is not learned. */
  public boolean extension(Placement placement) {
    if (player.extensions().isEmpty() || !placement.stopped()) {
      return false;
    }
    return switch (placement.frame().shape()) {
      case LETTERS -> reaches(placement) && !extended(placement);
      case CLOSED, THUMB -> placement.stretch() > 0 && !forward;
      // Where patterns are listed, the open hand is one of them.
      case EXTENDED_BACK, EXTENDED_FORWARD ->
          patterns.isEmpty() && opens(placement) && !extended(placement);
    };
  }

  /** Which extension it is that {@link #extension} finds. */
  public static String extensionTold(Placement placement) {
    return switch (placement.frame().shape()) {
      case EXTENDED_BACK, EXTENDED_FORWARD -> openHand(placement);
      default ->
          switch (placement.finger()) {
            case FIRST -> "the first finger " + (back(placement) ? "drawn back" : "stretched");
            case SECOND -> "the second finger stretched";
            case THIRD -> "the third finger stretched";
            default -> "the fourth finger stretched";
          };
    };
  }

  /** Whether that way of reaching out is learned. */
  private boolean extended(Placement placement) {
    return back(placement) ? back : forward;
  }

  private static boolean back(Placement placement) {
    return switch (placement.frame().shape()) {
      case LETTERS, EXTENDED_BACK -> placement.finger() == Finger.FIRST;
      case CLOSED, EXTENDED_FORWARD, THUMB -> false;
    };
  }

  /** Whether the finger is one of those that the open hand of the cello moves. */
  private static boolean opens(Placement placement) {
    boolean first = placement.finger() == Finger.FIRST;
    return placement.frame().shape() == Shape.EXTENDED_BACK ? first : !first;
  }

  private static String openHand(Placement placement) {
    return back(placement) ? "the hand extended back" : "the hand extended forward";
  }

  /**
   * Whether on violin and viola the fourth finger takes the letter beyond its own, or the first, in
   * a position above 1st, the letter below: there it is the low first finger.
   */
  private static boolean reaches(Placement placement) {
    Frame frame = placement.frame();
    if (!placement.respelled() || frame.shape() != Shape.LETTERS) {
      return false;
    }
    return switch (placement.finger()) {
      case FIRST ->
          frame.position().compareTo(Position.FIRST) > 0
              && frame.first() - placement.semitones() > IN_THE_HAND;
      case FOURTH -> placement.semitones() - frame.highest() > IN_THE_HAND;
      default -> false;
    };
  }

  /** How many kinds of shift that are not learned this one is, at most two. */
  public int shift(Transition transition, Grip before, Grip now) {
    if (player.shifts().isEmpty() || !HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    return (shiftKind(transition, before, now) ? 1 : 0) + (slur(transition, before) ? 1 : 0);
  }

  /** Whether the way the hand shifts is not learned, slur aside. */
  public boolean shiftKind(Transition transition, Grip before, Grip now) {
    return !player.shifts().orElseThrow().contains(ShiftKind.of(transition, before, now));
  }

  /** Whether a slur joins the notes of a shift, and such shifts are not learned. */
  public boolean slur(Transition transition, Grip before) {
    return ShiftKind.slurred(transition, before)
        && !player.shifts().orElseThrow().contains(ShiftKind.SLUR);
  }
}
