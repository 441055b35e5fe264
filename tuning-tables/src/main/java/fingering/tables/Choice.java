package fingering.tables;

/** Something that a score or a request leaves open, and that has to be chosen. */
public enum Choice {
  PART,
  INSTRUMENT,
  VOICE,
  /** A tune of a file with several. */
  TUNE,
  /** The tempo at which practice begins. */
  START_TEMPO
}
