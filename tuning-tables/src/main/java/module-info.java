/** Pitches, keys, positions, and the strings, tunings and sizes of the bowed instruments. */
module fingering.tables {
  requires transitive com.google.common;
  requires static transitive org.jspecify;
  requires org.apache.commons.text;

  exports fingering.tables;
}
