package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.reading.PartSigns.Kind;
import fingering.tables.Instrument;
import fingering.tables.Instruments;
import java.util.Optional;

/**
 * Detects the instruments of the parts of a score: from what each part shows by itself, then from
 * its neighbours, then from its first clef.
 */
final class InstrumentDetector {
  private final Instruments instruments;

  InstrumentDetector(Instruments instruments) {
    this.instruments = instruments;
  }

  /** Describes the parts of a score, in its order. */
  ImmutableList<PartInfo> describe(ImmutableList<PartSigns> parts) {
    PartNeighbours neighbours = new PartNeighbours(parts);
    ImmutableList.Builder<PartInfo> infos = ImmutableList.builder();
    for (int i = 0; i < parts.size(); i++) {
      infos.add(describe(i, parts.get(i), neighbours));
    }
    return infos.build();
  }

  private PartInfo describe(int index, PartSigns part, PartNeighbours neighbours) {
    if (part.instrument().isEmpty()) {
      return byClef(index, part, part.reason());
    }
    Instrument instrument = part.instrument().get();
    if (part.kind() == Kind.STRING) {
      return string(index, part, instrument, alsoNamed(instrument, part));
    }
    PartNeighbours.Decision decision = neighbours.decide(index, instrument);
    if (!decision.string()) {
      return byClef(index, part, decision.reason());
    }
    // A clef for that instrument only, such as the alto clef, leaves no doubt.
    boolean sure = part.byClef().map(Instrument::id).equals(Optional.of(instrument.id()));
    return string(
        index,
        part,
        instrument,
        sure
            ? Optional.empty()
            : Optional.of(
                "the part '%s' is taken for a %s because %s; choose another instrument if that is wrong"
                    .formatted(part.name(), instrument.nameInSentence(), decision.reason())));
  }

  private static PartInfo string(
      int index, PartSigns part, Instrument instrument, Optional<String> doubt) {
    return new PartInfo(
        index + 1, part.id(), part.name(), Optional.of(instrument), false, doubt, "");
  }

  private PartInfo byClef(int index, PartSigns part, String reason) {
    return new PartInfo(
        index + 1,
        part.id(),
        part.name(),
        part.byClef(),
        part.byClef().isPresent(),
        part.byClef().map(read -> guess(read, part, reason)),
        reason);
  }

  /** A remark if the name of a string part also mentions another instrument. */
  private Optional<String> alsoNamed(Instrument read, PartSigns part) {
    return part.names().stream()
        .findFirst()
        .flatMap(
            name ->
                instruments.allInPartName(name).stream()
                    .filter(other -> !other.id().equals(read.id()))
                    .findFirst()
                    .map(
                        other ->
                            "the part name '%s' also mentions the %s; it is read for the %s; choose the other if that is wrong"
                                .formatted(name, other.nameInSentence(), read.nameInSentence())));
  }

  /** A remark on a part that only its clef suggests. The name shown needs no reason. */
  private static String guess(Instrument read, PartSigns part, String reason) {
    return part.kind() == Kind.UNKNOWN
        ? "the part does not name its instrument; by its first clef it is read for the %s"
            .formatted(read.nameInSentence())
        : "'%s' is not a part for a bowed string instrument%s; by its first clef it is read for the %s; choose another instrument if that is wrong"
            .formatted(
                part.name(),
                reason.equals(PartSigns.OTHER_NAME) ? "" : " (" + reason + ")",
                read.nameInSentence());
  }
}
