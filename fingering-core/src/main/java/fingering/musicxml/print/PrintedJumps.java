package fingering.musicxml.print;

import com.google.common.collect.ImmutableList;
import fingering.music.Measure;
import fingering.music.print.JumpMark;
import fingering.music.print.JumpMark.Kind;
import java.util.ArrayList;
import java.util.List;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.YesNo;
import org.jspecify.annotations.Nullable;

/** Collects what playback elements of a part say about the order of playing. */
final class PrintedJumps {
  private record Jump(Kind kind, Position position, String name) {}

  private final List<Jump> jumps = new ArrayList<>();

  /** Adds the jumps of a playback element. */
  void add(Sound sound, Position position) {
    add(Kind.SEGNO, sound.getSegno(), position);
    add(Kind.CODA, sound.getCoda(), position);
    add(Kind.FINE, sound.getFine(), position);
    add(Kind.TO_CODA, sound.getTocoda(), position);
    add(Kind.DAL_SEGNO, sound.getDalsegno(), position);
    add(Kind.DA_CAPO, sound.getDacapo() == YesNo.YES ? "yes" : null, position);
  }

  private void add(Kind kind, @Nullable String name, Position position) {
    if (name != null && !name.isBlank()) {
      jumps.add(new Jump(kind, position, name.strip()));
    }
  }

  /** The jumps in order of the file. */
  ImmutableList<JumpMark> in(List<Measure> measures) {
    return jumps.stream()
        .map(one -> new JumpMark(one.kind(), one.position().place(measures), one.name()))
        .collect(ImmutableList.toImmutableList());
  }
}
