package org.coatrun.cli.output;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;

/**
 * A folder that gets its files all at once: they are written aside, on the same disk and side by
 * side, and moved into place by {@link #publish()}.
 *
 * <p>Whether the folder can be written shows when this is opened, before any long work. When a run
 * fails or is interrupted before it publishes, everything is as it was; an interruption while files
 * move waits until all have moved. Files of the folder that the run does not write stay.
 */
public final class OutputFolder implements AutoCloseable {

  private final Path target;
  private final List<Path> createdParents;
  private final Path aside;
  private final List<String> names = new ArrayList<>();
  private final Writers writers = new Writers();
  private final Thread cleaner = new Thread(this::discard, "clean-up");
  private boolean closed;

  private OutputFolder(Path target, List<Path> createdParents, Path aside) {
    this.target = target;
    this.createdParents = createdParents;
    this.aside = aside;
  }

  /**
   * Opens {@code folder} for results.
   *
   * @throws CommandFailure where it is no folder, or cannot be made or written
   */
  public static OutputFolder open(Path folder) throws CommandFailure {
    Path target = folder.toAbsolutePath().normalize();
    if (Files.exists(target) && !Files.isDirectory(target)) {
      throw cannotWrite(folder, "it is a file; name a folder");
    }
    if (Files.isDirectory(target) && !Files.isWritable(target)) {
      throw cannotWrite(folder, "it may not be written; choose another folder");
    }
    List<Path> created = new ArrayList<>();
    try {
      Path base = Files.isDirectory(target) ? target : target.getParent();
      createMissing(base, created);
      OutputFolder output = new OutputFolder(target, created, aside(base));
      Runtime.getRuntime().addShutdownHook(output.cleaner);
      return output;
    } catch (IOException e) {
      deleteEmpty(created);
      throw cannotWrite(folder, Reason.of(e) + "; choose another folder");
    }
  }

  /**
   * A new folder. Its name need only be a new one; one that nobody can guess takes long to find.
   */
  private static Path aside(Path base) throws IOException {
    for (long n = System.nanoTime(); ; n++) {
      try {
        return Files.createDirectory(base.resolve(".coatrun-" + n));
      } catch (FileAlreadyExistsException e) {
        // Another run's, or left by one that was killed: the next name is tried.
      }
    }
  }

  /** What writes one file. */
  @FunctionalInterface
  public interface Content {
    void writeTo(Writer writer) throws IOException;
  }

  /**
   * Writes a file in UTF-8, aside, while the caller goes on: nothing that {@code content} reads may
   * change any more. What could not be written shows when all is published.
   */
  public void write(String name, Content content) {
    writeBytes(
        name,
        out -> {
          Writer writer = new BufferedWriter(new OutputStreamWriter(out, UTF_8.newEncoder()));
          content.writeTo(writer);
          writer.flush();
        });
  }

  /** What writes one file byte by byte. */
  @FunctionalInterface
  public interface Bytes {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Writes a file of bytes, as {@link #write} does. */
  public void writeBytes(String name, Bytes content) {
    names.add(name);
    writers.ask(
        () -> {
          writeAside(name, content);
          return null;
        });
  }

  private void writeAside(String name, Bytes content) throws CommandFailure {
    try (OutputStream out = new BufferedOutputStream(create(name))) {
      content.writeTo(out);
    } catch (IOException e) {
      throw cannotWrite(target.resolve(name), Reason.of(e));
    }
  }

  private synchronized OutputStream create(String name) throws IOException {
    if (closed) {
      throw new IOException("the run is over");
    }
    return Files.newOutputStream(aside.resolve(name));
  }

  /**
   * Moves all files into place when they are written.
   *
   * @throws CommandFailure where one cannot be written or moved
   */
  public void publish() throws CommandFailure {
    writers.await();
    move();
  }

  private synchronized void move() throws CommandFailure {
    String name = "";
    try {
      Files.createDirectories(target);
      for (String next : names) {
        name = next;
        refuseFolder(target.resolve(next));
      }
      for (String next : names) {
        name = next;
        Files.move(aside.resolve(next), target.resolve(next), StandardCopyOption.REPLACE_EXISTING);
      }
      createdParents.clear();
    } catch (IOException e) {
      throw cannotWrite(target.resolve(name), Reason.of(e));
    }
  }

  /** Takes away whatever was written aside. */
  @Override
  public void close() {
    discard();
    try {
      Runtime.getRuntime().removeShutdownHook(cleaner);
    } catch (IllegalStateException e) {
      // The program is ending: the hook is running, and finds nothing left to do.
    }
  }

  private void discard() {
    writers.stop();
    remove();
  }

  private synchronized void remove() {
    if (closed) {
      return;
    }
    closed = true;
    try (var left = Files.list(aside)) {
      left.toList().forEach(OutputFolder::deleteQuietly);
    } catch (IOException e) {
      // It is gone already, or cannot be read: deleting it says so, or does not matter.
    }
    deleteQuietly(aside);
    deleteEmpty(createdParents);
  }

  private static void refuseFolder(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw new FileAlreadyExistsException(file.toString(), null, "it is a folder");
    }
  }

  private static void createMissing(Path folder, List<Path> created) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    if (folder.getParent() != null) {
      createMissing(folder.getParent(), created);
    }
    Files.createDirectory(folder);
    created.add(folder);
  }

  private static void deleteEmpty(List<Path> created) {
    for (int i = created.size() - 1; i >= 0; i--) {
      deleteQuietly(created.get(i));
    }
  }

  private static void deleteQuietly(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      // Nothing more can be done about it, and the run's own sentence matters more.
    }
  }

  private static CommandFailure cannotWrite(Path path, String reason) {
    return new CommandFailure(ExitCode.CANNOT_WRITE, "cannot write " + path + ": " + reason);
  }
}
