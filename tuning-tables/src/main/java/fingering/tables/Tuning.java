package fingering.tables;

import com.google.common.collect.ImmutableList;

/**
 * A way to string an instrument.
 *
 * @param instrument id of the instrument it is for
 * @param name its name: standard, five-string
 * @param strings the strings, the highest (I) first
 */
public record Tuning(String instrument, String name, ImmutableList<OpenString> strings) {
  /** Name of the tuning that every instrument has and that a part is read for by itself. */
  public static final String STANDARD = "standard";
}
