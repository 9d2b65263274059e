package org.coatrun.cli.command;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.coatrun.cli.console.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Shows the exit codes in the help of each command. */
final class ExitCodeTable {

  private ExitCodeTable() {}

  static void addTo(CommandLine command) {
    Map<String, String> meanings = new LinkedHashMap<>();
    Arrays.stream(ExitCode.values())
        .forEach(code -> meanings.put(Integer.toString(code.code()), code.meaning()));
    addTo(command, meanings);
  }

  private static void addTo(CommandLine command, Map<String, String> meanings) {
    UsageMessageSpec usage = command.getCommandSpec().usageMessage();
    usage.exitCodeListHeading("%nExit codes:%n");
    usage.exitCodeList(meanings);
    command.getSubcommands().values().forEach(sub -> addTo(sub, meanings));
  }
}
