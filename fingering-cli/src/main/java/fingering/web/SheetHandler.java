package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.cache.Cache;
import com.google.common.cache.CacheBuilder;
import com.google.common.hash.Hashing;
import fingering.files.FileProblem;
import fingering.page.HandoutPage;
import fingering.page.LessonTools;
import fingering.page.live.SheetBar;
import fingering.page.view.Paper;
import fingering.plan.marks.MarkedCopy;
import fingering.plan.marks.MarkedCopy.Extent;
import fingering.plan.marks.StringSigns;
import fingering.tables.FingeringException;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.LessonKeeper;
import fingering.web.lesson.OpenLesson;
import fingering.web.lesson.OpenLessons;
import fingering.web.lesson.Planned;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What leaves the page: the sheet for the student, and the part with fingers as a file. */
final class SheetHandler implements Handler {
  private static final Pattern ADDRESS =
      Pattern.compile("/open/([A-Za-z0-9_-]{24})/(handout|part)");

  private static final Pattern STYLE = Pattern.compile("(?s)<style>(.*?)</style>");
  private static final String POLICY = "Content-Security-Policy";

  /** The copies that can be downloaded. */
  private static final int MOST = 200;

  private final TeachersFolder folder;
  private final OpenLessons lessons;
  private final Secrets secrets;
  private final Clock clock;

  /** The files that were written, by the ids under which they can be downloaded. */
  private final Cache<String, Path> written = CacheBuilder.newBuilder().maximumSize(MOST).build();

  SheetHandler(TeachersFolder folder, OpenLessons lessons, Secrets secrets, Clock clock) {
    this.folder = folder;
    this.lessons = lessons;
    this.secrets = secrets;
    this.clock = clock;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = ADDRESS.matcher(request.path());
    return address.matches()
        ? lessons
            .opened(address.group(1), folder::file)
            .map(
                open ->
                    address.group(2).equals("part")
                        ? download(request.query().getOrDefault("file", ""))
                        : sheet(open, request.query().getOrDefault("paper", "")))
        : Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    Matcher address = ADDRESS.matcher(request.path());
    if (!address.matches() || !address.group(2).equals("part")) {
      return Optional.empty();
    }
    Map<String, String> form = request.form();
    return lessons.opened(address.group(1), folder::file).map(open -> save(open.id(), form));
  }

  /** The handout of the plan that is shown, allowed to use its own style and no other. */
  private Reply sheet(OpenLesson opened, String wanted) {
    Paper paper = wanted.equals(Paper.LETTER.style()) ? Paper.LETTER : Paper.A4;
    OpenLesson open = lessons.planned(opened.id()).open();
    Planned planned = open.planned().orElseThrow();
    LocalDate today = LocalDate.now(clock);
    String html =
        HandoutPage.of(
                planned.advice().handout(planned.plan(), open.stored(), today, paper),
                new SheetBar(paper, open.address() + "/handout"))
            .html();
    return Reply.html(Reply.DONE, html)
        .with(POLICY, Gate.HEADERS.get(POLICY) + "; style-src " + allowed(html));
  }

  /** The hash of the style that a page has in itself. */
  private static String allowed(String html) {
    Matcher style = STYLE.matcher(html);
    String text = style.find() ? style.group(1) : "";
    byte[] hash = Hashing.sha256().hashString(text, StandardCharsets.UTF_8).asBytes();
    return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
  }

  /** Writes a copy with fingers beside the lesson, and says where. */
  private Reply save(String id, Map<String, String> form) {
    OpenLesson open = lessons.kept(id);
    Planned planned = open.planned().orElseThrow();
    Extent extent =
        switch (form.getOrDefault("extent", "")) {
          case "excerpt" -> Extent.EXCERPT;
          case "score" -> Extent.SCORE;
          default -> Extent.PART;
        };
    MarkedCopy copy =
        new MarkedCopy(
            extent,
            form.getOrDefault("fingers", "").equals("sparing"),
            form.containsKey("words") ? StringSigns.WORDS : StringSigns.ELEMENTS);
    String name = "%s-%s.musicxml".formatted(open.stored().name(), ending(extent));
    Path score = open.stored().scoreFile();
    Path file =
        LessonKeeper.first(
            open.stored().file().resolveSibling(name),
            target -> !same(target, score) && planned.advice().write(planned.plan(), copy, target));
    String key = secrets.fresh();
    written.put(key, file);
    return Reply.html(
        Reply.DONE,
        LessonTools.written(
            String.valueOf(file.getFileName()),
            String.valueOf(file.toAbsolutePath().getParent()),
            open.address() + "/part?file=" + key));
  }

  private static String ending(Extent extent) {
    return switch (extent) {
      case EXCERPT -> "excerpt";
      case PART -> "part";
      case SCORE -> "score";
    };
  }

  private static boolean same(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private Reply download(String key) {
    Path file =
        Optional.ofNullable(written.getIfPresent(key))
            .filter(Files::isRegularFile)
            .orElseThrow(() -> new FingeringException(text("part.gone")));
    try {
      return Reply.file(Files.readAllBytes(file), String.valueOf(file.getFileName()));
    } catch (IOException e) {
      throw new FingeringException(FileProblem.reading(file, e), e);
    }
  }
}
