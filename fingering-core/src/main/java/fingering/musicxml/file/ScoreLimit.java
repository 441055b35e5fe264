package fingering.musicxml.file;

/**
 * A quantity that is limited in a score file. The defaults are several times what the longest opera
 * in full score needs. They prevent a damaged or hostile file from filling the memory.
 */
public enum ScoreLimit {
  /** Bytes of a file. */
  BYTES("bytes", "bytes", 128L << 20, 1, 512L << 20),
  /** Unpacked bytes of a compressed score and everything else in its archive. */
  UNPACKED("unpacked", "bytes when unpacked", 256L << 20, 1, 512L << 20),
  /** Ratio of unpacked to packed size of an archive entry, checked beyond 64 MiB. */
  RATIO("ratio", "times its packed size", 200, 1, 100_000),
  /** Files and folders in an archive. */
  FILES("files", "files in it", 1_000, 1, 1_000_000),
  /** Depth of nested elements; music needs about ten. */
  NESTING("nesting", "levels of nested elements", 100, 10, 900),
  /** Parts of a score. */
  PARTS("parts", "parts", 500, 1, 100_000),
  /** Measures of all parts together. */
  MEASURES("measures", "measures in all parts", 500_000, 1, 50_000_000),
  /** Notes and rests of all parts together. */
  NOTES("notes", "notes in all parts", 1_000_000, 1, 50_000_000);

  private final String key;
  private final String words;
  private final long defaultValue;
  private final long min;
  private final long max;

  ScoreLimit(String key, String words, long defaultValue, long min, long max) {
    this.key = key;
    this.words = words;
    this.defaultValue = defaultValue;
    this.min = min;
    this.max = max;
  }

  /** The name that users write: {@code measures}. */
  public String key() {
    return key;
  }

  /** The quantity in words that follow a number: {@code measures in all parts}. */
  public String words() {
    return words;
  }

  /** The default value. */
  public long defaultValue() {
    return defaultValue;
  }

  /** The lowest permitted value. */
  public long min() {
    return min;
  }

  /** The highest permitted value. */
  public long max() {
    return max;
  }
}
