package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import com.google.common.primitives.Ints;
import fingering.lesson.StoredLesson;
import fingering.page.audition.AskedScale;
import fingering.page.audition.ScaleMenus;
import fingering.page.audition.SheetForm;
import fingering.page.audition.SheetPlans;
import fingering.page.audition.SheetsPage;
import fingering.page.live.HomeView;
import fingering.page.live.SheetView;
import fingering.page.live.SheetsView;
import fingering.page.live.StudentView.Choice;
import fingering.sheet.AuditionSheetFile;
import fingering.sheet.SheetContent;
import fingering.sheet.StoredSheet;
import fingering.tables.FingeringException;
import fingering.userfile.UserFileStore;
import fingering.web.audition.SheetContext;
import fingering.web.audition.SheetHistories;
import fingering.web.audition.SheetsFolder;
import fingering.web.folder.Seen;
import fingering.web.folder.StudentsFolder;
import fingering.web.folder.TeachersFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The audition sheets: their list, the form in which one is put together, and its plans. */
final class AuditionHandler implements Handler {
  static final String LIST = "/audition";
  private static final Pattern SHEET =
      Pattern.compile("/audition/([A-Za-z0-9_-]{24})(?:/([a-z]+))?");

  private static final String INSTRUMENT = "instrument";

  private final Frames frames;
  private final SheetContext context;
  private final SheetHistories histories = new SheetHistories();

  AuditionHandler(Frames frames, SheetContext context) {
    this.frames = frames;
    this.context = context;
  }

  private static String address(SheetsFolder.Entry sheet) {
    return LIST + "/" + sheet.id();
  }

  @Override
  public Optional<Reply> get(Request request) {
    if (request.path().equals(LIST)) {
      return Optional.of(list());
    }
    Matcher address = SHEET.matcher(request.path());
    Optional<SheetsFolder.Entry> sheet =
        address.matches() ? context.sheets().sheet(address.group(1)) : Optional.empty();
    if (sheet.isEmpty()) {
      return Optional.empty();
    }
    if (address.group(2) == null) {
      return sheet.map(
          entry ->
              Reply.html(
                  Reply.DONE,
                  SheetsPage.page(frames.titled(entry.title()), view(entry, ImmutableList.of()))));
    }
    return address.group(2).equals("plans") ? sheet.map(this::plans) : Optional.empty();
  }

  private Reply list() {
    SheetsFolder.Listing listing = context.sheets().list();
    return Reply.html(
        Reply.DONE,
        SheetsPage.list(
            frames.titled(text("sheets.title")),
            new SheetsView(
                context.sheets().path().toString(),
                listing.sheets().stream()
                    .map(
                        entry ->
                            new HomeView.Entry(
                                address(entry),
                                entry.title(),
                                new SheetForm(entry.stored().content())
                                    .instrument()
                                    .nameInSentence()))
                    .collect(ImmutableList.toImmutableList()),
                ScaleMenus.instruments(context.students().instrument()),
                listing.problems())));
  }

  private Reply plans(SheetsFolder.Entry entry) {
    SheetContent sheet = entry.stored().content();
    if (sheet.pieces().isEmpty()) {
      return Reply.html(Reply.DONE, SheetsPage.nothing(text("panel.empty")));
    }
    SheetForm form = new SheetForm(sheet);
    String instrument = form.instrument().nameInSentence();
    String student =
        context
            .student(entry.stored())
            .map(StudentsFolder.Entry::name)
            .orElseGet(() -> entry.stored().content().student());
    try {
      return Reply.html(
          Reply.DONE,
          SheetsPage.plans(
              SheetPlans.of(
                  context.adviser().plan(AuditionSheetFile.read(entry.stored().file())),
                  address(entry),
                  student.isEmpty()
                      ? text("panel.for-anyone", instrument)
                      : text("panel.for", student, instrument),
                  number -> link(entry.stored(), sheet.pieces().get(number - 1)))));
    } catch (FingeringException e) {
      String place = Pattern.quote(entry.stored().file().toString()) + "(, line \\d+)?: ";
      return Reply.html(
          Reply.DONE,
          SheetsPage.nothing(String.valueOf(e.getMessage()).replaceFirst("^" + place, "")));
    }
  }

  /** Where a piece is opened; empty for a scale, and for files elsewhere. */
  private String link(StoredSheet sheet, SheetContent.Piece piece) {
    String file = piece.value("lesson").isEmpty() ? piece.value("file") : piece.value("lesson");
    if (file.isEmpty()) {
      return "";
    }
    return context.folder().list().entries().stream()
        .filter(entry -> beside(sheet, entry).equals(file))
        .map(entry -> "/open/" + entry.id())
        .findFirst()
        .orElse("");
  }

  private String beside(StoredSheet sheet, TeachersFolder.Entry entry) {
    return StoredLesson.nameBeside(sheet.file(), context.folder().path().resolve(entry.name()));
  }

  private SheetView view(SheetsFolder.Entry entry, ImmutableList<String> said) {
    StoredSheet stored = entry.stored();
    SheetForm form = new SheetForm(stored.content());
    ImmutableList.Builder<SheetView.Piece> pieces = ImmutableList.builder();
    for (int i = 0; i < stored.content().pieces().size(); i++) {
      SheetContent.Piece piece = stored.content().pieces().get(i);
      pieces.add(
          new SheetView.Piece(
              i,
              SheetForm.name(piece),
              SheetForm.about(piece),
              link(stored, piece),
              stored.content().canMove(i, -1),
              stored.content().canMove(i, 1),
              SheetForm.fields(piece)));
    }
    return new SheetView(
        address(entry),
        Seen.mark(stored.text()),
        entry.title(),
        form.notes(),
        form.menus(studentMenu(stored, form)),
        form.ticks(),
        form.skills(),
        pieces.build(),
        music(),
        ScaleMenus.of(ImmutableMap.of()),
        ScalesHandler.PAGE + "?sheet=" + entry.id(),
        histories.undoes(entry.id(), stored.content()),
        said);
  }

  private ImmutableList<Choice> studentMenu(StoredSheet sheet, SheetForm form) {
    String chosen = sheet.content().student();
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", text("panel.anyone"), chosen.isEmpty()));
    for (StudentsFolder.Entry student : context.students().list().students()) {
      boolean plays =
          student
              .player()
              .instrument()
              .map(one -> one.id().equals(form.instrument().id()))
              .orElse(true);
      String name = SheetContext.named(sheet, student);
      if (plays || name.equals(chosen)) {
        choices.add(new Choice(name, student.name(), name.equals(chosen)));
      }
    }
    if (choices.stream().noneMatch(Choice::chosen)) {
      choices.add(new Choice(chosen, chosen, true));
    }
    return ImmutableList.copyOf(choices);
  }

  private ImmutableList<SheetView.Group> music() {
    return ImmutableList.of(
        new SheetView.Group(text("home.lessons"), choices(entry -> entry.lesson().isPresent())),
        new SheetView.Group(text("home.scores"), choices(entry -> entry.lesson().isEmpty())));
  }

  private ImmutableList<Choice> choices(Predicate<TeachersFolder.Entry> kind) {
    return context.folder().list().entries().stream()
        .filter(kind)
        .map(entry -> new Choice(entry.id(), entry.name(), false))
        .collect(ImmutableList.toImmutableList());
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    if (request.path().equals(LIST)) {
      ImmutableMap<String, String> fields = request.form();
      SheetsFolder.Entry made =
          context
              .sheets()
              .create(
                  fields.getOrDefault("name", "").strip(),
                  SheetForm.fresh(
                      fields.getOrDefault("name", "").strip(), fields.getOrDefault(INSTRUMENT, "")),
                  context.today());
      return Optional.of(Reply.html(Reply.DONE, "").with("HX-Redirect", address(made)));
    }
    Matcher address = SHEET.matcher(request.path());
    Optional<SheetsFolder.Entry> sheet =
        address.matches() && address.group(2) != null
            ? context.sheets().sheet(address.group(1))
            : Optional.empty();
    if (sheet.isEmpty()) {
      return Optional.empty();
    }
    ImmutableMap<String, String> fields = request.form();
    SheetsFolder.Entry entry = sheet.get();
    if (!Seen.mark(entry.stored().text()).equals(Seen.in(fields))) {
      return Optional.of(answer(entry, ImmutableList.of(text("panel.stale")), true));
    }
    return changed(entry, address.group(2), fields)
        .map(
            content -> {
              UserFileStore.Saved saved = context.save(entry, content);
              if (!address.group(2).equals("undo")) {
                histories.add(entry.id(), entry.stored().content(), content);
              }
              return answer(
                  context.sheets().sheet(entry.id()).orElse(entry),
                  said(entry.stored().file(), saved),
                  address.group(2).equals("undo"));
            });
  }

  /** The sheet after a change; empty if there is no such change. */
  private Optional<SheetContent> changed(
      SheetsFolder.Entry entry, String kind, Map<String, String> fields) {
    SheetContent before = entry.stored().content();
    SheetForm form = new SheetForm(before);
    return switch (kind) {
      case "settings" -> Optional.of(form.withSettings(fields));
      case "ask" -> Optional.of(form.asking(fields));
      case "drop" -> Optional.of(form.dropping(fields));
      case "scale" -> Optional.of(with(entry, AskedScale.of(fields).piece()));
      case "advised" ->
          Optional.of(
              with(
                  entry,
                  new SheetContent.Piece(
                      true,
                      ImmutableListMultimap.of(
                          "scale", fields.getOrDefault("scale", ""),
                          "octaves", fields.getOrDefault("octaves", ""),
                          "allow", fields.getOrDefault("allow", "")))));
      case "excerpt" -> Optional.of(with(entry, excerpt(entry.stored(), fields)));
      case "remove" -> Optional.of(before.without(index(fields)));
      case "up" -> Optional.of(before.moved(index(fields), -1));
      case "down" -> Optional.of(before.moved(index(fields), 1));
      case "change" -> Optional.of(changed(entry, index(fields), fields));
      case "undo" -> histories.before(entry.id(), before);
      default -> Optional.empty();
    };
  }

  private static int index(Map<String, String> fields) {
    return Optional.ofNullable(Ints.tryParse(fields.getOrDefault("piece", ""))).orElse(-1);
  }

  private SheetContent changed(SheetsFolder.Entry entry, int index, Map<String, String> fields) {
    SheetContent before = entry.stored().content();
    if (index < 0 || index >= before.pieces().size()) {
      return before;
    }
    SheetContent.Piece piece = SheetForm.changed(before.pieces().get(index), fields);
    check(entry, piece);
    return before.replacing(index, piece);
  }

  /**
   * The sheet with one more piece.
   *
   * @throws FingeringException if it cannot be planned; the message is one sentence
   */
  SheetContent with(SheetsFolder.Entry entry, SheetContent.Piece piece) {
    check(entry, piece);
    return entry.stored().content().with(piece);
  }

  private void check(SheetsFolder.Entry entry, SheetContent.Piece piece) {
    SheetContent alone = new SheetContent(entry.stored().content().keys(), ImmutableList.of(piece));
    context.adviser().problems(AuditionSheetFile.of(entry.stored().file(), alone)).stream()
        .findFirst()
        .ifPresent(
            problem -> {
              throw new FingeringException(problem);
            });
  }

  private SheetContent.Piece excerpt(StoredSheet sheet, Map<String, String> fields) {
    TeachersFolder.Entry music =
        context.folder().list().entries().stream()
            .filter(entry -> entry.id().equals(fields.getOrDefault("music", "")))
            .findFirst()
            .orElseThrow(() -> new FingeringException(text("panel.choose-music")));
    ImmutableListMultimap.Builder<String, String> keys = ImmutableListMultimap.builder();
    keys.put(music.lesson().isPresent() ? "lesson" : "file", beside(sheet, music));
    for (String key : ImmutableList.of("name", "part", "measures", "tempo")) {
      String value = fields.getOrDefault(key, "").strip();
      if (!value.isEmpty()) {
        keys.put(key, value);
      }
    }
    return new SheetContent.Piece(false, keys.build());
  }

  private Reply answer(SheetsFolder.Entry entry, ImmutableList<String> said, boolean all) {
    return Reply.html(Reply.DONE, SheetsPage.answer(view(entry, said), all))
        .with("HX-Trigger", "sheet");
  }

  static ImmutableList<String> said(Path file, UserFileStore.Saved saved) {
    ImmutableList.Builder<String> said = ImmutableList.builder();
    said.add(text("live.saved", file.getFileName()));
    saved.copy().ifPresent(copy -> said.add(text("student.kept", copy.getFileName())));
    if (!saved.lostRemarks().isEmpty()) {
      said.add(text("student.lost", String.join(" / ", saved.lostRemarks())));
    }
    return said.build();
  }
}
