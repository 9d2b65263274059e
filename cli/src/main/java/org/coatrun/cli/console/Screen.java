package org.coatrun.cli.console;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/**
 * A standard stream that remembers why it could not be written: what prints to it never asks, and a
 * list that a full disk cut off must not pass for a whole one.
 */
public final class Screen extends OutputStream {

  private final OutputStream to;
  private Optional<IOException> failure = Optional.empty();

  public Screen(FileDescriptor stream) {
    this(new FileOutputStream(stream));
  }

  Screen(OutputStream to) {
    this.to = to;
  }

  /** What went wrong first; empty where all was written, or the reader went away before the end. */
  public Optional<IOException> failure() {
    return failure.filter(e -> !String.valueOf(e.getMessage()).contains("Broken pipe"));
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    try {
      to.write(bytes, offset, length);
    } catch (IOException e) {
      failure = failure.or(() -> Optional.of(e));
      throw e;
    }
  }
}
