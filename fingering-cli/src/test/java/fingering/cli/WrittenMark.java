package fingering.cli;

/** The mark at the end of files that the program writes, with a checksum of the rest. */
final class WrittenMark {
  private static final String MARK = "<!-- Written by Fingering; [^\\n]* -->\\n$";

  private WrittenMark() {}

  /** The text without its mark. */
  static String without(String text) {
    return text.replaceFirst(MARK, "");
  }
}
