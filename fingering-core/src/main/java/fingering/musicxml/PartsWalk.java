package fingering.musicxml;

import com.google.common.collect.ImmutableList;
import fingering.tables.Instruments;
import jakarta.xml.bind.Unmarshaller;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;

/**
 * Walks through the parts of a score while the binding reads it, and lets each measure go as soon
 * as it is done with: what the binding makes of a score takes ten times the room of what is kept.
 */
final class PartsWalk extends Unmarshaller.Listener {

  private record Walked(ScorePartwise.Part part, PartWalk walk) {}

  private final InstrumentSigns signs = new InstrumentSigns(Instruments.standard());
  private final List<ScorePart> listed = new ArrayList<>();
  private final List<Walked> parts = new ArrayList<>();
  private boolean empty = true;

  @Override
  public void afterUnmarshal(Object read, Object parent) {
    if (read instanceof ScorePart entry) {
      listed.add(entry);
    } else if (read instanceof ScorePartwise.Part.Measure measure
        && parent instanceof ScorePartwise.Part part) {
      empty = false;
      walk(part).measure(measure);
      measure.getNoteOrBackupOrForward().clear();
    } else if (read instanceof ScorePartwise.Part part) {
      walk(part);
    }
  }

  private PartWalk walk(ScorePartwise.Part part) {
    int index = parts.size();
    if (index > 0 && parts.get(index - 1).part() == part) {
      return parts.get(index - 1).walk();
    }
    PartWalk walk = new PartWalk(index, InstrumentSigns.name(index + 1, entry(part, index)));
    parts.add(new Walked(part, walk));
    return walk;
  }

  private Optional<ScorePart> entry(ScorePartwise.Part part, int index) {
    return part.getId() instanceof ScorePart named
        ? Optional.of(named)
        : listed.stream().skip(index).findFirst();
  }

  /** Whether no part has a measure. */
  boolean empty() {
    return empty;
  }

  /** What is told of each part. */
  ImmutableList<PartInfo> infos() {
    ImmutableList.Builder<PartInfo> infos = ImmutableList.builder();
    for (int i = 0; i < parts.size(); i++) {
      Walked walked = parts.get(i);
      infos.add(signs.describe(i + 1, entry(walked.part(), i), walked.walk()));
    }
    return infos.build();
  }

  /** The music of each part. */
  ImmutableList<PartTimeline> timelines() {
    return parts.stream()
        .map(walked -> walked.walk().end())
        .collect(ImmutableList.toImmutableList());
  }
}
