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
 * The skills that a note or a transition needs and a player has not learned. If the player lists no
 * skills of a kind, nothing of that kind is reported.
 */
public final class UnmetPrerequisites {
  /** Up to this distance from its place a finger is within the hand frame, in semitones. */
  private static final double IN_FRAME = 0.3;

  private final Player player;
  private final BitSet positions = new BitSet();
  private final Optional<HandPatterns> patterns;
  private final boolean closed;
  private final boolean thumb;
  private final boolean back;
  private final boolean forward;

  /** The unmet prerequisites of a player. */
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

  /** Whether the player lists finger patterns. */
  public boolean checksPatterns() {
    return patterns.isPresent();
  }

  /** Whether a finger is down in a position that is not learned. */
  public boolean isNewPosition(Placement placement) {
    return player.positions().isPresent()
        && !placement.open()
        && !positions.get(placement.frame().position().rank());
  }

  /** Whether a finger stops at a place that it has in no learned pattern. */
  public boolean isNewPattern(Placement placement) {
    if (patterns.isEmpty() || !placement.stopped()) {
      return false;
    }
    return switch (placement.frame().shape()) {
      case LETTERS ->
          placement.frame().position().equals(Position.FIRST)
              && !reaches(placement)
              && patterns.get().unlearned(0, placement.finger().number(), placement.semitones());
      case CLOSED -> !closed;
      case EXTENDED_BACK, EXTENDED_FORWARD ->
          moves(placement) ? !learnedExtension(placement) : !closed;
      case THUMB -> player.positions().isEmpty() && !thumb;
    };
  }

  /** The missing pattern of a placement for which {@link #isNewPattern} is true, in words. */
  public static String describePattern(Placement placement) {
    return switch (placement.frame().shape()) {
      case LETTERS ->
          HandPatterns.describePlace(placement.finger().number(), placement.semitones());
      case CLOSED -> "the closed hand";
      case EXTENDED_BACK, EXTENDED_FORWARD ->
          moves(placement) ? extendedHand(placement) : "the closed hand";
      case THUMB -> "thumb position";
    };
  }

  /**
   * Whether two successive fingers on one string, in one position, have a spacing that is in no
   * learned pattern, although each finger alone is. Violin and viola only.
   */
  public boolean isNewSpacing(Placement before, Placement now) {
    return checksPatterns()
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
    return placement.stopped() && !reaches(placement) && !isNewPattern(placement);
  }

  private boolean unlearned(Placement below, Placement above) {
    return patterns
        .orElseThrow()
        .unlearned(
            below.finger().number(),
            above.finger().number(),
            above.semitones() - below.semitones());
  }

  /** The spacing of two placements for which {@link #isNewSpacing} is true, in words. */
  public static String describeSpacing(Placement before, Placement now) {
    boolean up = before.finger().number() < now.finger().number();
    Placement below = up ? before : now;
    Placement above = up ? now : before;
    return HandPatterns.describeSpacing(
        below.finger().number(), above.finger().number(), above.semitones() - below.semitones());
  }

  /** Whether a placement needs an extension that is not learned. */
  public boolean isNewExtension(Placement placement) {
    if (player.extensions().isEmpty() || !placement.stopped()) {
      return false;
    }
    return switch (placement.frame().shape()) {
      case LETTERS -> reaches(placement) && !learnedExtension(placement);
      case CLOSED, THUMB -> placement.stretch() > 0 && !forward;
      // If the player lists patterns, the extended hand is one of them.
      case EXTENDED_BACK, EXTENDED_FORWARD ->
          patterns.isEmpty() && moves(placement) && !learnedExtension(placement);
    };
  }

  /** The extension of a placement for which {@link #isNewExtension} is true, in words. */
  public static String describeExtension(Placement placement) {
    return switch (placement.frame().shape()) {
      case EXTENDED_BACK, EXTENDED_FORWARD -> extendedHand(placement);
      default ->
          switch (placement.finger()) {
            case FIRST ->
                back(placement) ? "the first finger drawn back" : "an extended first finger";
            case SECOND -> "an extended second finger";
            case THIRD -> "an extended third finger";
            default -> "an extended fourth finger";
          };
    };
  }

  /** Whether the extension of a placement is learned. */
  private boolean learnedExtension(Placement placement) {
    return back(placement) ? back : forward;
  }

  private static boolean back(Placement placement) {
    return switch (placement.frame().shape()) {
      case LETTERS, EXTENDED_BACK -> placement.finger() == Finger.FIRST;
      case CLOSED, EXTENDED_FORWARD, THUMB -> false;
    };
  }

  /** Whether the finger is one of those that move in the cello extension. */
  private static boolean moves(Placement placement) {
    boolean first = placement.finger() == Finger.FIRST;
    return placement.frame().shape() == Shape.EXTENDED_BACK ? first : !first;
  }

  private static String extendedHand(Placement placement) {
    return back(placement) ? "the hand extended back" : "the hand extended forward";
  }

  /**
   * Whether, on violin and viola, the fourth finger reaches up to the next letter, or the first
   * back to the previous one. In 1st position the latter is the low first finger and no extension.
   */
  private static boolean reaches(Placement placement) {
    Frame frame = placement.frame();
    if (!placement.respelled() || frame.shape() != Shape.LETTERS) {
      return false;
    }
    return switch (placement.finger()) {
      case FIRST ->
          frame.position().compareTo(Position.FIRST) > 0
              && frame.first() - placement.semitones() > IN_FRAME;
      case FOURTH -> placement.semitones() - frame.highest() > IN_FRAME;
      default -> false;
    };
  }

  /** The number of kinds of this shift that are not learned, 0 to 2. */
  public int newShiftKinds(Transition transition, Grip before, Grip now) {
    if (player.shifts().isEmpty() || !HandMovement.shifts(transition, before, now)) {
      return 0;
    }
    return (isNewShiftKind(transition, before, now) ? 1 : 0)
        + (isNewSlur(transition, before) ? 1 : 0);
  }

  /** Whether the kind of a shift, apart from slurs, is not learned. */
  public boolean isNewShiftKind(Transition transition, Grip before, Grip now) {
    return !player.shifts().orElseThrow().contains(ShiftKind.of(transition, before, now));
  }

  /** Whether a shift is under a slur and slurred shifts are not learned. */
  public boolean isNewSlur(Transition transition, Grip before) {
    return ShiftKind.slurred(transition, before)
        && !player.shifts().orElseThrow().contains(ShiftKind.SLUR);
  }
}
