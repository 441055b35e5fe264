package fingering.cli.help;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** The version of the program, from the manifest of its jar. */
public final class ProgramVersion implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"fingering " + number()};
  }

  /** The version number, or {@code (development)} outside a jar. */
  public static String number() {
    @Nullable String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return version == null ? "(development)" : version;
  }
}
