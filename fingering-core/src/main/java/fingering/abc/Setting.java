package fingering.abc;

import com.google.common.collect.ImmutableMap;
import fingering.abc.Accidentals.Reach;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What holds for the notes to come.
 *
 * @param unit the unit note length in quarter notes
 * @param symbols the letters that stand for a sign, or, where empty, for nothing
 */
record Setting(
    BigFraction unit,
    AbcMeter meter,
    AbcKey key,
    AbcClef clef,
    Reach reach,
    ImmutableMap<Character, Optional<Decoration>> symbols) {

  /** What holds where a tune says nothing. */
  static final Setting START =
      new Setting(
          AbcMeter.FREE.unit(),
          AbcMeter.FREE,
          AbcKey.C_MAJOR,
          AbcClef.TREBLE,
          Reach.PITCH,
          Decorations.SHORT);

  Setting withUnit(BigFraction changed) {
    return new Setting(changed, meter, key, clef, reach, symbols);
  }

  Setting withMeter(AbcMeter changed) {
    return new Setting(unit, changed, key, clef, reach, symbols);
  }

  Setting withKey(AbcKey changed) {
    return new Setting(unit, meter, changed, clef, reach, symbols);
  }

  Setting withClef(AbcClef changed) {
    return new Setting(unit, meter, key, changed, reach, symbols);
  }

  Setting withReach(Reach changed) {
    return new Setting(unit, meter, key, clef, changed, symbols);
  }

  Setting withSymbol(char letter, Optional<Decoration> sign) {
    Map<Character, Optional<Decoration>> changed = new HashMap<>(symbols);
    changed.put(letter, sign);
    return new Setting(unit, meter, key, clef, reach, ImmutableMap.copyOf(changed));
  }
}
