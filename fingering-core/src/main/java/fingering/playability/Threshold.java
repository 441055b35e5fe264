package fingering.playability;

import java.util.Locale;

/** What a level says of its players. Each is a line of the level's file. */
public enum Threshold {
  PLAN(Form.NAME, "preset of the rules by which the easiest fingering is sought"),
  TEMPO(Form.NAME, "level of docs/tempo.md that says how quick fingers and bow are"),
  HASTE(Form.PERCENT, "of the time needed; with less than that a spot is worth knowing"),
  RISKY_HASTE(Form.PERCENT, "of the time needed; with less than that it is risky"),

  HIGHEST_VIOLIN(Form.POSITION, "highest position on the violin; 'any' for no limit"),
  HIGHEST_VIOLA(Form.POSITION, "highest position on the viola"),
  HIGHEST_CELLO(Form.POSITION, "highest position on the cello, 'thumb' with the thumb"),
  HIGHEST_BASS(Form.POSITION, "highest position on the double bass, 'thumb' with the thumb"),
  BASS_TO_LOW_C(Form.YES_NO, "whether some basses have a fifth string or an extension"),
  EXTENSIONS(Form.YES_NO, "whether a finger may reach out of the hand's frame"),

  STRINGS_AT_ONCE(Form.NUMBER, "strings that sound together"),
  STOPPED_AT_ONCE(Form.NUMBER, "of them, strings that are stopped"),
  CHORD_HELD(Form.SECONDS, "a chord of three strings or more may be written so long"),
  UNDIVIDED_CHORD(Form.SEVERITY, "a chord in a section that only a divided one can play, unmarked"),

  NATURAL_HARMONICS(Form.YES_NO, "whether natural harmonics are known"),
  ARTIFICIAL_HARMONICS(Form.YES_NO, "whether artificial harmonics are known"),
  SLUR_OVER_A_STRING(Form.SECONDS, "a slur over a string between needs so long from note to note"),

  BOW_PP(Form.SECONDS, "a violin's bow lasts so long at pp and softer"),
  BOW_P(Form.SECONDS, "the same at p"),
  BOW_MF(Form.SECONDS, "the same at mp, mf and where nothing is marked"),
  BOW_F(Form.SECONDS, "the same at f"),
  BOW_FF(Form.SECONDS, "the same at ff and louder"),
  BOW_RISKY(Form.PERCENT, "of a bow; what is longer than that is risky"),

  TO_PIZZICATO(Form.SECONDS, "from the bow to plucking"),
  TO_ARCO(Form.SECONDS, "from plucking to the bow"),
  MUTE_ON(Form.SECONDS, "to put the mute on"),
  MUTE_OFF(Form.SECONDS, "to take the mute off"),
  NEW_INSTRUMENT(Form.SECONDS, "to take another instrument"),
  TUNE_A_STRING(Form.SECONDS, "to tune a string anew"),

  CLEFS_VIOLIN(Form.CLEFS, "clefs that violinists read"),
  CLEFS_VIOLA(Form.CLEFS, "clefs that violists read"),
  CLEFS_CELLO(Form.CLEFS, "clefs that cellists read"),
  CLEFS_BASS(Form.CLEFS, "clefs that bassists read"),
  BETWEEN_CLEFS(Form.SECONDS, "from one change of clef to the next");

  /** How a value is written. */
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

    /** As in: write {@code seconds such as 1.5}. */
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

  /** The key in a level's file. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it says. */
  public String explanation() {
    return explanation;
  }

  Form form() {
    return form;
  }
}
