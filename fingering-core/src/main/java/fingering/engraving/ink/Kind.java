package fingering.engraving.ink;

/** What a drawn thing is. */
public enum Kind {
  STAFF,
  BAR_LINE,
  CLEF,
  KEY,
  METER,
  HEAD,
  LEDGER,
  ACCIDENTAL,
  DOT,
  REST,
  STEM,
  FLAG,
  BEAM,
  TREMOLO,
  TUPLET,
  ARTICULATION,
  ORNAMENT,
  TIE,
  SLUR,
  FINGER,
  STRING,
  POSITION,
  DYNAMIC,
  HAIRPIN,
  WORDS,
  TEMPO,
  NUMBER,
  ENDING,
  CIRCLE
}
