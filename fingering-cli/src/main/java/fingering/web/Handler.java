package fingering.web;

import fingering.tables.FingeringException;
import java.io.IOException;
import java.util.Optional;

/**
 * Answers the requests to some addresses. The gate has checked them before.
 *
 * <p>Both methods throw {@link FingeringException} for what cannot be done; the message is shown
 * beside the thing it concerns.
 */
interface Handler {
  /** The answer to a GET; empty if the address is not one of this handler's. */
  Optional<Reply> get(Request request);

  /**
   * The answer to a POST; empty if the address is not one of this handler's.
   *
   * @throws IOException if the body cannot be read
   */
  Optional<Reply> post(Request request) throws IOException;
}
