package fingering.page.student;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSortedSet;
import fingering.page.live.StudentView;
import fingering.page.live.StudentView.Choice;
import fingering.page.live.StudentView.Group;
import fingering.page.live.StudentView.Tick;
import fingering.player.Extension;
import fingering.player.ShiftKind;
import fingering.scoring.Weights;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import fingering.tables.Position;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The menus and ticks of the form of a student.
 *
 * @param form the form
 * @param fields what is typed in it
 * @param instrument the chosen instrument; empty if none is
 * @param positions the positions to tick
 */
record StudentFormParts(
    StudentForm form,
    ImmutableMap<String, String> fields,
    Optional<Instrument> instrument,
    ImmutableSortedSet<Position> positions) {

  StudentView.Choices choices() {
    return new StudentView.Choices(
        menu(
            StudentForm.INSTRUMENT,
            text("student.choose"),
            Instruments.standard().all(),
            Instrument::id,
            Instrument::name),
        menu(
            StudentForm.LEVEL,
            form.isFresh() ? "" : text("student.not-said"),
            ImmutableList.of("beginner", "intermediate", Weights.presets().get(0), "advanced"),
            level -> level,
            StudentWords::level),
        menu(
            StudentForm.HAND,
            text("student.hand-usual"),
            ImmutableList.of("small", "medium", "large"),
            size -> size,
            StudentWords::hand));
  }

  /** A menu; its first choice, which says nothing, is left out if it has no name. */
  private <T> ImmutableList<Choice> menu(
      String field,
      String nothing,
      ImmutableList<T> all,
      Function<T, String> value,
      Function<T, String> name) {
    String chosen = fields.getOrDefault(field, "");
    Stream<Choice> first =
        nothing.isEmpty() ? Stream.of() : Stream.of(new Choice("", nothing, chosen.isEmpty()));
    return Stream.concat(
            first,
            all.stream()
                .map(
                    one ->
                        new Choice(
                            value.apply(one), name.apply(one), value.apply(one).equals(chosen))))
        .collect(ImmutableList.toImmutableList());
  }

  ImmutableList<String> sizes() {
    return instrument
        .map(
            one ->
                Instruments.standard().sizes(one).stream()
                    .map(size -> size.name())
                    .collect(ImmutableList.toImmutableList()))
        .orElse(ImmutableList.of());
  }

  ImmutableList<Group> groups() {
    return ImmutableList.of(
        new Group(
            StudentForm.POSITIONS,
            text("student.positions"),
            text("student.positions-about"),
            ticks(positions.asList(), StudentForm::tick, Position::display)),
        new Group(
            StudentForm.PATTERNS,
            text("student.patterns"),
            text("student.patterns-about"),
            ticks(
                form.isFresh() && instrument.isEmpty() ? ImmutableList.of() : form.patterns(),
                one -> StudentForm.tick(StudentForm.PATTERNS, one),
                StudentWords::pattern)),
        orNone(
            StudentForm.EXTENSIONS,
            text("student.extensions"),
            text("student.extensions-about"),
            Extension.values(),
            StudentWords::extension),
        orNone(
            StudentForm.SHIFTS,
            text("student.shifts"),
            text("student.shifts-about"),
            ShiftKind.values(),
            StudentWords::shift));
  }

  private <T extends Enum<T>> Group orNone(
      String id, String legend, String about, T[] all, Function<T, String> name) {
    String none = id + "-" + StudentForm.NONE;
    return new Group(
        id,
        legend,
        about,
        Stream.concat(
                Stream.of(new Tick(none, text("student.none-yet"), form.ticked(none))),
                ticks(
                    Arrays.stream(all).collect(ImmutableList.toImmutableList()),
                    one -> StudentForm.tick(id, one),
                    name)
                    .stream())
            .collect(ImmutableList.toImmutableList()));
  }

  private <T> ImmutableList<Tick> ticks(
      ImmutableList<T> all, Function<T, String> field, Function<T, String> name) {
    return all.stream()
        .map(one -> new Tick(field.apply(one), name.apply(one), form.ticked(field.apply(one))))
        .collect(ImmutableList.toImmutableList());
  }
}
