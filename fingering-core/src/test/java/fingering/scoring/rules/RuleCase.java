package fingering.scoring.rules;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.Grip;
import fingering.fingerboard.PitchRequest;
import fingering.fingerboard.Taken;
import fingering.music.Moment;
import fingering.music.Music;
import fingering.music.Passage;
import fingering.player.Player;
import fingering.scoring.CostRule;
import fingering.scoring.NoteContext;
import fingering.scoring.Scoring;
import fingering.scoring.TimedTransition;
import java.util.ArrayList;
import java.util.List;

/** A fingering of a few notes, given by name, and what single rules charge for it. */
final class RuleCase {
  private final Taken hand;
  private final Passage passage;
  private final List<Grip> grips = new ArrayList<>();

  private RuleCase(String instrument, Passage passage) {
    this.hand = Taken.on(instrument);
    this.passage = passage;
  }

  /** Music in the notation of {@link Music}, at 60 quarters a minute. */
  static RuleCase on(String instrument, String events) {
    return new RuleCase(instrument, Music.on(instrument).tempo("quarter=60").notes(events));
  }

  /** Plays the next note on a string with a finger in a position. */
  RuleCase by(int string, String finger, String position) {
    PitchRequest note = PitchRequest.of(passage.moments().get(grips.size()).starting().get(0));
    grips.add(hand.by(note, string, finger, position));
    return this;
  }

  RuleCase by(Grip grip) {
    grips.add(grip);
    return this;
  }

  Moment moment(int index) {
    return passage.moments().get(index);
  }

  /** The skills in the fingering that are new to a player, in words. */
  List<String> newTo(Player player) {
    return SkillGap.of(player, passage.moments(), ImmutableList.copyOf(grips)).stream()
        .map(SkillGap::skill)
        .toList();
  }

  /** The amount that a rule charges for the last note. */
  long charged(String id) {
    return charged(id, Player.UNKNOWN);
  }

  /** The amount that a rule charges for the last note, for a player. */
  long charged(String id, Player player) {
    return charged(id, StandardRules.forPlayer(player));
  }

  /** The amount that the rule with an id, among these, charges for the last note. */
  long charged(String id, List<CostRule> rules) {
    CostRule rule = rules.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    int last = grips.size() - 1;
    if (rule.lookBack() == 0) {
      Grip grip = grips.get(last);
      return Scoring.amount(rule, NoteContext.of(moment(last)), ImmutableList.of(grip), grip);
    }
    return TimedTransition.between(moment(last - 1), moment(last))
        .amount(rule, grips.get(last - 1), grips.get(last));
  }
}
