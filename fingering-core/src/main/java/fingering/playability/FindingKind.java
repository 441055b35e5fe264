package fingering.playability;

import java.util.Locale;

/**
 * The kinds of findings. Their ids are stable. Each has a title and a one-sentence explanation,
 * with which reports list them as rules.
 */
public enum FindingKind {
  OUT_OF_RANGE("out of range", "A note is below the lowest string or beyond the fingerboard."),
  CHORD_NO_HAND(
      "chord out of reach", "No hand can stop these notes together, or two need the same string."),
  CHORD_TOO_QUICK(
      "chord too quick", "There is too little time to set the fingers for a double stop or chord."),
  CHORD_NOT_HELD(
      "chord not sustained",
      "The bow sustains only two strings, so the rest of a long chord stops."),
  DOUBLE_STOP_BEYOND_LEVEL(
      "double stop beyond the level",
      "Players at this level have not learned this kind of double stop or chord."),
  HELD_NOTE_LET_GO(
      "held note cut short", "A held note has to be released to play the notes above it."),
  LEAP_TOO_QUICK("leap too quick", "There is too little time for the hand to shift."),
  POSITION_BEYOND_LEVEL(
      "position beyond the level",
      "A note needs a higher position than players at this level have learned."),
  EXTENSION_BEYOND_LEVEL(
      "extension beyond the level",
      "A note needs an extension, which players at this level have not learned."),
  CROSSING_TOO_QUICK(
      "string crossing too quick", "There is too little time for the bow to cross to the string."),
  SLUR_OVER_A_STRING("slur over a string", "The bow has to skip a string within a slur."),
  HARMONIC_NOT_THERE("no such harmonic", "No string has this harmonic, or no hand can reach it."),
  HARMONIC_BEYOND_LEVEL(
      "harmonic beyond the level", "Players at this level have not learned this kind of harmonic."),
  TRILL_WITHOUT_FINGER(
      "no finger for the trill", "No finger is free for the upper note of the trill."),
  TRILL_TOO_SHORT("trill too short", "There is too little time for a trill."),
  TREMOLO_TOO_WIDE(
      "tremolo too wide",
      "The two notes of a tremolo must lie under one hand, on one string or two neighbouring ones."),
  ABOVE_COMFORTABLE_TEMPO(
      "above the comfortable tempo", "The notes are faster than fingers and bow play comfortably."),
  PLUCKED_TOO_QUICK("pizzicato too quick", "The notes are faster than a finger can pluck."),
  BOW_TOO_SHORT("bow too short", "A note or slur lasts longer than one bow at its dynamic."),
  CHANGE_TO_PIZZICATO(
      "no time for pizzicato", "There is too little time to change from the bow to pizzicato."),
  CHANGE_TO_ARCO(
      "no time for arco", "There is too little time to change from pizzicato back to the bow."),
  CHANGE_OF_MUTE(
      "no time for the mute", "There is too little time to put the mute on or take it off."),
  CHANGE_OF_INSTRUMENT(
      "no time to change instruments", "There is too little time to change instruments."),
  CHANGE_OF_TUNING("no time to retune", "There is too little time to retune a string."),
  CHANGES_OF_CLEF("clef changes too often", "The clef changes again soon after the last change."),
  CLEF_NOT_USUAL("unfamiliar clef", "Players at this level do not read this clef."),
  DIVISI_NOT_MARKED(
      "divisi not marked", "The part does not say whether to divide or to play double stops."),
  DIVISI_NOT_ENDED(
      "divisi not ended", "The part does not say where a divided section plays together again."),
  SCORDATURA_CONFLICT(
      "scordatura conflict", "The part does not fit the tuning that it was checked for."),
  STRING_WITHOUT_NOTE(
      "not on that string", "A note cannot be played on the string that the part asks for."),
  SHARED_PART("part for two instruments", "One staff is for two instruments of different range.");

  private final String title;
  private final String explanation;

  FindingKind(String title, String explanation) {
    this.title = title;
    this.explanation = explanation;
  }

  /** Returns the stable name in data: {@code out-of-range}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns the title, a few words. */
  public String title() {
    return title;
  }

  /** Returns an explanation of the problem, in one sentence. */
  public String explanation() {
    return explanation;
  }
}
