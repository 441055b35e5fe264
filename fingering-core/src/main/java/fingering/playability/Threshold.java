package fingering.playability;

import java.util.Locale;

/** The thresholds of a level. Each is a line of the level's file. */
public enum Threshold {
  PLAN(Form.NAME, "the preset of weights for the easiest fingering (docs/presets.md)"),
  TEMPO(Form.NAME, "the level for the speed of fingers and bow (docs/tempo.md)"),
  HASTE(Form.PERCENT, "a place is worth knowing if it has less than this share of the time needed"),
  RISKY_HASTE(Form.PERCENT, "a place is risky if it has less than this share of the time needed"),

  HIGHEST_VIOLIN(Form.POSITION, "the highest position on the violin; 'any' for no limit"),
  HIGHEST_VIOLA(Form.POSITION, "the highest position on the viola"),
  HIGHEST_CELLO(Form.POSITION, "the highest position on the cello; 'thumb' for thumb position"),
  HIGHEST_BASS(
      Form.POSITION, "the highest position on the double bass; 'thumb' for thumb position"),
  BASS_TO_LOW_C(Form.YES_NO, "whether some basses have a fifth string or a C extension"),
  EXTENSIONS(Form.YES_NO, "whether players use extensions"),

  STRINGS_AT_ONCE(Form.NUMBER, "the most strings played at once"),
  STOPPED_AT_ONCE(Form.NUMBER, "the most stopped strings played at once"),
  CHORD_HELD(Form.SECONDS, "the longest chord of three or more strings"),
  UNDIVIDED_CHORD(Form.SEVERITY, "the severity of an unmarked divisi"),

  NATURAL_HARMONICS(Form.YES_NO, "whether players know natural harmonics"),
  ARTIFICIAL_HARMONICS(Form.YES_NO, "whether players know artificial harmonics"),
  SLUR_OVER_A_STRING(Form.SECONDS, "the least time between two slurred notes that skip a string"),

  BOW_PP(Form.SECONDS, "the duration of one violin bow at pp and softer"),
  BOW_P(Form.SECONDS, "the duration of one violin bow at p"),
  BOW_MF(Form.SECONDS, "the duration of one violin bow at mp, at mf and without a dynamic"),
  BOW_F(Form.SECONDS, "the duration of one violin bow at f"),
  BOW_FF(Form.SECONDS, "the duration of one violin bow at ff and louder"),
  BOW_RISKY(Form.PERCENT, "a slur is risky if it is longer than this share of a bow"),

  TO_PIZZICATO(Form.SECONDS, "the time to change from the bow to pizzicato"),
  TO_ARCO(Form.SECONDS, "the time to change from pizzicato to the bow"),
  MUTE_ON(Form.SECONDS, "the time to put the mute on"),
  MUTE_OFF(Form.SECONDS, "the time to take the mute off"),
  NEW_INSTRUMENT(Form.SECONDS, "the time to change to another instrument"),
  TUNE_A_STRING(Form.SECONDS, "the time to retune a string"),

  CLEFS_VIOLIN(Form.CLEFS, "the clefs that violinists read"),
  CLEFS_VIOLA(Form.CLEFS, "the clefs that violists read"),
  CLEFS_CELLO(Form.CLEFS, "the clefs that cellists read"),
  CLEFS_BASS(Form.CLEFS, "the clefs that bassists read"),
  BETWEEN_CLEFS(Form.SECONDS, "the least time between two clef changes");

  /** The form of a value. */
  enum Form {
    /** The name of a preset or a level. */
    NAME("a name such as intermediate"),
    /** A whole number with or without a percent sign. */
    PERCENT("a percentage such as 85 %"),
    /** Seconds in decimals. */
    SECONDS("seconds such as 1.5 s"),
    /** A whole number. */
    NUMBER("a whole number such as 2"),
    /** Yes or no. */
    YES_NO("yes or no"),
    /** A position, or any. */
    POSITION("a position such as 3, thumb or any"),
    /** Names of clefs with commas between. */
    CLEFS("clefs such as 'alto, treble'"),
    /** A severity. */
    SEVERITY("unplayable, risky or worth-knowing");

    private final String example;

    Form(String example) {
      this.example = example;
    }

    /** Returns what a value has to be, for messages: {@code seconds such as 1.5 s}. */
    String example() {
      return example;
    }
  }

  private final Form form;
  private final String explanation;

  Threshold(Form form, String explanation) {
    this.form = form;
    this.explanation = explanation;
  }

  /** Returns the key in a level's file. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns an explanation, as a phrase without a full stop. */
  public String explanation() {
    return explanation;
  }

  Form form() {
    return form;
  }
}
