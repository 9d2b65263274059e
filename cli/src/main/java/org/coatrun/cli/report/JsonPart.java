package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Fields of takeoff.json that stand at its end and come from elsewhere. */
@FunctionalInterface
public interface JsonPart {

  void write(JsonGenerator json) throws IOException;
}
