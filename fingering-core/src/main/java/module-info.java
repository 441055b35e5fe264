/**
 * Plans fingerings for parts of bowed string instruments: reads scores, enumerates and scores
 * fingerings, searches for the best plan, checks arrangements and plans practice.
 *
 * <p>Packages that are not exported are internal, and may change at any time.
 */
module fingering.core {
  requires transitive fingering.tables;
  requires transitive com.google.common;
  requires transitive org.apache.commons.numbers.fraction;
  requires static transitive org.jspecify;
  requires com.ctc.wstx;
  requires com.fasterxml.jackson.core;
  requires com.fasterxml.jackson.dataformat.yaml;
  requires jakarta.xml.bind;
  requires java.xml;
  requires org.codehaus.stax2;
  requires org.yaml.snakeyaml;

  // The XML binding has no module descriptor: its module is named after its file, and cannot
  // require the logging that it uses.
  requires org.slf4j;
  requires proxymusic;

  exports fingering.abc;
  exports fingering.abc.syntax;
  exports fingering.audition;
  exports fingering.demand;
  exports fingering.exercise;
  exports fingering.fingerboard;
  exports fingering.learning;
  exports fingering.lesson;
  exports fingering.music;
  exports fingering.music.builder;
  exports fingering.music.print;
  exports fingering.musicxml;
  exports fingering.musicxml.file;
  exports fingering.musicxml.marking;
  exports fingering.musicxml.reading;
  exports fingering.musicxml.writing;
  exports fingering.plan;
  exports fingering.plan.marks;
  exports fingering.playability;
  exports fingering.playability.check;
  exports fingering.player;
  exports fingering.practice;
  exports fingering.scoring;
  exports fingering.scoring.rules;
  exports fingering.search;
  exports fingering.tempo;
  exports fingering.userfile;
  exports fingering.verdict;

  // The tables beside these classes are read by fingering.tables.Table.
  opens fingering.engraving.glyph to
      fingering.tables;
  opens fingering.musicxml.words to
      fingering.tables;
  opens fingering.playability.check to
      fingering.tables;
  opens fingering.playability.part to
      fingering.tables;
  opens fingering.tempo to
      fingering.tables;
}
