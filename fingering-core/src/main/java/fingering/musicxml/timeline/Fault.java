package fingering.musicxml.timeline;

/** Kinds of elements of a part that cannot be read. None of them is a reason to refuse the part. */
public enum Fault {
  PITCH("a note has", "notes have", "no readable pitch", "left out"),
  PRINTED_LENGTH("a note has", "notes have", "no readable duration", "as long as printed"),
  NO_LENGTH("a note or rest has", "notes or rests have", "no readable duration", "without length"),
  NO_COMMON_DIVISION(
      "a duration has",
      "durations have",
      "no common division with the durations before",
      "without length"),
  MEASURE_LENGTH(
      "a measure has", "measures have", "no readable length", "as long as its time signature"),
  BACKUP(
      "a backup has", "backups have", "no readable duration", "read to the start of the measure"),
  FORWARD("a forward has", "forwards have", "no readable duration", "without length"),
  DIVISIONS(
      "a number of divisions is",
      "numbers of divisions are",
      "missing or not readable",
      "derived from printed note values"),
  TIME("a time signature is", "time signatures are", "not readable", "ignored"),
  KEY("a key signature is", "key signatures are", "not readable", "read as without accidentals"),
  TRANSPOSITION("a transposition is", "transpositions are", "not readable", "ignored"),
  TUNING("a tuning is", "tunings are", "not readable", "ignored"),
  OFFSET("an offset is", "offsets are", "not readable", "ignored");

  private final String one;
  private final String several;
  private final String problem;
  private final String result;

  Fault(String one, String several, String problem, String result) {
    this.one = one;
    this.several = several;
    this.problem = problem;
    this.result = result;
  }

  /** Returns a remark on some of them, without full stop. */
  String remark(int number, String places) {
    return number == 1
        ? "%s %s and is %s: %s".formatted(one, problem, result, places)
        : "%d %s %s and are %s: %s".formatted(number, several, problem, result, places);
  }
}
