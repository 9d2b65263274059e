package org.coatrun.cli.command;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Stack;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coatrun.shared.yaml.QuantityText;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/**
 * A quantity behind an option, in one word or several: {@code --depth 9in}, {@code --depth 9 in}.
 */
final class QuantityWords implements IParameterConsumer {

  private static final Pattern OPTION = Pattern.compile("-[^0-9.].*");
  private static final Pattern SECONDS = Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,9})?) ?s?");

  @Override
  @SuppressWarnings("JdkObsolete") // The stack is picocli's.
  public void consumeParameters(Stack<String> args, ArgSpec argument, CommandSpec command) {
    Deque<String> words = new ArrayDeque<>();
    while (!args.isEmpty() && !OPTION.matcher(args.peek()).matches()) {
      words.add(args.pop());
    }
    String name = ((OptionSpec) argument).longestName();
    try {
      argument.setValue(parse(String.join(" ", words), argument.type()));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(command.commandLine(), name + ": " + e.getMessage());
    }
  }

  private static Object parse(String text, Class<?> type) {
    if (type != Double.class) {
      return QuantityText.parse(text, type);
    }
    Matcher seconds = SECONDS.matcher(text);
    if (!seconds.matches()) {
      throw new IllegalArgumentException("'" + text + "' is not a number of seconds.");
    }
    return Double.valueOf(seconds.group(1));
  }
}
