package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableMap;
import fingering.tables.FingeringException;
import fingering.web.running.RunningServer;
import fingering.web.running.Wanted;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Answers a second start of the program, which hands over what it wants to see. It knows a secret
 * from a file that only the owner of the server can read.
 */
final class HandOver {
  private static final String TEXT = "text/plain; charset=utf-8";

  private final RunningServer running;
  private final Entrance entrance;

  HandOver(String host, Secrets secrets, Entrance entrance) {
    running = new RunningServer(host, secrets.fresh(), secrets.fresh());
    this.entrance = entrance;
  }

  RunningServer running() {
    return running;
  }

  /** Whether a start of the program seems to ask. */
  boolean asked(Request request) {
    return request.path().equals(RunningServer.PATH) && request.method().equals("POST");
  }

  /**
   * The answer: a path that opens what is wanted, or a sentence that says why it cannot be opened.
   *
   * @throws IOException if the body cannot be read
   */
  Reply answer(Request request) throws IOException {
    boolean known =
        request
            .header(RunningServer.SECRET)
            .filter(sent -> Secrets.same(sent, running.secret()))
            .isPresent();
    // Only a browser names an origin.
    if (!known || request.header("Origin").isPresent()) {
      return Reply.of(Reply.FORBIDDEN, TEXT, text("gate.closed") + "\n");
    }
    return opened(request.form()).with(RunningServer.PROOF, running.proof());
  }

  private Reply opened(ImmutableMap<String, String> form) {
    Optional<Path> file = Optional.ofNullable(form.get(RunningServer.FILE)).map(Path::of);
    try {
      return Reply.of(
          Reply.DONE, TEXT, entrance.path(new Wanted(file, form.containsKey(RunningServer.DEMO))));
    } catch (FingeringException e) {
      return Reply.of(Reply.UNUSABLE, TEXT, String.valueOf(e.getMessage()));
    }
  }
}
