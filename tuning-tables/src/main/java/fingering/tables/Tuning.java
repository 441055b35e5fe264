package fingering.tables;

import com.google.common.collect.ImmutableList;

/**
 * A tuning: the pitches of the open strings.
 *
 * @param instrument id of the instrument
 * @param name the name, for example standard or five-string
 * @param strings the strings, the highest (I) first
 */
public record Tuning(String instrument, String name, ImmutableList<OpenString> strings) {
  /** The name of the tuning that every instrument has, and that is the default. */
  public static final String STANDARD = "standard";
}
