package fingering.musicxml.file;

/**
 * Something that a score file may hold only so much of. The usual figures are several times what
 * the longest opera in full score needs; they keep a damaged or hostile file from filling the
 * memory.
 */
public enum ScoreLimit {
  /** Bytes of a file. */
  BYTES("bytes", "bytes", 128L << 20, 1, 512L << 20),
  /** Bytes that a compressed score unpacks to, with all that lies beside it in its archive. */
  UNPACKED("unpacked", "bytes when unpacked", 256L << 20, 1, 512L << 20),
  /** How many times its packed size something in an archive may unpack to, beyond 64 MiB. */
  RATIO("ratio", "times its packed size", 200, 1, 100_000),
  /** Files in an archive, folders among them. */
  FILES("files", "files in it", 1_000, 1, 1_000_000),
  /** Elements within elements; music needs about ten. */
  NESTING("nesting", "elements one inside another", 100, 10, 900),
  /** Parts of a score. */
  PARTS("parts", "parts", 500, 1, 100_000),
  /** Measures, those of all parts together. */
  MEASURES("measures", "measures in all parts", 500_000, 1, 50_000_000),
  /** Notes, rests among them, those of all parts together. */
  NOTES("notes", "notes in all parts", 1_000_000, 1, 50_000_000);

  private final String key;
  private final String words;
  private final long usual;
  private final long least;
  private final long most;

  ScoreLimit(String key, String words, long usual, long least, long most) {
    this.key = key;
    this.words = words;
    this.usual = usual;
    this.least = least;
    this.most = most;
  }

  /** The name by which a user sets it: {@code measures}. */
  public String key() {
    return key;
  }

  /** What is counted, as it follows a number: {@code measures in all parts}. */
  public String words() {
    return words;
  }

  /** The figure where nobody sets another. */
  public long usual() {
    return usual;
  }

  /** The lowest figure that can be set. */
  public long least() {
    return least;
  }

  /** The highest figure that can be set. */
  public long most() {
    return most;
  }
}
