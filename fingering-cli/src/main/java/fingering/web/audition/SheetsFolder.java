package fingering.web.audition;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import fingering.files.FileProblem;
import fingering.sheet.SheetContent;
import fingering.sheet.SheetStore;
import fingering.sheet.StoredSheet;
import fingering.tables.FingeringException;
import fingering.userfile.SmallFile;
import fingering.userfile.UserFileStore;
import fingering.web.folder.Inside;
import fingering.web.folder.NewName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The audition sheets in a teacher's folder. Pages know them by ids that say nothing about their
 * names.
 */
public final class SheetsFolder {
  private static final String ENDING = ".yaml";

  /** A line that every sheet has, and no lesson or player file. */
  private static final Pattern SHEET =
      Pattern.compile("(?m)^\\s*\\{?\\s*\"?(title|scales|excerpts)\"?\\s*:");

  private static final Pattern NAME = Pattern.compile("(?i)[^.].*\\.(yaml|yml)");

  private final Path folder;
  private final UnaryOperator<String> ids;

  /**
   * Creates the list.
   *
   * @param folder the teacher's folder; it need not exist yet
   * @param ids the id of a file by its name, of 24 letters that say nothing about it
   */
  public SheetsFolder(Path folder, UnaryOperator<String> ids) {
    this.folder = folder;
    this.ids = ids;
  }

  /**
   * A sheet.
   *
   * @param id the id in addresses and menus
   * @param stored the file
   */
  public record Entry(String id, StoredSheet stored) {
    /** The title, or else the name of the file. */
    public String title() {
      String title = stored.content().value("title");
      return title.isEmpty() ? String.valueOf(stored.file().getFileName()) : title;
    }
  }

  /**
   * What is in the folder.
   *
   * @param sheets the sheets, in the order of the names of their files
   * @param problems a sentence for each sheet that cannot be read
   */
  public record Listing(ImmutableList<Entry> sheets, ImmutableList<String> problems) {}

  /** The folder. */
  public Path path() {
    return folder;
  }

  /**
   * Lists the sheets.
   *
   * @throws FingeringException if the folder cannot be read
   */
  public Listing list() {
    ImmutableList.Builder<Entry> sheets = ImmutableList.builder();
    ImmutableList.Builder<String> problems = ImmutableList.builder();
    for (Path file : files()) {
      String name = String.valueOf(file.getFileName());
      try {
        if (Inside.folder(folder, file) && SHEET.matcher(SmallFile.text(file, "a sheet")).find()) {
          sheets.add(new Entry(ids.apply(name), StoredSheet.read(file)));
        }
      } catch (FingeringException e) {
        problems.add(String.valueOf(e.getMessage()).replace(file.toString(), name));
      }
    }
    return new Listing(sheets.build(), problems.build());
  }

  private List<Path> files() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> NAME.matcher(String.valueOf(file.getFileName())).matches())
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(folder, e), e);
    }
  }

  /** The sheet with an id; empty if there is none. */
  public Optional<Entry> sheet(String id) {
    return list().sheets().stream().filter(entry -> entry.id().equals(id)).findFirst();
  }

  /**
   * Makes a sheet.
   *
   * @param name its title, and the name of its file
   * @throws FingeringException if the name cannot be used, or the file cannot be written; the
   *     message is one sentence
   */
  public Entry create(String name, SheetContent content, LocalDate today) {
    Path file =
        NewName.in(folder, name, ENDING)
            .orElseThrow(() -> new FingeringException(text("panel.no-name")));
    if (NewName.taken(file)) {
      throw new FingeringException(text("panel.taken", file.getFileName()));
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new FingeringException(FileProblem.writing(folder, e), e);
    }
    SheetStore.save(file, content, Optional.empty(), today);
    return new Entry(ids.apply(name + ENDING), StoredSheet.read(file));
  }

  /**
   * Saves a sheet.
   *
   * @param before the sheet as it was read
   * @throws FingeringException if it has changed since then, or cannot be written; the message is
   *     one sentence
   */
  public UserFileStore.Saved save(StoredSheet before, SheetContent content, LocalDate today) {
    return SheetStore.save(before.file(), content, Optional.of(before.text()), today);
  }
}
