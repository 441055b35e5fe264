package fingering.lesson;

import com.google.common.base.Ascii;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Multimaps;
import fingering.music.SlurChanges;
import fingering.music.Tempo;
import fingering.practice.MetronomeScale;
import fingering.tables.Instrument;
import fingering.userfile.UserText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes lessons as YAML. */
final class LessonText {
  private LessonText() {}

  static String of(Lesson lesson) {
    return String.join("", keys(lesson).values());
  }

  /** The lines of each key that the lesson has, in their order. */
  static ImmutableMap<String, String> keys(Lesson lesson) {
    ImmutableMap.Builder<String, String> keys = ImmutableMap.builder();
    keys.put("score", line("score", lesson.score()));
    put(keys, "tune", lesson.tune());
    put(keys, "part", lesson.part());
    put(keys, "voice", lesson.voice());
    put(keys, "instrument", lesson.instrument().map(Instrument::id));
    put(keys, "measures", lesson.measures());
    put(keys, "tempo", lesson.tempo().map(LessonText::mark));
    if (!lesson.slurs().isEmpty()) {
      keys.put("slurs", slurs(lesson.slurs()));
    }
    put(keys, "student", lesson.student());
    if (!lesson.plans().isEmpty()) {
      keys.put(
          "plans",
          lesson.plans().stream()
              .map(LessonText::plan)
              .collect(Collectors.joining("", "plans:\n", "")));
    }
    lesson.hearing().ifPresent(hearing -> keys.put("hearing", hearing(hearing)));
    put(keys, "journal", lesson.journal());
    if (!lesson.circles().equals(LessonCircles.ALL)) {
      keys.put("circles", circles(lesson.circles()));
    }
    if (!lesson.ladder().equals(LessonLadder.USUAL)) {
      keys.put("ladder", ladder(lesson.ladder()));
    }
    put(keys, "below", lesson.below());
    return keys.buildOrThrow();
  }

  private static void put(
      ImmutableMap.Builder<String, String> keys, String key, Optional<String> value) {
    value.ifPresent(text -> keys.put(key, line(key, text)));
  }

  private static String line(String key, String value) {
    return key + ": " + UserText.value(value) + "\n";
  }

  private static String mark(Tempo tempo) {
    return tempo.toString().replace("=", " = ");
  }

  private static String slurs(SlurChanges slurs) {
    return slurs.changes().stream()
        .map(
            change ->
                UserText.value(change.from().toString()) + ": " + UserText.value(change.end()))
        .collect(Collectors.joining(", ", "slurs: {", "}\n"));
  }

  private static String plan(LessonPlan plan) {
    StringBuilder text =
        new StringBuilder("  - name: ").append(UserText.value(plan.name())).append('\n');
    plan.choose().ifPresent(choice -> text.append("    choose: ").append(choice).append('\n'));
    for (Map.Entry<String, List<String>> demands : Multimaps.asMap(plan.demands()).entrySet()) {
      text.append("    ").append(demands.getKey()).append(": ").append(values(demands.getValue()));
    }
    return text.toString();
  }

  private static String values(List<String> values) {
    return (values.size() == 1
            ? UserText.value(values.get(0))
            : values.stream().map(UserText::value).collect(Collectors.joining(", ", "[", "]")))
        + "\n";
  }

  private static String hearing(Hearing hearing) {
    List<String> parts = new ArrayList<>();
    hearing.date().ifPresent(date -> parts.add("date: " + UserText.value(date.toString())));
    hearing.tempo().ifPresent(tempo -> parts.add("tempo: " + mark(tempo)));
    return ImmutableList.copyOf(parts).stream()
        .collect(Collectors.joining(", ", "hearing: {", "}\n"));
  }

  private static String circles(LessonCircles circles) {
    List<String> parts = new ArrayList<>();
    if (circles.shown()) {
      parts.add("shown: yes");
    }
    if (!circles.leftOut().isEmpty()) {
      parts.add("not: " + values(ImmutableList.copyOf(circles.leftOut())).strip());
    }
    return "circles: {" + String.join(", ", parts) + "}\n";
  }

  private static String ladder(LessonLadder ladder) {
    List<String> parts = new ArrayList<>();
    if (!ladder.restDays().isEmpty()) {
      parts.add(
          "rest-days: "
              + values(ladder.restDays().stream().map(LessonLadder::name).toList()).strip());
    }
    if (ladder.metronome() != MetronomeScale.EXACT) {
      parts.add("metronome: " + Ascii.toLowerCase(ladder.metronome().name()));
    }
    return "ladder: {" + String.join(", ", parts) + "}\n";
  }
}
