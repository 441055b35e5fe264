package fingering.abc.reading;

import com.google.common.collect.ImmutableMap;
import fingering.abc.reading.MeasureAccidentals.Propagation;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.Decorations;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The settings that apply to the following notes.
 *
 * @param unit the unit note length in quarter notes
 * @param meter the meter
 * @param key the key signature
 * @param clef the clef
 * @param propagation the range of accidentals
 * @param symbols decorations by the letter that stands for them; empty for a letter without meaning
 */
public record NoteDefaults(
    BigFraction unit,
    AbcMeter meter,
    AbcKey key,
    AbcClef clef,
    Propagation propagation,
    ImmutableMap<Character, Optional<Decoration>> symbols) {

  /** The defaults of a tune without fields. */
  static final NoteDefaults START =
      new NoteDefaults(
          AbcMeter.FREE.unit(),
          AbcMeter.FREE,
          AbcKey.C_MAJOR,
          AbcClef.TREBLE,
          Propagation.PITCH,
          Decorations.SHORT);

  NoteDefaults withUnit(BigFraction changed) {
    return new NoteDefaults(changed, meter, key, clef, propagation, symbols);
  }

  NoteDefaults withMeter(AbcMeter changed) {
    return new NoteDefaults(unit, changed, key, clef, propagation, symbols);
  }

  NoteDefaults withKey(AbcKey changed) {
    return new NoteDefaults(unit, meter, changed, clef, propagation, symbols);
  }

  NoteDefaults withClef(AbcClef changed) {
    return new NoteDefaults(unit, meter, key, changed, propagation, symbols);
  }

  NoteDefaults withPropagation(Propagation changed) {
    return new NoteDefaults(unit, meter, key, clef, changed, symbols);
  }

  NoteDefaults withSymbol(char letter, Optional<Decoration> sign) {
    Map<Character, Optional<Decoration>> changed = new HashMap<>(symbols);
    changed.put(letter, sign);
    return new NoteDefaults(unit, meter, key, clef, propagation, ImmutableMap.copyOf(changed));
  }
}
