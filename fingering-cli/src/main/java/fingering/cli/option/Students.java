package fingering.cli.option;

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
 * The students whom a plan is for: one, or a section that shares it.
 *
 * @param known those of whom a file tells; empty where nothing is said
 */
public record Students(ImmutableList<Student> known) {
  /** Nobody of whom anything is said. */
  public static final Students UNKNOWN = new Students(ImmutableList.of());

  /** As players who share a plan. */
  PlayerGroup section() {
    return new PlayerGroup(
        known.isEmpty()
            ? ImmutableList.of(Player.UNKNOWN)
            : known.stream().map(Student::player).collect(ImmutableList.toImmutableList()));
  }

  /** Whether several share the plan. */
  public boolean several() {
    return known.size() > 1;
  }

  /** The files, as typed, parted by commas. */
  public String files() {
    return known.stream().map(Student::file).collect(Collectors.joining(", "));
  }

  /**
   * What they play.
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
   * The hand as the command line has it, else the one that reaches least.
   *
   * @param sized whether the command line says of which size the instrument is
   */
  public LeftHand hand(HandOptions options, Instrument played, boolean sized) {
    Instrument usual = Instruments.standard().named(played.id());
    return options.hand(
        sized
            ? section().smallestHand(played)
            : section().smallestReach(usual).hand().orElse(LeftHand.MEDIUM));
  }

  /**
   * The size of the one whose hand reaches least, where it is a size of that instrument.
   *
   * @throws SelectionException if there is no such size of it
   */
  public Optional<String> size(Instrument of) {
    // Each size is looked up first, so that one that is not there is told with its file.
    known.forEach(student -> student.size(of));
    Player narrowest = section().smallestReach(of);
    return known.stream()
        .filter(student -> student.player().equals(narrowest))
        .findFirst()
        .flatMap(student -> student.size(of));
  }

  /** Refuses a part that is for another instrument than that of one of them. */
  void refuseOther(PartInfo part) {
    known.forEach(student -> student.refuseOther(part));
  }

  /** Refuses an instrument for which none of the finger patterns that one of them lists is. */
  public void refuseOtherPatterns(Instrument instrument) {
    known.forEach(student -> student.refuseOtherPatterns(instrument));
  }
}
