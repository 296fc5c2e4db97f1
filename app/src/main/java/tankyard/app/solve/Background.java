package tankyard.app.solve;

import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** The one thread that works leases out; it does not keep the program alive. */
public final class Background implements Executor, AutoCloseable {
  /** Shorter than the eye notices, longer than two mouse events of one drag are apart. */
  private static final long WAIT_MILLIS = 30;

  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(
          job -> {
            Thread named = new Thread(job, "solve");
            named.setDaemon(true);
            return named;
          });

  @Override
  public void execute(Runnable job) {
    var unused = thread.schedule(job, WAIT_MILLIS, TimeUnit.MILLISECONDS);
  }

  @Override
  public void close() {
    thread.shutdownNow();
  }
}
