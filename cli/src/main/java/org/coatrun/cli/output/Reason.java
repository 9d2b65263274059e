package org.coatrun.cli.output;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** Why a file system said no, in a few words. */
public final class Reason {

  private Reason() {}

  /** The reason of {@code e}, without class names. */
  public static String of(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no permission";
    }
    if (e instanceof NoSuchFileException) {
      return "it does not exist";
    }
    if (e instanceof FileAlreadyExistsException existing) {
      return existing.getReason() == null ? "a file is in the way" : existing.getReason();
    }
    if (e instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason().toLowerCase(Locale.ROOT);
    }
    if (e.getCause() instanceof ReadOnlyFileSystemException) {
      return "it is read-only";
    }
    return e.getMessage() == null ? "the file system refused" : e.getMessage();
  }
}
