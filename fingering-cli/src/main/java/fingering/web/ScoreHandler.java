package fingering.web;

import com.google.common.base.Ascii;
import java.io.IOException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Scores that are dropped or opened, and what is chosen in them. */
final class ScoreHandler implements Handler {
  private static final Pattern OPEN = Pattern.compile("/open/([A-Za-z0-9_-]{24})(/plans)?");

  private final Frames frames;
  private final TeachersFolder folder;
  private final DroppedFiles dropped;
  private final OpenScores scores;
  private final ScorePages pages;

  ScoreHandler(
      Frames frames,
      TeachersFolder folder,
      DroppedFiles dropped,
      OpenScores scores,
      ScorePages pages) {
    this.frames = frames;
    this.folder = folder;
    this.dropped = dropped;
    this.scores = scores;
    this.pages = pages;
  }

  @Override
  public Optional<Reply> get(Request request) {
    Matcher address = OPEN.matcher(request.path());
    if (!address.matches()) {
      return Optional.empty();
    }
    boolean plans = address.group(2) != null;
    return opened(address.group(1))
        .map(
            open ->
                plans
                    ? pages.plans(open, request.query(), request.page())
                    : ScorePages.page(open, edit(open), frames));
  }

  /** Where the notes of a typed score of the folder are edited; empty for others. */
  private String edit(OpenScore open) {
    boolean typed =
        Ascii.toLowerCase(open.name()).endsWith(TypedFiles.ENDING)
            && folder.file(open.id()).isPresent();
    return typed ? "/type?score=" + open.id() : "";
  }

  @Override
  public Optional<Reply> post(Request request) throws IOException {
    if (request.path().equals("/scores")) {
      return Optional.of(drop(request));
    }
    Matcher address = OPEN.matcher(request.path());
    Optional<OpenScore> open =
        address.matches() && address.group(2) == null ? opened(address.group(1)) : Optional.empty();
    return open.isEmpty()
        ? Optional.empty()
        : Optional.of(pages.change(open.get(), request.form(), request.page()));
  }

  /** An open score, or one of the folder that is opened now. */
  private Optional<OpenScore> opened(String id) {
    return scores
        .get(id)
        .or(
            () ->
                folder
                    .file(id)
                    .map(file -> scores.open(id, file, String.valueOf(file.getFileName()))));
  }

  /** Takes a file that was dropped on the page. */
  private Reply drop(Request request) throws IOException {
    byte[] body = request.body();
    String name = Request.decoded(request.header("X-Name").orElse(""));
    ScoreName kind = ScoreName.of(name);
    if (!kind.readable()) {
      return Reply.html(Reply.UNUSABLE, kind.adviceWithLink()).with("HX-Retarget", "#trouble");
    }
    DroppedFiles.Dropped file = dropped.keep(name, body);
    OpenScore open = scores.open(file.id(), file.path(), file.name());
    return Reply.to(Reply.CREATED, open.address());
  }
}
