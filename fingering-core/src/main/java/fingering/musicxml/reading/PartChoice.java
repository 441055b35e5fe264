package fingering.musicxml.reading;

import com.google.common.collect.ImmutableList;
import fingering.musicxml.SelectionException;
import fingering.musicxml.xml.XmlText;
import fingering.tables.Choice;
import fingering.tables.Instrument;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** Chooses a part of a score. */
final class PartChoice {
  private final String score;
  private final ImmutableList<PartInfo> parts;

  /**
   * Chooses among these parts.
   *
   * @param score the name of the score in messages
   */
  PartChoice(String score, ImmutableList<PartInfo> parts) {
    this.score = score;
    this.parts = parts;
  }

  /**
   * Returns the part with this name, id or number. Whole names come before beginnings and words of
   * names.
   *
   * @throws SelectionException if no part or several parts match
   */
  PartInfo named(String wanted) {
    String text = fold(wanted);
    ImmutableList<Predicate<PartInfo>> matches =
        ImmutableList.of(
            // First, so that every part can be chosen by its number, whatever the others are
            // called.
            part -> String.valueOf(part.number()).equals(text),
            part -> fold(part.name()).equals(text),
            part -> part.id().equals(wanted.strip()),
            part -> fold(part.id()).equals(text),
            part -> fold(part.name()).startsWith(text),
            part -> fold(part.name()).contains(text));
    if (!text.isEmpty()) {
      for (Predicate<PartInfo> match : matches) {
        ImmutableList<PartInfo> found =
            parts.stream().filter(match).collect(ImmutableList.toImmutableList());
        if (found.size() == 1) {
          return found.get(0);
        }
        if (found.size() > 1) {
          throw new SelectionException(
              "%s has %d parts called '%s'; choose one by its number: %s."
                  .formatted(score, found.size(), XmlText.printable(wanted), list(found)),
              Choice.PART);
        }
      }
    }
    throw new SelectionException(
        "%s has no part '%s'; choose one: %s."
            .formatted(score, XmlText.printable(wanted), list(parts)),
        Choice.PART);
  }

  /** Returns the name of a part, or its number if the name finds another one. */
  String nameOrNumber(PartInfo part) {
    String name = fold(part.name());
    boolean clear =
        parts.stream()
            .filter(other -> !other.equals(part))
            .noneMatch(
                other ->
                    fold(other.name()).equals(name) || String.valueOf(other.number()).equals(name));
    return clear ? part.name() : String.valueOf(part.number());
  }

  /**
   * Returns the only part, or the only part for the instrument, or for any known instrument if none
   * is given.
   *
   * @throws SelectionException if there is not exactly one
   */
  PartInfo only(Optional<Instrument> instrument) {
    if (parts.size() == 1) {
      return parts.get(0);
    }
    ImmutableList<PartInfo> strings =
        parts.stream()
            .filter(PartInfo::isString)
            .filter(part -> instrument.isEmpty() || isFor(part, instrument.get()))
            .collect(ImmutableList.toImmutableList());
    if (strings.size() == 1) {
      return strings.get(0);
    }
    if (parts.stream().noneMatch(PartInfo::isString)) {
      throw new SelectionException(
          "%s has %d parts, none of them known to be for a string instrument; choose one, and its instrument: %s."
              .formatted(score, parts.size(), PartInfo.withReasons(parts)),
          Choice.PART,
          Choice.INSTRUMENT);
    }
    throw new SelectionException(
        "%s has %d parts; choose one: %s.".formatted(score, parts.size(), list(parts)),
        Choice.PART);
  }

  /** A part for a cello is for a cello of any tuning and size. */
  private static boolean isFor(PartInfo part, Instrument instrument) {
    return part.instrument().map(Instrument::id).equals(Optional.of(instrument.id()));
  }

  private static String fold(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  private static String list(ImmutableList<PartInfo> parts) {
    return XmlText.listed(
        parts.stream().map(PartInfo::toString).collect(ImmutableList.toImmutableList()));
  }
}
