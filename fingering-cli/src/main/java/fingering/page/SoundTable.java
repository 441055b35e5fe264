package fingering.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.common.hash.Hashing;
import fingering.music.Measure;
import fingering.music.Passage;
import fingering.music.Tempo;
import fingering.music.print.PrintedPart;
import fingering.practice.BeatConversion;
import fingering.practice.NoteTimes;
import fingering.practice.NoteTimes.Bar;
import fingering.practice.NoteTimes.Change;
import fingering.practice.NoteTimes.Click;
import fingering.practice.NoteTimes.Sound;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * What the player of a page plays, as JSON. Times are in microseconds at the tempo to reach, from
 * the first click of the count-in. Moments are rows without names, because long music has
 * thousands.
 *
 * @param key changes when the music or a tempo changes
 * @param json the table
 */
public record SoundTable(String key, String json) {
  private static final int KEY_LENGTH = 16;

  /**
   * The table of a passage.
   *
   * @param printed what is printed in it
   * @param goal the tempo to reach; empty for the tempo of the passage
   * @param clean the tempo that is clean now; empty if it is not known
   */
  public static SoundTable of(
      Passage passage, PrintedPart printed, Optional<Tempo> goal, Optional<Tempo> clean) {
    Tempo top = goal.orElseGet(passage::tempo);
    int half = top.perMinute().divide(BigDecimal.valueOf(2), RoundingMode.HALF_UP).intValue();
    int practice =
        clean
            .map(tempo -> BeatConversion.in(tempo, top.unit()).perMinute().intValue())
            .filter(tempo -> tempo > 0 && top.perMinute().compareTo(BigDecimal.valueOf(tempo)) > 0)
            .orElse(half);
    NoteTimes times = NoteTimes.of(passage, printed, top);
    ObjectNode table = JsonNodeFactory.instance.objectNode();
    table
        .put("unit", top.unit().toString())
        .put("slowest", Math.max(1, Math.min(half, practice)))
        .put("practice", Math.max(1, practice))
        .put("goal", top.perMinute())
        .put("countIn", times.countIn());
    measures(table.putArray("measures"), times, passage);
    moments(table.putArray("moments"), times);
    clicks(table.putObject("clicks"), times);
    ArrayNode tempi = table.putArray("tempi");
    for (Change change : times.tempi()) {
      tempi.addObject().put("start", change.start()).put("tempo", change.tempo().toString());
    }
    String key =
        Hashing.sha256()
            .hashString(table.toString(), StandardCharsets.UTF_8)
            .toString()
            .substring(0, KEY_LENGTH);
    // In a page, a number of a measure must not end the element that holds the table.
    return new SoundTable(key, table.put("key", key).toString().replace("<", "\\u003c"));
  }

  private static void measures(ArrayNode measures, NoteTimes times, Passage passage) {
    for (Bar bar : times.measures()) {
      measures
          .addObject()
          .put("measure", bar.index())
          .put("number", passage.measure(bar.index()).map(Measure::number).orElse(""))
          .put("start", bar.start())
          .put("length", bar.length())
          .put("full", bar.full())
          .put("beat", bar.beat());
    }
  }

  /**
   * The notes of each moment: moment, start, whether they are plucked, their pitches, and their
   * lengths. Grace notes begin before the moment that they lead to.
   */
  private static void moments(ArrayNode moments, NoteTimes times) {
    List<Sound> sounds = times.sounds();
    for (int i = 0; i < sounds.size(); ) {
      Sound first = sounds.get(i);
      ArrayNode moment =
          moments.addArray().add(first.moment()).add(first.start()).add(first.pizzicato() ? 1 : 0);
      ArrayNode pitches = moment.addArray();
      ArrayNode lengths = moment.addArray();
      for (;
          i < sounds.size()
              && sounds.get(i).moment() == first.moment()
              && sounds.get(i).start() == first.start();
          i++) {
        pitches.add(sounds.get(i).note().midi());
        lengths.add(sounds.get(i).length());
      }
    }
  }

  private static void clicks(ObjectNode clicks, NoteTimes times) {
    for (Click click : times.clicks()) {
      if (click.start() >= times.countIn()) {
        String kind =
            switch (click.kind()) {
              case FIRST -> "first";
              case BEAT -> "beat";
              case SUBDIVISION -> "part";
            };
        clicks.withArray(kind).add(click.start());
      }
    }
  }
}
