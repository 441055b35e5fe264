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
import fingering.scoring.PacedNote;
import fingering.scoring.TimedTransition;
import java.util.ArrayList;
import java.util.List;

/** The way through some notes taken by name, measured by single rules. */
final class RuleCase {
  private final Taken hand;
  private final Passage passage;
  private final List<Grip> grips = new ArrayList<>();

  private RuleCase(String instrument, Passage passage) {
    this.hand = Taken.on(instrument);
    this.passage = passage;
  }

  /** Music in the words of {@link Music}, at a quarter a second. */
  static RuleCase on(String instrument, String events) {
    return new RuleCase(instrument, Music.on(instrument).tempo("quarter=60").notes(events));
  }

  /** Takes the next note on that string by that finger in that position. */
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

  /** All that is new to a player on the way, in words. */
  List<String> newTo(Player player) {
    return SkillGap.of(player, passage.moments(), ImmutableList.copyOf(grips)).stream()
        .map(SkillGap::what)
        .toList();
  }

  /** What the rule charges the last note taken. */
  long charged(String id) {
    return charged(id, Player.UNKNOWN);
  }

  /** What the rule charges the last note taken, where a player takes it. */
  long charged(String id, Player player) {
    return charged(id, StandardRules.forPlayer(player));
  }

  /** What the one of these rules that has the id charges the last note taken. */
  long charged(String id, List<CostRule> rules) {
    CostRule rule = rules.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    int last = grips.size() - 1;
    if (rule.lookBack() == 0) {
      return PacedNote.of(moment(last)).amount(rule, grips.get(last));
    }
    return TimedTransition.between(moment(last - 1), moment(last))
        .amount(rule, grips.get(last - 1), grips.get(last));
  }
}
