package fingering.abc.xml;

import fingering.abc.reading.MeasureItem;
import fingering.abc.reading.MeasureItem.NoteOrRest;
import fingering.abc.reading.Tune;
import fingering.abc.reading.TuneHeader;
import fingering.abc.reading.TuneMeasure;
import fingering.abc.syntax.AbcClef;
import fingering.abc.syntax.AbcKey;
import fingering.abc.syntax.AbcMeter;
import fingering.abc.syntax.AbcTempo;
import fingering.abc.syntax.BarLine;
import fingering.abc.syntax.Decoration;
import fingering.abc.syntax.NoteValue;
import fingering.tables.Letter;
import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Writes a tune as the text of a MusicXML 4.0 score with one part for each voice. It does not use
 * the writer of plain scores in {@code fingering.musicxml}, which has no ties, tuplets, grace
 * notes, decorations or repeats.
 */
public final class TuneXml {
  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
          + "<!DOCTYPE score-partwise PUBLIC \"-//Recordare//DTD MusicXML 4.0 Partwise//EN\""
          + " \"http://www.musicxml.org/dtds/partwise.dtd\">\n";

  private final Tune.Voice voice;
  private final BigFraction divisions;

  private TuneXml(Tune.Voice voice) {
    this.voice = voice;
    divisions = divisions(voice);
  }

  /** Returns the text of the score. */
  public static String of(Tune tune) {
    StringBuilder out = new StringBuilder(HEAD);
    score(tune).write(out, "");
    return out.toString();
  }

  /** The lowest number of divisions of a quarter note that makes every length a whole number. */
  private static BigFraction divisions(Tune.Voice voice) {
    BigInteger divisions = BigInteger.ONE;
    for (TuneMeasure measure : voice.measures()) {
      for (MeasureItem item : measure.items()) {
        if (item instanceof NoteOrRest sound) {
          BigInteger parts = smallest(sound).getDenominator();
          divisions = divisions.multiply(parts).divide(divisions.gcd(parts));
        }
      }
    }
    return BigFraction.of(divisions);
  }

  private static BigFraction smallest(NoteOrRest sound) {
    if (sound.grace() || sound.values().isEmpty()) {
      return sound.length();
    }
    BigFraction written = BigFraction.ZERO;
    for (NoteValue value : sound.values()) {
      written = written.add(value.quarters());
    }
    BigFraction last = sound.values().get(sound.values().size() - 1).quarters();
    return sound.length().multiply(last).divide(written);
  }

  private static XmlNode score(Tune tune) {
    TuneHeader header = tune.voices().get(0).header();
    XmlNode score = new XmlNode("score-partwise").with("version", "4.0");
    if (!header.title().isEmpty()) {
      score.add("work").add("work-title", header.title());
    }
    if (!header.composer().isEmpty()) {
      score.add("identification").add("creator", header.composer()).with("type", "composer");
    }
    XmlNode list = score.add("part-list");
    for (int i = 0; i < tune.voices().size(); i++) {
      Tune.Voice voice = tune.voices().get(i);
      String id = "P" + (i + 1);
      list.add("score-part").with("id", id).add("part-name", voice.header().name());
      new TuneXml(voice).measures(score.add("part").with("id", id));
    }
    return score;
  }

  private void measures(XmlNode part) {
    for (int i = 0; i < voice.measures().size(); i++) {
      measure(part, voice.measures().get(i), i == 0);
    }
  }

  private void measure(XmlNode part, TuneMeasure measure, boolean first) {
    XmlNode node = part.add("measure").with("number", measure.number());
    if (measure.implicit()) {
      node.with("implicit", "yes");
    }
    begin(node, measure);
    if (first) {
      start(node);
    }
    NoteXml notes = new NoteXml(node, divisions, new Beams(measure.items()));
    for (MeasureItem item : measure.items()) {
      if (item instanceof NoteOrRest sound) {
        notes.write(sound);
      } else {
        between(node, item);
      }
    }
    end(node, measure);
  }

  private static void begin(XmlNode node, TuneMeasure measure) {
    if (!measure.begins() && measure.ending().isEmpty()) {
      return;
    }
    XmlNode line = node.add("barline").with("location", "left");
    if (measure.begins()) {
      line.add("bar-style", "heavy-light");
    }
    measure.ending().ifPresent(numbers -> ending(line, numbers, "start"));
    if (measure.begins()) {
      line.add("repeat").with("direction", "forward");
    }
  }

  private static void end(XmlNode node, TuneMeasure measure) {
    boolean plain = measure.bar().map(BarLine::style).orElse("regular").equals("regular");
    if (plain && measure.endsEnding().isEmpty()) {
      return;
    }
    XmlNode line = node.add("barline").with("location", "right");
    measure.bar().ifPresent(bar -> line.add("bar-style", bar.style()));
    measure
        .endsEnding()
        .ifPresent(
            numbers -> {
              boolean repeats = measure.bar().map(bar -> bar.ends() > 0).orElse(false);
              ending(line, numbers, repeats ? "stop" : "discontinue");
            });
    int ends = measure.bar().map(BarLine::ends).orElse(0);
    if (ends > 0) {
      XmlNode repeat = line.add("repeat").with("direction", "backward");
      if (ends > 1) {
        repeat.with("times", ends + 1);
      }
    }
  }

  private static void ending(XmlNode line, String numbers, String type) {
    line.add("ending").with("number", numbers).with("type", type);
  }

  private void start(XmlNode node) {
    TuneHeader header = voice.header();
    XmlNode attributes = node.add("attributes");
    attributes.add("divisions", divisions);
    key(attributes, header.defaults().key());
    meter(attributes, header.defaults().meter());
    clef(attributes, header.defaults().clef());
    header.tempo().ifPresent(tempo -> tempo(node, tempo));
  }

  private static void key(XmlNode attributes, AbcKey signature) {
    XmlNode key = attributes.add("key");
    Optional<Integer> fifths = signature.fifths();
    if (fifths.isPresent()) {
      key.add("fifths", fifths.get());
      key.add("mode", signature.mode());
      return;
    }
    for (Letter letter : Letter.values()) {
      if (signature.alter(letter) != 0) {
        key.add("key-step", letter);
        key.add("key-alter", signature.alter(letter));
      }
    }
  }

  private static void meter(XmlNode attributes, AbcMeter meter) {
    XmlNode time = attributes.add("time");
    if (meter.length().isEmpty()) {
      time.add("senza-misura");
      return;
    }
    if (!meter.symbol().isEmpty()) {
      time.with("symbol", meter.symbol());
    }
    time.add("beats", meter.beats());
    time.add("beat-type", meter.beatType());
  }

  private static void clef(XmlNode attributes, AbcClef named) {
    XmlNode clef = attributes.add("clef");
    clef.add("sign", named.sign());
    clef.add("line", named.line());
    if (named.octaveChange() != 0) {
      clef.add("clef-octave-change", named.octaveChange());
    }
    if (named.transpose() != 0) {
      attributes.add("transpose").add("chromatic", named.transpose());
    }
  }

  private static void between(XmlNode node, MeasureItem item) {
    if (item instanceof MeasureItem.Change change) {
      XmlNode attributes = node.add("attributes");
      change.key().ifPresent(key -> key(attributes, key));
      change.meter().ifPresent(meter -> meter(attributes, meter));
      change.clef().ifPresent(clef -> clef(attributes, clef));
    } else if (item instanceof MeasureItem.TempoMark mark) {
      tempo(node, mark.tempo());
    } else if (item instanceof MeasureItem.Words words) {
      direction(node, words.below()).add("words", words.text());
    } else if (item instanceof MeasureItem.Label label) {
      direction(node, false).add("rehearsal", label.text());
    } else if (item instanceof MeasureItem.StaffSign staff) {
      sign(node, staff.sign());
    }
  }

  private static XmlNode direction(XmlNode node, boolean below) {
    return node.add("direction").with("placement", below ? "below" : "above").add("direction-type");
  }

  private static void sign(XmlNode node, Decoration sign) {
    switch (sign.kind()) {
      case DYNAMICS -> NoteXml.add(direction(node, true).add("dynamics"), sign);
      case WEDGE -> NoteXml.add(direction(node, true), sign);
      default -> NoteXml.add(direction(node, false), sign);
    }
  }

  private static void tempo(XmlNode node, AbcTempo tempo) {
    XmlNode direction = node.add("direction").with("placement", "above");
    if (!tempo.words().isEmpty()) {
      direction.add("direction-type").add("words", tempo.words());
    }
    tempo
        .unit()
        .ifPresent(
            unit -> {
              XmlNode mark = direction.add("direction-type").add("metronome");
              mark.add("beat-unit", unit.type());
              for (int dot = 0; dot < unit.dots(); dot++) {
                mark.add("beat-unit-dot");
              }
              mark.add("per-minute", tempo.perMinute());
            });
  }
}
