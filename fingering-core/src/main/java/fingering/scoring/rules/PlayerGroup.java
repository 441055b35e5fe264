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
 * Players who share one plan, such as a section of an orchestra. A skill that is new to any of them
 * is charged, and the smallest hand limits the grips.
 *
 * @param players the players, at least one
 */
public record PlayerGroup(ImmutableList<Player> players) {
  /** The presets, from the least to the most experienced players. */
  private static final ImmutableList<String> LEAST_EXPERIENCED_FIRST =
      ImmutableList.of("beginner", "intermediate", "common-practice", "advanced");

  private static final ImmutableSet<String> PLAYER_RULES =
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
      throw new FingeringException("a section without players; name at least one");
    }
  }

  /**
   * All rules of the library. A rule about new skills charges the maximum over the players, so a
   * skill that is new to two of them is charged once.
   */
  public ImmutableList<CostRule> rules() {
    ImmutableList<ImmutableList<CostRule>> all =
        players.stream().map(StandardRules::forPlayer).collect(ImmutableList.toImmutableList());
    ImmutableList<CostRule> first = all.get(0);
    ImmutableList.Builder<CostRule> rules = ImmutableList.builder();
    for (int i = 0; i < first.size(); i++) {
      int at = i;
      rules.add(
          players.size() > 1 && PLAYER_RULES.contains(first.get(i).id())
              ? max(all.stream().map(own -> own.get(at)).toList())
              : first.get(i));
    }
    return rules.build();
  }

  private static CostRule max(Iterable<CostRule> own) {
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
          (context, grip) -> max(rules, context, grip));
    }
    TransitionRule[] rules = ImmutableList.copyOf(own).toArray(new TransitionRule[0]);
    return new NamedTransitionRule(
        one.id(),
        one.name(),
        one.explanation(),
        one.unit(),
        (transition, before, now) -> max(rules, transition, before, now));
  }

  private static long max(NoteRule[] rules, NoteContext context, Grip grip) {
    long max = 0;
    for (NoteRule rule : rules) {
      max = Math.max(max, rule.amount(context, grip));
    }
    return max;
  }

  private static long max(TransitionRule[] rules, Transition transition, Grip before, Grip now) {
    long max = 0;
    for (TransitionRule rule : rules) {
      max = Math.max(max, rule.amount(transition, before, now));
    }
    return max;
  }

  /** The preset of the least experienced player; empty if no player has one. */
  public Optional<String> preset() {
    boolean none = players.stream().allMatch(player -> player.preset().isEmpty());
    return none
        ? Optional.empty()
        : players.stream()
            .map(player -> player.preset().orElse(Weights.presets().get(0)))
            .min(Comparator.comparingInt(LEAST_EXPERIENCED_FIRST::indexOf));
  }

  /**
   * The instrument of the players; empty if none of them names one.
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
              + played.get(0).nameInSentence()
              + " and the "
              + played.get(1).nameInSentence());
    }
    return played.stream().findFirst();
  }

  /**
   * The player whose hand reaches least in proportion to the string. The others can reach
   * everything that this player can. A player without a hand size has a medium hand.
   *
   * @param target the instrument; players who name this instrument play it in their own size
   */
  public Player smallestReach(Instrument target) {
    return players.stream()
        .min(Comparator.comparingDouble(player -> reach(player, target)))
        .orElseThrow();
  }

  private static double reach(Player player, Instrument target) {
    boolean own = player.instrument().map(Instrument::id).map(target.id()::equals).orElse(true);
    Instrument played =
        own && player.size().isPresent()
            ? target.sized(Instruments.standard().size(target, player.size().get()))
            : target;
    return player.hand().orElse(LeftHand.MEDIUM).reach(played) / played.stringLength();
  }

  /** The smallest hand on an instrument that all players play in the same size. */
  public LeftHand smallestHand(Instrument played) {
    return players.stream()
        .map(player -> player.hand().orElse(LeftHand.MEDIUM))
        .min(Comparator.comparingDouble(hand -> hand.reach(played)))
        .orElseThrow();
  }
}
