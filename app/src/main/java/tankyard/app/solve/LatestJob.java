package tankyard.app.solve;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import tankyard.engine.api.Cancel;

/**
 * Work off the window's thread of which only the latest counts: each start overtakes the one
 * before.
 */
final class LatestJob {
  private final String name;
  private final Executor background;
  private final Executor window;
  private AtomicBoolean overtaken = new AtomicBoolean();

  /**
   * A job not yet started.
   *
   * @param name told in the log when it fails: "The lease could not be worked out"
   * @param background runs a job later, off the window's thread
   * @param window runs a job on the window's thread
   */
  LatestJob(String name, Executor background, Executor window) {
    this.name = name;
    this.background = background;
    this.window = window;
  }

  /**
   * Starts anew; what ends after another start is dropped.
   *
   * @param show called on the window's thread with what was worked out
   * @param fail called there with the words of what went wrong
   */
  <T> void start(Function<Cancel, T> work, Consumer<T> show, Consumer<String> fail) {
    overtake();
    AtomicBoolean mine = new AtomicBoolean();
    overtaken = mine;
    background.execute(
        () -> {
          if (!mine.get()) {
            publish(mine, work(work, mine, show, fail));
          }
        });
  }

  /** Gives up what is under way. */
  void overtake() {
    overtaken.set(true);
  }

  private <T> Runnable work(
      Function<Cancel, T> work, AtomicBoolean mine, Consumer<T> show, Consumer<String> fail) {
    try {
      T found = work.apply(mine::get);
      return () -> show.accept(found);
    } catch (RuntimeException | Error e) {
      // Whatever goes wrong in there, the drawing must stay usable and the owner must be told; an
      // error that got away would leave "working it out" on the screen for ever.
      return () -> {
        log(e);
        fail.accept(e.getMessage() == null ? e.toString() : e.getMessage());
      };
    }
  }

  private void publish(AtomicBoolean mine, Runnable show) {
    window.execute(
        () -> {
          if (!mine.get()) {
            show.run();
          }
        });
  }

  private void log(Throwable e) {
    System.getLogger(LatestJob.class.getName()).log(System.Logger.Level.WARNING, name, e);
  }
}
