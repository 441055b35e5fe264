package fingering.playability;

import java.util.Locale;

/**
 * The kinds of findings. Their ids are stable, and each is explained in one sentence, so that a
 * report can list them as its rules.
 */
public enum FindingKind {
  OUT_OF_RANGE("out of range", "A note lies below the lowest string or beyond the fingerboard."),
  CHORD_NO_HAND("chord no hand takes", "No hand or bow can take these notes together."),
  CHORD_TOO_QUICK("chord too quick", "A double stop or chord has too little time to be set."),
  CHORD_NOT_HELD(
      "chord not held", "A bow holds two strings; of a longer chord the others fall silent."),
  DOUBLE_STOP_BEYOND_LEVEL(
      "double stop beyond the level", "The level has not learned such double stops or chords."),
  HELD_NOTE_LET_GO(
      "held note let go", "A note cannot be held on while the notes over it are played."),
  LEAP_TOO_QUICK("leap too quick", "The hand has too little time to shift."),
  POSITION_BEYOND_LEVEL("position beyond the level", "The hand has to go higher than the level."),
  EXTENSION_BEYOND_LEVEL(
      "extension beyond the level",
      "A finger has to reach out further than the level has learned."),
  CROSSING_TOO_QUICK(
      "string crossing too quick", "The bow has too little time to reach, or pass over, a string."),
  SLUR_OVER_A_STRING(
      "slur over a string", "Under a slur the bow has to pass over a string that lies between."),
  HARMONIC_NOT_THERE("no such harmonic", "No string has the harmonic, or no hand can touch it."),
  HARMONIC_BEYOND_LEVEL(
      "harmonic beyond the level", "The level has not learned this kind of harmonic."),
  TRILL_WITHOUT_FINGER(
      "trill without a finger", "No finger is free for the upper note of the trill."),
  TRILL_TOO_SHORT("trill too short", "There is too little time to trill."),
  TREMOLO_TOO_WIDE(
      "tremolo too wide",
      "A tremolo of two notes has to lie under one hand, on one string or on neighbouring strings."),
  ABOVE_COMFORTABLE_TEMPO(
      "above the comfortable tempo", "The notes go faster than fingers and bow follow at ease."),
  PLUCKED_TOO_QUICK("pizzicato too quick", "The notes go faster than a finger plucks."),
  BOW_TOO_SHORT("bow too short", "A note or slur lasts longer than a bow at its dynamic."),
  CHANGE_TO_PIZZICATO("no time for pizzicato", "There is too little time to go from bow to pluck."),
  CHANGE_TO_ARCO("no time for the bow", "There is too little time to take up the bow again."),
  CHANGE_OF_MUTE("no time for the mute", "There is too little time to put a mute on or off."),
  CHANGE_OF_INSTRUMENT(
      "no time for the instrument", "There is too little time to change the instrument."),
  CHANGE_OF_TUNING("no time to tune", "There is too little time to tune a string anew."),
  CHANGES_OF_CLEF("many changes of clef", "The clef changes again before players have settled."),
  CLEF_NOT_USUAL("clef not usual", "Players of the level do not read this clef."),
  DIVISI_NOT_MARKED(
      "divisi not marked", "A section has to guess whether it divides or plays double stops."),
  DIVISI_NOT_ENDED(
      "divisi not ended", "After a divided passage the part does not say that all play again."),
  SCORDATURA_CONFLICT(
      "scordatura in conflict", "The strings as tuned do not have what the part asks for."),
  STRING_WITHOUT_NOTE("not on that string", "A note does not lie on the string that is asked for."),
  SHARED_PART("part for two instruments", "One staff serves instruments of different range.");

  private final String title;
  private final String explanation;

  FindingKind(String title, String explanation) {
    this.title = title;
    this.explanation = explanation;
  }

  /** The name in data, lower case with hyphens: {@code out-of-range}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A few words, as a heading. */
  public String title() {
    return title;
  }

  /** What is wrong, in one sentence. */
  public String explanation() {
    return explanation;
  }
}
