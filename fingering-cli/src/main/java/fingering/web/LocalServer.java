package fingering.web;

import static fingering.page.view.PageText.text;

import com.google.common.collect.ImmutableList;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import fingering.tables.FingeringException;
import fingering.web.audition.SheetContext;
import fingering.web.audition.SheetsFolder;
import fingering.web.folder.StudentsFolder;
import fingering.web.folder.TeachersFolder;
import fingering.web.lesson.Adviser;
import fingering.web.lesson.HistoryKeeper;
import fingering.web.lesson.LessonKeeper;
import fingering.web.lesson.OpenLessons;
import fingering.web.running.RunningServer;
import fingering.web.running.Wanted;
import fingering.web.typed.TypedFiles;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The server of the local page. Nobody outside of this computer can reach it. */
public final class LocalServer implements AutoCloseable {
  /** Seconds for a request to arrive, and for its answer to be taken. */
  public static final int PATIENCE = 10;

  private static final String ADDRESS = "127.0.0.1";
  private static final byte[] LOOPBACK = {127, 0, 0, 1};
  private static final int THREADS = 8;

  /** How often the open pages are counted. */
  private static final int BEAT_SECONDS = 15;

  private final HttpServer server;
  private final ExecutorService threads;
  private final ScheduledExecutorService watch;
  private final DroppedFiles dropped;
  private final HistoryKeeper histories = new HistoryKeeper();
  private final OpenPages pages;
  private final Entrance entrance;
  private final HandOver handOver;
  private final WarmUp warmUp;
  private final Routes routes;

  private LocalServer(HttpServer server, Path folder, Adviser adviser, Clock clock)
      throws IOException {
    this.server = server;
    String host = ADDRESS + ":" + server.getAddress().getPort();
    Secrets secrets = new Secrets();
    Gate gate = new Gate(host, secrets, clock);
    dropped = DroppedFiles.create(secrets);
    pages = new OpenPages(clock);
    LessonKeeper keeper = new LessonKeeper(folder, clock);
    OpenLessons lessons = new OpenLessons(adviser, keeper, histories);
    Frames frames = new Frames(gate);
    TeachersFolder teachers = new TeachersFolder(folder, name -> secrets.sign("file", name));
    StudentsFolder students = new StudentsFolder(folder, name -> secrets.sign("student", name));
    SheetsFolder sheets = new SheetsFolder(folder, name -> secrets.sign("sheet", name));
    SheetContext audition = new SheetContext(teachers, sheets, students, adviser.sheets(), clock);
    entrance = new Entrance(gate, secrets, lessons, dropped, teachers);
    handOver = new HandOver(host, secrets, entrance);
    warmUp =
        new WarmUp(
            new OpenLessons(adviser, keeper, histories),
            new LessonPages(frames, students),
            dropped);
    LessonPages lessonPages = new LessonPages(frames, students);
    routes =
        new Routes(
            gate,
            frames,
            lessons,
            handOver,
            ImmutableList.of(
                new ResourceHandler(),
                pages,
                new SoundHandler(teachers, lessons, clock),
                new HomeHandler(frames, teachers, clock),
                new StudentsHandler(frames, students, lessons, clock),
                new BesideHandler(frames, teachers, students, lessons, adviser),
                new CheckHandler(frames, teachers, lessons),
                new AuditionHandler(frames, audition),
                new ScalesHandler(frames, audition),
                new TypeHandler(frames, secrets, teachers, students, new TypedFiles(folder, clock)),
                new DropHandler(dropped, lessons),
                new PracticeHandler(teachers, lessons, frames, clock),
                new SheetHandler(teachers, lessons, secrets, clock),
                new CircleHandler(teachers, lessons, lessonPages),
                new LessonHandler(secrets, teachers, students, lessons, lessonPages)));
    threads = Executors.newFixedThreadPool(THREADS, task -> thread(task, "page"));
    watch = Executors.newSingleThreadScheduledExecutor(task -> thread(task, "watch"));
    Future<?> unused =
        watch.scheduleWithFixedDelay(pages::beat, BEAT_SECONDS, BEAT_SECONDS, TimeUnit.SECONDS);
  }

  private static Thread thread(Runnable task, String name) {
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Starts a server on a free port.
   *
   * @param folder the teacher's folder; it need not exist yet
   * @param adviser makes the plans
   * @param clock the time, for tokens that end and for pages that nobody needs any more
   * @throws FingeringException if no port can be had
   */
  public static LocalServer start(Path folder, Adviser adviser, Clock clock) {
    // The server of the JDK takes these limits from properties only, when it is first used.
    String seconds = Integer.toString(PATIENCE);
    System.setProperty("sun.net.httpserver.maxReqTime", seconds);
    System.setProperty("sun.net.httpserver.maxReqHeaders", "60");
    // Head and body are written one after the other: the body must not wait until the head arrives.
    System.setProperty("sun.net.httpserver.nodelay", "true");
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

  /** What a second start of the program must know to find this server. */
  public RunningServer running() {
    return handOver.running();
  }

  /** An address that opens the first page, once and within a minute. */
  public String address() {
    return address(Wanted.FIRST_PAGE);
  }

  /**
   * An address that opens a score or lesson, once and within a minute.
   *
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  public String addressOf(Path file) {
    return address(new Wanted(Optional.of(file), false));
  }

  /**
   * An address that opens what is wanted, once and within a minute.
   *
   * @throws FingeringException if it cannot be read; the message is one sentence
   */
  public String address(Wanted wanted) {
    return "http://" + running().host() + entrance.path(wanted);
  }

  /**
   * Loads in the background what the first plan needs, so that it comes sooner. Later calls do
   * nothing.
   */
  public void warmUp() {
    warmUp.start();
  }

  /** The pages that are open. */
  OpenPages pages() {
    return pages;
  }

  /**
   * Waits until no page has been open for half an hour.
   *
   * @throws InterruptedException if the thread is interrupted before
   */
  public void awaitEnd() throws InterruptedException {
    pages.awaitEnd();
  }

  private void handle(HttpExchange exchange) throws IOException {
    Reply reply = reply(exchange);
    if (reply.staysOpen()) {
      headers(exchange, reply);
      pages.add(exchange);
      return;
    }
    try (exchange) {
      SendLimit.within(watch, PATIENCE, () -> send(exchange, reply));
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    try {
      Reply reply = routes.answer(new Request(exchange));
      if (reply.status() != Reply.FORBIDDEN) {
        pages.used();
      }
      return reply;
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

  private static void headers(HttpExchange exchange, Reply reply) {
    Gate.HEADERS.forEach(exchange.getResponseHeaders()::set);
    exchange.getResponseHeaders().set("Content-Type", reply.type());
    reply.headers().forEach(exchange.getResponseHeaders()::set);
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    headers(exchange, reply);
    byte[] body = exchange.getRequestMethod().equals("HEAD") ? new byte[0] : reply.bytes();
    exchange.sendResponseHeaders(reply.status(), body.length == 0 ? -1 : body.length);
    if (body.length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(body);
      }
    }
  }

  @Override
  public void close() {
    pages.close();
    server.stop(0);
    watch.shutdownNow();
    threads.shutdownNow();
    histories.close();
    try {
      dropped.close();
    } catch (IOException e) {
      // What is left lies in the folder for temporary files.
      return;
    }
  }
}
