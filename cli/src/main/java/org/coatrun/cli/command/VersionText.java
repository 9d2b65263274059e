package org.coatrun.cli.command;

import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program's archive. */
final class VersionText implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = VersionText.class.getPackage().getImplementationVersion();
    return new String[] {"coatrun " + (version == null ? "(not packaged)" : version)};
  }
}
