package fingering.page.staff;

import fingering.music.print.PrintedNote;
import fingering.page.staff.Column.Cell;
import fingering.page.staff.Lane.Mark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Adds the marks of a lane to the columns of the staff. */
final class LaneCells {
  private final Lane lane;
  private String position = "";

  LaneCells(Lane lane) {
    this.lane = lane;
  }

  /** Adds the cells of the lane to the columns, which come in order of time. */
  void add(List<Column> columns) {
    for (Column column : columns) {
      column.cells.add(cell(column));
    }
  }

  private Cell cell(Column column) {
    List<Mark> marks = new ArrayList<>();
    column.stems.stream()
        .flatMap(stem -> stem.notes.stream())
        .sorted(Comparator.comparingInt(note -> note.pitch().map(pitch -> pitch.midi()).orElse(0)))
        .map(PrintedNote::address)
        .forEach(address -> Optional.ofNullable(lane.marks().get(address)).ifPresent(marks::add));
    if (marks.isEmpty()) {
      return Cell.empty(position);
    }
    Mark first = marks.get(0);
    Optional<Lane.Direction> shift =
        marks.stream().flatMap(mark -> mark.shift().stream()).findFirst();
    boolean labelled = shift.isPresent() || !first.position().equals(position);
    position = first.position();
    boolean showString = marks.stream().anyMatch(Mark::showString);
    String string =
        showString
            ? marks.stream().map(Mark::string).distinct().collect(Collectors.joining("/"))
            : "";
    return new Cell(
        marks.stream().map(Mark::finger).toList(),
        string,
        labelled ? position : "",
        shift,
        marks.stream().anyMatch(Mark::differs),
        position);
  }
}
