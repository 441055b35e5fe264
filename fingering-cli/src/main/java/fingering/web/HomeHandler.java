package fingering.web;

import com.google.common.collect.ImmutableList;
import fingering.page.LivePage;
import fingering.page.live.HomeView;
import java.util.Optional;

/** The first page: the scores and lessons of the teacher's folder. */
final class HomeHandler implements Handler {
  private final Frames frames;
  private final TeachersFolder folder;

  HomeHandler(Frames frames, TeachersFolder folder) {
    this.frames = frames;
    this.folder = folder;
  }

  @Override
  public Optional<Reply> get(Request request) {
    return request.path().equals("/") ? Optional.of(home()) : Optional.empty();
  }

  @Override
  public Optional<Reply> post(Request request) {
    return Optional.empty();
  }

  private Reply home() {
    TeachersFolder.Listing listing = folder.list();
    HomeView view =
        new HomeView(
            folder.path().toString(),
            entries(listing, false),
            entries(listing, true),
            listing.problems());
    return Reply.html(Reply.DONE, LivePage.home(frames.usual(), view));
  }

  private static ImmutableList<HomeView.Entry> entries(
      TeachersFolder.Listing listing, boolean lessons) {
    return listing.entries().stream()
        .filter(entry -> entry.lesson() == lessons)
        .map(entry -> new HomeView.Entry("/open/" + entry.id(), entry.name()))
        .collect(ImmutableList.toImmutableList());
  }
}
