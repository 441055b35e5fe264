package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import fingering.tables.FingeringException;
import fingering.web.audition.SheetsFolder;
import fingering.web.folder.StudentsFolder;
import fingering.web.lesson.Adviser;
import fingering.web.lesson.LessonKeeper;
import fingering.web.lesson.OpenLessons;
import fingering.web.typed.TypedFiles;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;

/** The server of the local page. Nobody outside of this computer can reach it. */
public final class LocalServer implements AutoCloseable {
  /** Seconds for a request to arrive, and for its answer to be taken. */
  public static final int PATIENCE = 10;

  private static final String ADDRESS = "127.0.0.1";
  private static final byte[] LOOPBACK = {127, 0, 0, 1};
  private static final int THREADS = 8;

  private final HttpServer server;
  private final ExecutorService threads;
  private final Secrets secrets;
  private final Gate gate;
  private final DroppedFiles dropped;
  private final OpenLessons lessons;
  private final Routes routes;

  private LocalServer(HttpServer server, Path folder, Adviser adviser, Clock clock)
      throws IOException {
    this.server = server;
    secrets = new Secrets();
    gate = new Gate(ADDRESS + ":" + server.getAddress().getPort(), secrets, clock);
    dropped = DroppedFiles.create(secrets);
    lessons = new OpenLessons(adviser, new LessonKeeper(folder, clock));
    Frames frames = new Frames(gate);
    TeachersFolder teachers = new TeachersFolder(folder, secrets);
    StudentsFolder students = new StudentsFolder(folder, name -> secrets.sign("student", name));
    SheetsFolder sheets = new SheetsFolder(folder, name -> secrets.sign("sheet", name));
    routes =
        new Routes(
            gate,
            frames,
            lessons,
            ImmutableList.of(
                new ResourceHandler(),
                new HomeHandler(frames, teachers),
                new StudentsHandler(frames, students, clock),
                new BesideHandler(frames, students, lessons, adviser),
                new AuditionHandler(frames, teachers, sheets, students, adviser.sheets(), clock),
                new ScalesHandler(frames, teachers, sheets, students, adviser.sheets(), clock),
                new TypeHandler(frames, secrets, teachers, new TypedFiles(folder, clock)),
                new DropHandler(dropped, lessons),
                new LessonHandler(teachers, lessons, new LessonPages(frames))));
    threads =
        Executors.newFixedThreadPool(
            THREADS,
            task -> {
              Thread thread = new Thread(task, "page");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Starts a server on a free port.
   *
   * @param folder the teacher's folder; it need not exist yet
   * @param adviser makes the plans
   * @param clock the time, for tokens that end
   * @throws FingeringException if no port can be had
   */
  public static LocalServer start(Path folder, Adviser adviser, Clock clock) {
    // The server of the JDK takes these limits from properties only, when it is first used.
    String seconds = Integer.toString(PATIENCE);
    System.setProperty("sun.net.httpserver.maxReqTime", seconds);
    System.setProperty("sun.net.httpserver.maxReqHeaders", "60");
    try {
      HttpServer server =
          HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(LOOPBACK), 0), 0);
      LocalServer local = new LocalServer(server, folder, adviser, clock);
      server.setExecutor(local.threads);
      server.createContext("/", local::handle);
      server.start();
      return local;
    } catch (IOException e) {
      throw new FingeringException(text("server.none"), e);
    }
  }

  /** The port. */
  public int port() {
    return server.getAddress().getPort();
  }

  /** An address that opens the first page, once and within a minute. */
  public String address() {
    return address(Optional.empty());
  }

  /**
   * An address that opens a score or lesson, once and within a minute.
   *
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  public String addressOf(Path file) {
    return address(Optional.of(lessons.open(secrets.fresh(), file, file.toString(), true).id()));
  }

  private String address(Optional<String> score) {
    return "http://%s:%d%s?token=%s%s"
        .formatted(
            ADDRESS,
            port(),
            Routes.ENTER,
            gate.token(),
            score.map(id -> "&score=" + id).orElse(""));
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      send(exchange, reply(exchange));
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    try {
      return routes.answer(new Request(exchange));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      // The page stays as it was; the sentence asks for a report.
      return Reply.of(Reply.FAILED, "text/plain; charset=utf-8", text("server.failed", place(e)));
    }
  }

  /** The line of the program that failed. */
  private static String place(Throwable failure) {
    return Stream.of(failure.getStackTrace())
        .filter(line -> line.getClassName().startsWith("fingering."))
        .findFirst()
        .map(line -> line.getFileName() + ":" + line.getLineNumber())
        .orElseGet(() -> failure.getClass().getSimpleName());
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    Gate.HEADERS.forEach(exchange.getResponseHeaders()::set);
    exchange.getResponseHeaders().set("Content-Type", reply.type());
    reply.headers().forEach(exchange.getResponseHeaders()::set);
    byte[] body =
        exchange.getRequestMethod().equals("HEAD")
            ? new byte[0]
            : reply.body().getBytes(StandardCharsets.UTF_8);
    exchange.sendResponseHeaders(reply.status(), body.length == 0 ? -1 : body.length);
    if (body.length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(body);
      }
    }
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
    try {
      dropped.close();
    } catch (IOException e) {
      // What is left lies in the folder for temporary files.
      return;
    }
  }
}
