package tankyard.app.example;

import java.time.LocalDate;
import java.util.concurrent.Executor;
import tankyard.app.Studio;
import tankyard.app.memory.Memory;
import tankyard.app.style.Look;
import tankyard.engine.catalog.Catalogs;

/** A studio with no world outside: no files asked for, no clock, no other thread. */
public final class TestWorld {
  private TestWorld() {}

  public static Studio studio(Look look, Executor background) {
    return studio(look, background, new TestDialogs(), new TestPicker());
  }

  public static Studio studio(
      Look look, Executor background, TestDialogs dialogs, TestPicker picker) {
    return new Studio(
        new Studio.Outside(
            Catalogs.find(),
            LocalDate.of(2026, 11, 25),
            Memory.forgetful(),
            look,
            dialogs,
            picker,
            background,
            Runnable::run),
        SmallLease.lease());
  }
}
