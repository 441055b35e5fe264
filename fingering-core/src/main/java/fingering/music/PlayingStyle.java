package fingering.music;

/** How the music asks for a note to be played, by words and articulation marks. */
public enum PlayingStyle {
  /** Nothing special is printed. */
  PLAIN,
  /** Under words such as dolce, espressivo or cantabile: the line should sing. */
  SINGING,
  /** Staccato, spiccato or marcato: each note is short and separate. */
  DETACHED
}
