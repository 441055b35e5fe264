package fingering.cli.student;

import com.google.common.collect.ImmutableList;
import fingering.fingerboard.LeftHand;
import fingering.musicxml.SelectionException;
import fingering.musicxml.reading.PartInfo;
import fingering.player.Player;
import fingering.scoring.rules.PlayerGroup;
import fingering.tables.FingeringException;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The students that a plan is made for: one, or a section that shares the plan.
 *
 * @param known the students who have a player file
 */
public record Students(ImmutableList<Student> known) {
  /** No known student. */
  public static final Students UNKNOWN = new Students(ImmutableList.of());

  /** The players who share the plan; one unknown player if no student is known. */
  public PlayerGroup section() {
    return new PlayerGroup(
        known.isEmpty()
            ? ImmutableList.of(Player.UNKNOWN)
            : known.stream().map(Student::player).collect(ImmutableList.toImmutableList()));
  }

  /** Whether several students share the plan. */
  public boolean several() {
    return known.size() > 1;
  }

  /** The names of the files as typed, separated by commas. */
  public String files() {
    return known.stream().map(Student::file).collect(Collectors.joining(", "));
  }

  /** The name of the student, from the name of the file; empty unless one is known. */
  public Optional<String> name() {
    return known.size() == 1 ? Optional.of(known.get(0).name()) : Optional.empty();
  }

  /**
   * The instrument that the students play; empty if no file names one.
   *
   * @throws SelectionException if they play different instruments
   */
  public Optional<Instrument> instrument() {
    try {
      return section().instrument();
    } catch (FingeringException e) {
      throw new SelectionException(files() + ": " + e.getMessage() + ".");
    }
  }

  /**
   * The hand of the student with the smallest hand; medium if no file names one.
   *
   * @param played the instrument that they play
   * @param sized whether the command line gives the size of the instrument
   */
  public LeftHand smallestHand(Instrument played, boolean sized) {
    return sized
        ? section().smallestHand(played)
        : section()
            .smallestReach(Instruments.standard().named(played.id()))
            .hand()
            .orElse(LeftHand.MEDIUM);
  }

  /**
   * The size of the instrument of the student with the smallest hand; empty if that student plays
   * another instrument or the file names no size.
   *
   * @throws SelectionException if the instrument has no size that a file names
   */
  public Optional<String> size(Instrument instrument) {
    // Look up every size first: an unknown one is then reported with its file.
    known.forEach(student -> student.size(instrument));
    Player smallest = section().smallestReach(instrument);
    return known.stream()
        .filter(student -> student.player().equals(smallest))
        .findFirst()
        .flatMap(student -> student.size(instrument));
  }

  /**
   * Checks that a part is for the instrument of every student.
   *
   * @throws SelectionException if it is for another instrument
   */
  public void requirePart(PartInfo part) {
    known.forEach(student -> student.requirePart(part));
  }

  /**
   * Checks that every student has a finger pattern for an instrument, or lists none.
   *
   * @throws SelectionException if a student lists patterns, but none for it
   */
  public void requirePatterns(Instrument instrument) {
    known.forEach(student -> student.requirePatterns(instrument));
  }
}
