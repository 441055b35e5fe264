package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Streams;
import fingering.fingerboard.Grip;
import fingering.fingerboard.LeftHand;
import fingering.player.Player;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.scoring.NoteRule;
import fingering.scoring.Transition;
import fingering.scoring.TransitionRule;
import fingering.scoring.Weights;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Comparator;
import java.util.Optional;

/**
 * Players who share one plan, as those of an orchestra's section do. What is new to any of them is
 * charged, as to the one who has most to learn there; a grip is one that the hand reaches which
 * reaches least.
 *
 * @param players the players, at least one
 */
public record PlayerGroup(ImmutableList<Player> players) {
  /** The presets, the least experienced player's first. */
  private static final ImmutableList<String> LEAST_FIRST =
      ImmutableList.of("beginner", "intermediate", "common-practice", "advanced");

  private static final ImmutableSet<String> OF_PLAYERS =
      ImmutableSet.of(
          PlayerRules.POSITION,
          PlayerRules.PATTERN,
          PlayerRules.SPACING,
          PlayerRules.EXTENSION,
          PlayerRules.SHIFT);

  /**
   * Checks the components.
   *
   * @throws FingeringException if there is no player
   */
  public PlayerGroup {
    if (players.isEmpty()) {
      throw new FingeringException("a section without players; name one at least");
    }
  }

  /**
   * Every rule, those on what is new to a player made for these: each charges a note, and the way
   * from one to the next, as much as it charges the player to whom most of it is new. What another
   * has learned helps nobody, and what is new to two is charged once.
   */
  public ImmutableList<CostRule> rules() {
    ImmutableList<ImmutableList<CostRule>> all =
        players.stream().map(StandardRules::forPlayer).collect(ImmutableList.toImmutableList());
    ImmutableList<CostRule> first = all.get(0);
    ImmutableList.Builder<CostRule> rules = ImmutableList.builder();
    for (int i = 0; i < first.size(); i++) {
      int at = i;
      rules.add(
          players.size() > 1 && OF_PLAYERS.contains(first.get(i).id())
              ? most(all.stream().map(own -> own.get(at)).toList())
              : first.get(i));
    }
    return rules.build();
  }

  private static CostRule most(Iterable<CostRule> own) {
    CostRule one = own.iterator().next();
    if (Streams.stream(own).allMatch(CostRule::idle)) {
      return one;
    }
    if (one instanceof NoteRule) {
      NoteRule[] rules = ImmutableList.copyOf(own).toArray(new NoteRule[0]);
      return new NamedNoteRule(
          one.id(),
          one.name(),
          one.explanation(),
          one.unit(),
          (context, grip) -> most(rules, context, grip));
    }
    TransitionRule[] rules = ImmutableList.copyOf(own).toArray(new TransitionRule[0]);
    return new NamedTransitionRule(
        one.id(),
        one.name(),
        one.explanation(),
        one.unit(),
        (transition, before, now) -> most(rules, transition, before, now));
  }

  private static long most(NoteRule[] rules, NoteContext context, Grip grip) {
    long most = 0;
    for (NoteRule rule : rules) {
      most = Math.max(most, rule.amount(context, grip));
    }
    return most;
  }

  private static long most(TransitionRule[] rules, Transition transition, Grip before, Grip now) {
    long most = 0;
    for (TransitionRule rule : rules) {
      most = Math.max(most, rule.amount(transition, before, now));
    }
    return most;
  }

  /** The preset of the least experienced; empty where no player has one. */
  public Optional<String> preset() {
    boolean none = players.stream().allMatch(player -> player.preset().isEmpty());
    return none
        ? Optional.empty()
        : players.stream()
            .map(player -> player.preset().orElse(Weights.presets().get(0)))
            .min(Comparator.comparingInt(LEAST_FIRST::indexOf));
  }

  /**
   * What they play; empty where no player says.
   *
   * @throws FingeringException if they play different instruments
   */
  public Optional<Instrument> instrument() {
    ImmutableList<Instrument> played =
        players.stream()
            .flatMap(player -> player.instrument().stream())
            .distinct()
            .collect(ImmutableList.toImmutableList());
    if (played.size() > 1) {
      throw new FingeringException(
          "a section plays one instrument, and these players play the "
              + played.get(0).spoken()
              + " and the "
              + played.get(1).spoken());
    }
    return played.stream().findFirst();
  }

  /**
   * The player whose hand reaches least, in proportion to the string. What lies in reach of this
   * one does for all; a hand of which nothing is said is a medium one.
   *
   * @param of the instrument; each plays it in their own size, where it is the player's own
   *     instrument, else as it is
   */
  public Player narrowest(Instrument of) {
    return players.stream()
        .min(Comparator.comparingDouble(player -> reach(player, of)))
        .orElseThrow();
  }

  private static double reach(Player player, Instrument of) {
    boolean own = player.instrument().map(Instrument::id).map(of.id()::equals).orElse(true);
    Instrument played =
        own && player.size().isPresent()
            ? of.sized(Instruments.standard().size(of, player.size().get()))
            : of;
    return player.hand().orElse(LeftHand.MEDIUM).reach(played) / played.stringLength();
  }

  /** The hand that reaches least on an instrument that all play in one size. */
  public LeftHand smallestHand(Instrument played) {
    return players.stream()
        .map(player -> player.hand().orElse(LeftHand.MEDIUM))
        .min(Comparator.comparingDouble(hand -> hand.reach(played)))
        .orElseThrow();
  }
}
