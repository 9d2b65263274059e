package org.coatrun.cli.browser;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Gives tests one browser for the whole run; without one, they are skipped with a word. */
public final class InBrowser implements BeforeAllCallback, ParameterResolver {

  private static final Namespace PLACE = Namespace.create(InBrowser.class);

  @Override
  public void beforeAll(ExtensionContext context) {
    Optional<Path> program = Browser.installed();
    assumeTrue(program.isPresent(), "no browser on this machine: install chromium");
    context
        .getRoot()
        .getStore(PLACE)
        .computeIfAbsent(Browser.class, key -> start(program.orElseThrow()), Browser.class);
  }

  private static Browser start(Path program) {
    try {
      return Browser.start(program);
    } catch (IOException e) {
      throw new UncheckedIOException("the browser does not start", e);
    }
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == Browser.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context.getRoot().getStore(PLACE).get(Browser.class);
  }
}
