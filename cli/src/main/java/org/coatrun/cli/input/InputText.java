package org.coatrun.cli.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.output.Reason;

/** Text files that a user hands in; a file that cannot be used ends the command with a sentence. */
public final class InputText {

  private static final int MOST_BYTES = 64 << 20;

  private InputText() {}

  /**
   * The text of a file in UTF-8.
   *
   * @throws CommandFailure where it is missing, a folder, larger than 64 MB, or not UTF-8
   */
  public static String read(Path file) throws CommandFailure {
    if (Files.isDirectory(file)) {
      throw refused(file, "it is a folder; name a file");
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes(file))).toString();
    } catch (CharacterCodingException e) {
      throw refused(file, "it is not plain text in UTF-8; save it as that");
    } catch (IOException e) {
      throw refused(file, Reason.of(e));
    }
  }

  private static byte[] bytes(Path file) throws IOException, CommandFailure {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw refused(file, "it is larger than 64 MB");
      }
      return bytes;
    }
  }

  private static CommandFailure refused(Path file, String reason) {
    return new CommandFailure(ExitCode.BAD_INPUT, "cannot read " + file + ": " + reason);
  }
}
