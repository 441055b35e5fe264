package fingering.musicxml;

import static org.assertj.core.api.Assertions.assertThat;

import fingering.music.Passage;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A passage built in code is the passage read from a score with the same music. */
class PassageBuilderPropertyTest {
  @Property(tries = 300)
  void musicBuiltInCodeEqualsMusicReadFromAScore(@ForAll long seed) {
    BuiltAndReadMusic music = new BuiltAndReadMusic(seed);
    Passage built = music.built();
    Passage read = ScoreText.passage(music.xml());
    assertThat(built.measures()).isEqualTo(read.measures());
    assertThat(built.tempi()).isEqualTo(read.tempi());
    assertThat(built.moments()).isEqualTo(read.moments());
    assertThat(built.partId()).isEqualTo(read.partId());
    assertThat(built.partName()).isEqualTo(read.partName());
    assertThat(built.title()).isEqualTo(read.title());
    assertThat(built.instrument()).isEqualTo(read.instrument());
  }
}
