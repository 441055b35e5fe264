package fingering.abc.reading;

import com.google.common.collect.ImmutableMap;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decorations;
import fingering.abc.syntax.MeasureAccidentals.Reach;
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
public record NoteDefaults(
    BigFraction unit,
    AbcMeter meter,
    AbcKey key,
    AbcClef clef,
    Reach reach,
    ImmutableMap<Character, Optional<Decoration>> symbols) {

  /** What holds where a tune says nothing. */
  static final NoteDefaults START =
      new NoteDefaults(
          AbcMeter.FREE.unit(),
          AbcMeter.FREE,
          AbcKey.C_MAJOR,
          AbcClef.TREBLE,
          Reach.PITCH,
          Decorations.SHORT);

  NoteDefaults withUnit(BigFraction changed) {
    return new NoteDefaults(changed, meter, key, clef, reach, symbols);
  }

  NoteDefaults withMeter(AbcMeter changed) {
    return new NoteDefaults(unit, changed, key, clef, reach, symbols);
  }

  NoteDefaults withKey(AbcKey changed) {
    return new NoteDefaults(unit, meter, changed, clef, reach, symbols);
  }

  NoteDefaults withClef(AbcClef changed) {
    return new NoteDefaults(unit, meter, key, changed, reach, symbols);
  }

  NoteDefaults withReach(Reach changed) {
    return new NoteDefaults(unit, meter, key, clef, changed, symbols);
  }

  NoteDefaults withSymbol(char letter, Optional<Decoration> sign) {
    Map<Character, Optional<Decoration>> changed = new HashMap<>(symbols);
    changed.put(letter, sign);
    return new NoteDefaults(unit, meter, key, clef, reach, ImmutableMap.copyOf(changed));
  }
}
