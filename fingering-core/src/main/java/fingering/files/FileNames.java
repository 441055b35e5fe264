package fingering.files;

import java.nio.charset.Charset;

/** Texts that cannot be the name of a file on this computer. */
public final class FileNames {
  /** What Java puts in place of letters that it cannot read. */
  private static final char UNKNOWN = '\uFFFD';

  private FileNames() {}

  /** Why a text cannot be the name of a file, as a phrase without full stop. */
  public static String fault(String name) {
    return fault(name, Charset.forName(System.getProperty("sun.jnu.encoding", "UTF-8")));
  }

  /**
   * Why a text cannot be the name of a file.
   *
   * @param letters the letters that names of files may have in the present language setting
   */
  static String fault(String name, Charset letters) {
    return name.indexOf(UNKNOWN) < 0 && letters.newEncoder().canEncode(name)
        ? "'%s' is not a file name".formatted(name)
        : "'%s' has letters that the language setting lacks; run the command with LC_ALL=C.UTF-8, or rename the file"
            .formatted(name);
  }
}
