package fingering.playability;

import java.util.Locale;

/** A setting of a level. Each is a key of the level's file. */
public enum Threshold {
  PLAN(Form.NAME, "weights for the easiest fingering: the name of a preset"),
  TEMPO(Form.NAME, "speed of fingers and bow: the name of a preset"),
  HASTE(Form.PERCENT, "of the time needed; a place with less time is worth knowing"),
  RISKY_HASTE(Form.PERCENT, "of the time needed; a place with less time is risky"),

  HIGHEST_VIOLIN(Form.POSITION, "highest position on the violin; any: no limit"),
  HIGHEST_VIOLA(Form.POSITION, "highest position on the viola"),
  HIGHEST_CELLO(Form.POSITION, "highest position on the cello"),
  HIGHEST_BASS(Form.POSITION, "highest position on the double bass"),
  BASS_TO_LOW_C(Form.YES_NO, "whether some basses have a fifth string or an extension"),
  EXTENSIONS(Form.YES_NO, "whether fingers may stretch out of the frame of the hand"),

  STRINGS_AT_ONCE(Form.NUMBER, "strings that sound together"),
  STOPPED_AT_ONCE(Form.NUMBER, "stopped strings among these"),
  CHORD_HELD(Form.SECONDS, "longest chord of three or more strings"),
  UNDIVIDED_CHORD(Form.SEVERITY, "severity of an unmarked chord that needs a divided section"),

  NATURAL_HARMONICS(Form.YES_NO, "whether players know natural harmonics"),
  ARTIFICIAL_HARMONICS(Form.YES_NO, "whether players know artificial harmonics"),
  SLUR_OVER_A_STRING(Form.SECONDS, "least time from note to note in a slur that skips a string"),

  BOW_PP(Form.SECONDS, "length of one bow on the violin at pp and softer"),
  BOW_P(Form.SECONDS, "length of one bow at p"),
  BOW_MF(Form.SECONDS, "length of one bow at mp and mf, and without a dynamic"),
  BOW_F(Form.SECONDS, "length of one bow at f"),
  BOW_FF(Form.SECONDS, "length of one bow at ff and louder"),
  BOW_RISKY(Form.PERCENT, "of one bow; anything longer is risky"),

  TO_PIZZICATO(Form.SECONDS, "to change from arco to pizzicato, with the bow in the hand"),
  TO_ARCO(Form.SECONDS, "to change from pizzicato to arco"),
  MUTE_ON(Form.SECONDS, "to put the mute on"),
  MUTE_OFF(Form.SECONDS, "to take the mute off"),
  NEW_INSTRUMENT(Form.SECONDS, "to change instruments"),
  TUNE_A_STRING(Form.SECONDS, "to retune a string"),

  CLEFS_VIOLIN(Form.CLEFS, "clefs that violinists read"),
  CLEFS_VIOLA(Form.CLEFS, "clefs that violists read"),
  CLEFS_CELLO(Form.CLEFS, "clefs that cellists read"),
  CLEFS_BASS(Form.CLEFS, "clefs that bassists read"),
  BETWEEN_CLEFS(Form.SECONDS, "least time between two clef changes");

  /** The form of a value. */
  enum Form {
    /** The name of a preset or a level. */
    NAME("a name such as intermediate", "intermediate"),
    /** A whole number with or without a percent sign. */
    PERCENT("a percentage such as 85 %", "85 %"),
    /** Seconds in decimals. */
    SECONDS("seconds such as 1.5 s", "1.5 s"),
    /** A whole number. */
    NUMBER("a whole number such as 2", "2"),
    /** Yes or no. */
    YES_NO("yes or no", "yes"),
    /** A position, or any. */
    POSITION("a position such as 3, thumb or any", "3"),
    /** Names of clefs. */
    CLEFS("clefs such as [alto, treble]", "[alto, treble]"),
    /** A severity. */
    SEVERITY("unplayable, risky or worth-knowing", "risky");

    private final String description;
    private final String example;

    Form(String description, String example) {
      this.description = description;
      this.example = example;
    }

    /** What to write, with an example: {@code seconds such as 1.5 s}. */
    String description() {
      return description;
    }

    /** An example: {@code 1.5 s}. */
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

  /** Describes the setting. */
  public String explanation() {
    return explanation;
  }

  Form form() {
    return form;
  }
}
