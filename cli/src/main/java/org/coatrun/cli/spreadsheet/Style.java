package org.coatrun.cli.spreadsheet;

/** The looks of cells: the place of each in this list is its number in the workbook. */
public enum Style {
  PLAIN(0, Font.PLAIN, Fill.NONE, Lines.NONE, false),
  /** Text over several lines. */
  WRAPPED(0, Font.PLAIN, Fill.NONE, Lines.NONE, true),
  TITLE(0, Font.TITLE, Fill.NONE, Lines.NONE, false),
  HEAD(0, Font.BOLD, Fill.HEAD, Lines.UNDER, true),
  BOLD(0, Font.BOLD, Fill.NONE, Lines.NONE, false),
  WHOLE(3, Font.PLAIN, Fill.NONE, Lines.NONE, false),
  TENTH(164, Font.PLAIN, Fill.NONE, Lines.NONE, false),
  HUNDREDTH(4, Font.PLAIN, Fill.NONE, Lines.NONE, false),
  THOUSANDTH(165, Font.PLAIN, Fill.NONE, Lines.NONE, false),
  PERCENT(10, Font.PLAIN, Fill.NONE, Lines.NONE, false),
  /** Cells that are there to be changed. */
  INPUT(4, Font.INPUT, Fill.INPUT, Lines.ALL, false),
  INPUT_PERCENT(10, Font.INPUT, Fill.INPUT, Lines.ALL, false),
  /** Sums. */
  SUM_TEXT(0, Font.BOLD, Fill.NONE, Lines.OVER, false),
  SUM_WHOLE(3, Font.BOLD, Fill.NONE, Lines.OVER, false),
  SUM_TENTH(164, Font.BOLD, Fill.NONE, Lines.OVER, false),
  SUM_HUNDREDTH(4, Font.BOLD, Fill.NONE, Lines.OVER, false),
  SUM_THOUSANDTH(165, Font.BOLD, Fill.NONE, Lines.OVER, false);

  /** Fonts, by their number. */
  enum Font {
    PLAIN,
    BOLD,
    TITLE,
    INPUT
  }

  /** Fills, by their number; the second is one that the standard keeps for itself. */
  enum Fill {
    NONE,
    RESERVED,
    HEAD,
    INPUT
  }

  /** Borders, by their number. */
  enum Lines {
    NONE,
    UNDER,
    OVER,
    ALL
  }

  private final int format;
  private final Font font;
  private final Fill fill;
  private final Lines lines;
  private final boolean wrapped;

  Style(int format, Font font, Fill fill, Lines lines, boolean wrapped) {
    this.format = format;
    this.font = font;
    this.fill = fill;
    this.lines = lines;
    this.wrapped = wrapped;
  }

  /** The style of a sum of cells of this style. */
  public Style sum() {
    return switch (this) {
      case WHOLE -> SUM_WHOLE;
      case TENTH -> SUM_TENTH;
      case HUNDREDTH -> SUM_HUNDREDTH;
      case THOUSANDTH -> SUM_THOUSANDTH;
      default -> SUM_TEXT;
    };
  }

  /** Its number in the workbook: styles are written in the order of this list. */
  @SuppressWarnings("EnumOrdinal") // The order is what the number means.
  int number() {
    return ordinal();
  }

  /** This style as an {@code xf} of the standard. */
  @SuppressWarnings("EnumOrdinal") // As above.
  String xf() {
    String alignment = wrapped ? "<alignment vertical=\"top\" wrapText=\"1\"/>" : "";
    return "<xf numFmtId=\"%d\" fontId=\"%d\" fillId=\"%d\" borderId=\"%d\" xfId=\"0\""
            .formatted(format, font.ordinal(), fill.ordinal(), lines.ordinal())
        + " applyNumberFormat=\"1\" applyFont=\"1\" applyFill=\"1\" applyBorder=\"1\""
        + (wrapped ? " applyAlignment=\"1\">" + alignment + "</xf>" : "/>");
  }
}
