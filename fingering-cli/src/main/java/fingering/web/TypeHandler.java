package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.base.Splitter;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.primitives.Ints;
import fingering.page.TypePage;
import fingering.page.live.HomeView;
import fingering.page.music.TypedMusic;
import fingering.tables.FingeringException;
import fingering.web.folder.StudentsFolder;
import fingering.web.folder.TeachersFolder;
import fingering.web.typed.Draft;
import fingering.web.typed.Drafts;
import fingering.web.typed.TypedFiles;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page on which an excerpt is typed: drawn while typing, and saved in the folder. */
final class TypeHandler implements Handler {
  private static final Pattern ADDRESS =
      Pattern.compile("/type/([A-Za-z0-9_-]{24})(?:/(draw|save))?");
  private static final Pattern TITLE = Pattern.compile("(?m)^T:[ \\t]*(\\S.*)$");

  /** The longest text, in letters; a hundred measures have 3,000. */
  private static final int MOST = 200_000;

  /** The largest form: most letters are sent as one to three, others as up to nine. */
  private static final int FORM = 4 * MOST;

  /** The width of a place that does not say its own, in pixels. */
  private static final int USUAL_WIDTH = 700;

  private final Frames frames;
  private final Secrets secrets;
  private final TeachersFolder folder;
  private final StudentsFolder students;
  private final TypedFiles files;
  private final Drafts drafts = new Drafts();

  TypeHandler(
      Frames frames,
      Secrets secrets,
      TeachersFolder folder,
      StudentsFolder students,
      TypedFiles files) {
    this.frames = frames;
    this.secrets = secrets;
    this.folder = folder;
    this.students = students;
    this.files = files;
  }

  @Override
  public Optional<Reply> get(Request request) {
    if (request.path().equals("/type")) {
      return Optional.of(begin(request.query()));
    }
    Matcher address = ADDRESS.matcher(request.path());
    return address.matches() && address.group(2) == null
        ? Optional.of(
            drafts
                .get(address.group(1))
                .map(this::page)
                .orElseGet(() -> Reply.to(Reply.SEE_OTHER, "/type")))
        : Optional.empty();
  }

  /** A page of its own for what is typed now, so that it is there again when it is reloaded. */
  private Reply begin(Map<String, String> query) {
    String id = secrets.fresh();
    Draft draft =
        folder
            .file(query.getOrDefault("score", ""))
            .filter(file -> TypedFiles.typed(file.toString()))
            .map(file -> TypedFiles.open(id, file))
            .orElseGet(() -> Draft.fresh(id, students.instrument()));
    drafts.put(draft);
    return Reply.to(Reply.SEE_OTHER, draft.address());
  }

  private Reply page(Draft draft) {
    ImmutableList<HomeView.Entry> others =
        drafts.unsaved().stream()
            .filter(other -> !other.id().equals(draft.id()))
            .map(other -> new HomeView.Entry(other.address(), title(other), ""))
            .collect(ImmutableList.toImmutableList());
    String name = draft.name().replaceFirst("(?i)\\.abc$", "");
    return Reply.html(
        Reply.DONE,
        TypePage.of(
            frames.titled(text("type.heading")),
            draft.address(),
            draft.text(),
            name,
            draft.unsaved(),
            folder.path().toString(),
            others));
  }

  private static String title(Draft draft) {
    Matcher title = TITLE.matcher(draft.text());
    return title.find() ? title.group(1).strip() : text("type.untitled");
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    Matcher address = ADDRESS.matcher(request.path());
    if (!address.matches() || address.group(2) == null) {
      return Optional.empty();
    }
    Map<String, String> form = request.form(FORM);
    String typed = form.getOrDefault("text", "");
    if (typed.length() > MOST) {
      throw new FingeringException(text("type.long"));
    }
    String id = address.group(1);
    Draft draft = drafts.get(id).orElseGet(() -> Draft.fresh(id, "")).with(typed);
    drafts.put(draft);
    return Optional.of(
        address.group(2).equals("draw")
            ? drawn(draft, form)
            : saved(draft, form.getOrDefault("name", "")));
  }

  private static Reply drawn(Draft draft, Map<String, String> form) {
    int width = Optional.ofNullable(form.get("width")).map(Ints::tryParse).orElse(USUAL_WIDTH);
    ImmutableSet<String> known =
        ImmutableSet.copyOf(
            Splitter.on(' ').omitEmptyStrings().split(form.getOrDefault("known", "")));
    return Reply.html(
        Reply.DONE, TypePage.drawn(TypedMusic.of(draft.text(), width, known), draft.unsaved()));
  }

  private Reply saved(Draft draft, String name) {
    Draft saved = files.save(draft, draft.text(), name);
    // What was typed in the meantime is newer.
    drafts.put(saved.with(drafts.get(draft.id()).orElse(draft).text()));
    return Reply.html(
        Reply.DONE,
        TypePage.saved(
            text("type.saved", saved.name(), folder.path().toString()),
            "/open/" + folder.id(saved.name())));
  }
}
