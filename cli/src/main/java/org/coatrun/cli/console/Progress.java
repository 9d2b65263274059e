package org.coatrun.cli.console;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * Shows on one line how far long work has come; shows nothing where nobody watches, and nothing for
 * work that is over in an instant.
 */
public final class Progress {

  private static final long QUIET_NANOS = 500_000_000L;
  private static final long STEP_NANOS = 100_000_000L;
  private static final int WIDTH = 60;

  private final PrintWriter out;
  private final boolean shown;
  private final LongSupplier clock;
  private final long start;
  private long last;
  private boolean dirty;

  private Progress(PrintWriter out, boolean shown, LongSupplier clock) {
    this.out = out;
    this.shown = shown;
    this.clock = clock;
    start = clock.getAsLong();
    last = start;
  }

  /** Progress on {@code err} where a person watches it. */
  public static Progress on(PrintWriter err) {
    return new Progress(err, isWatched(), System::nanoTime);
  }

  // The launcher for shells knows whether the error stream is a terminal. The one for Windows does
  // not; there jdk.console=java.base keeps the console null, in Java 22 too, where nobody watches.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isWatched() {
    String known = System.getProperty("coatrun.watched");
    return known == null ? System.console() != null : Boolean.parseBoolean(known);
  }

  /** Progress that is shown whoever watches: for tests. */
  static Progress shownOn(PrintWriter err, LongSupplier nanos) {
    return new Progress(err, true, nanos);
  }

  /**
   * Tells how far {@code work} has come. May be called from several threads, and often.
   *
   * @param share from 0 to 1
   */
  public synchronized void at(String work, double share) {
    if (!shown) {
      return;
    }
    long now = clock.getAsLong();
    if (now - start < QUIET_NANOS || now - last < STEP_NANOS) {
      return;
    }
    last = now;
    dirty = true;
    String text = String.format(Locale.ROOT, "%s %3.0f %%", work, 100 * share);
    out.print("\r" + text + " ".repeat(Math.max(0, WIDTH - text.length())));
    out.flush();
  }

  /** Clears the line. */
  public synchronized void done() {
    if (dirty) {
      out.print("\r" + " ".repeat(WIDTH) + "\r");
      out.flush();
      dirty = false;
    }
  }
}
