package org.coatrun.cli.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
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
   * The text of a file in UTF-8, or in UTF-16 with its mark, as some shells write what a command
   * prints.
   *
   * @throws CommandFailure where it is missing, a folder, larger than 64 MB, or neither
   */
  public static String read(Path file) throws CommandFailure {
    if (Files.isDirectory(file)) {
      throw refused(file, "it is a folder; name a file");
    }
    try {
      byte[] bytes = bytes(file);
      return charset(bytes).newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw refused(file, "it is not plain text in UTF-8; save it as that");
    } catch (IOException e) {
      throw refused(file, Reason.of(e));
    }
  }

  private static Charset charset(byte[] bytes) {
    int mark = bytes.length < 2 ? 0 : ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
    return mark == 0xFFFE || mark == 0xFEFF ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
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
