package org.coatrun.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;

/** Lines of JSON for people to read: each row of a list stands on a line of its own. */
final class RowPrinter extends DefaultPrettyPrinter {

  private static final long serialVersionUID = 1L;

  /** Objects that lie deeper are rows. */
  private static final int ROWS = 2;

  RowPrinter() {
    super(
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEntrySpacing(Separators.Spacing.NONE));
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    indentObjectsWith(indenter);
    indentArraysWith(indenter);
  }

  @Override
  public void beforeObjectEntries(JsonGenerator json) throws IOException {
    if (_nesting <= ROWS) {
      super.beforeObjectEntries(json);
    }
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
    if (_nesting <= ROWS) {
      super.writeObjectEntrySeparator(json);
    } else {
      json.writeRaw(", ");
    }
  }

  @Override
  public void writeEndObject(JsonGenerator json, int entries) throws IOException {
    if (_nesting <= ROWS) {
      super.writeEndObject(json, entries);
    } else {
      _nesting--;
      json.writeRaw('}');
    }
  }
}
