package fingering.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Iterables;
import fingering.sheet.SheetContent.Piece;
import fingering.tables.FingeringException;
import fingering.userfile.UserFileStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Audition sheets are changed and saved. */
class SheetStoreTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);
  private static final Piece SCALE =
      new Piece(true, ImmutableListMultimap.of("scale", "F# minor", "octaves", "2"));

  @TempDir Path folder;

  private StoredSheet written(String text) throws IOException {
    return StoredSheet.read(Files.writeString(folder.resolve("sheet.yaml"), text));
  }

  private static UserFileStore.Saved saved(StoredSheet sheet, SheetContent content) {
    return SheetStore.save(sheet.file(), content, Optional.of(sheet.text()), TODAY);
  }

  @Test
  void newSheetIsReadBack() {
    Path file = folder.resolve("new.yaml");
    SheetContent sheet =
        new SheetContent(
                ImmutableListMultimap.<String, String>builder()
                    .put("title", "Panel: the lake")
                    .put("instrument", "viola")
                    .putAll("positions", "1", "3=12")
                    .put("show-shift", "up=2")
                    .build(),
                ImmutableList.of())
            .with(SCALE)
            .with(
                new Piece(
                    false,
                    ImmutableListMultimap.of("abc", "X:1\nL:1/4\nK:Gm\nG A B c|\n", "allow", "1")));

    SheetStore.save(file, sheet, Optional.empty(), TODAY);

    assertThat(file)
        .hasContent(
            """
            title: "Panel: the lake"
            instrument: viola
            positions: [1, 3=12]
            show-shift: up=2
            scales:
              - scale: "F# minor"
                octaves: 2
            excerpts:
              - abc: |
                  X:1
                  L:1/4
                  K:Gm
                  G A B c|
                allow: 1
            """);
    assertThat(StoredSheet.read(file).content()).isEqualTo(sheet);
  }

  @Test
  void tuneWithoutLineEndOrWithIndentedLineIsReadBackToo() {
    for (String tune :
        new String[] {"X:1\nK:C\nC D", " X:1\nK:C\nC|\n", "X:1\nK:C\nC|\n\n", "é\nK:C\n"}) {
      Path file = folder.resolve("tune" + tune.length() + ".yaml");
      SheetContent sheet =
          new SheetContent(
              ImmutableListMultimap.of("instrument", "viola"),
              ImmutableList.of(new Piece(false, ImmutableListMultimap.of("abc", tune))));
      SheetStore.save(file, sheet, Optional.empty(), TODAY);
      assertThat(StoredSheet.read(file).content()).isEqualTo(sheet);
    }
  }

  @Test
  void changeKeepsOtherLinesWithTheirRemarks() throws IOException {
    String text =
        """
        # For the lake.
        title: Lake
        instrument: viola  # or violin
        show-stay: 3=4  # not less

        excerpts:
          - file: mill.musicxml  # the first page
        scales:
          - scale: D major
        """;
    StoredSheet sheet = written(text);

    UserFileStore.Saved saved =
        saved(sheet, sheet.content().with("positions", ImmutableList.of("2")).with(SCALE));

    assertThat(sheet.file())
        .hasContent(text + "  - scale: \"F# minor\"\n    octaves: 2\npositions: 2");
    assertThat(saved.lostRemarks()).isEmpty();
    assertThat(folder.resolve("sheet.yaml.2026-12-01~")).hasContent(text);

    StoredSheet now = StoredSheet.read(sheet.file());
    assertThat(now.content().pieces()).hasSize(3);
    assertThat(saved(now, now.content().without(0)).lostRemarks())
        .containsExactly("# the first page");
    assertThat(
            Iterables.getOnlyElement(
                    written(
                            "title: T\ninstrument: viola\nshow-shift: [up=1]\nscales: [{scale: D major}]\n")
                        .content()
                        .pieces())
                .value("scale"))
        .isEqualTo("D major");
  }

  @Test
  void fileThatIsNoSheetIsNeverReplaced() throws IOException {
    for (String text : new String[] {"instrument: viola\npositions: 1\n", "score: a.mxl\n"}) {
      Path file = Files.writeString(folder.resolve("other.yaml"), text);
      SheetContent sheet =
          new SheetContent(
              ImmutableListMultimap.of("title", "T", "instrument", "viola"), ImmutableList.of());
      assertThatThrownBy(() -> SheetStore.save(file, sheet, Optional.empty(), TODAY))
          .isInstanceOf(FingeringException.class)
          .hasMessageContaining("is not an audition sheet");
      assertThat(file).hasContent(text);
    }
  }

  @Test
  void sheetWithAMistakeIsNotSaved() throws IOException {
    StoredSheet sheet = written("title: T\ninstrument: viola\n");
    SheetContent wrong = sheet.content().with("positions", ImmutableList.of("fist"));
    assertThatThrownBy(() -> saved(sheet, wrong)).hasMessageContaining("'fist' is not a position");
    assertThat(sheet.file()).hasContent("title: T\ninstrument: viola");
  }
}
