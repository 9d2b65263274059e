package org.coatrun.cli.page;

import java.util.List;
import java.util.stream.Stream;

/** What the page knows of elements and findings by a takeoff. */
final class TakeoffColumns {

  private static final String SURFACES = "Surfaces";
  private static final String FACTOR = "Section factor";
  private static final String MODEL = "In the model";

  /** Of elements; storeys in their order from the lowest up, and what a bid adds. */
  static List<PageColumn> elements(List<String> storeys, List<PageColumn> bid) {
    return Stream.of(first(storeys), bid, LAST).flatMap(List::stream).toList();
  }

  private static List<PageColumn> first(List<String> storeys) {
    return List.of(
        PageColumn.text("mark", "Mark"),
        PageColumn.text("section", "Section").membersOnly().filtered(),
        PageColumn.text("storey", "Storey").categories(storeys.toArray(String[]::new)),
        PageColumn.text("role", "Role").membersOnly().filtered().categories(),
        PageColumn.number("length", "Length", "length").membersOnly().summed(),
        PageColumn.number("weight", "Weight", "mass").membersOnly().summed(),
        PageColumn.number("exposed", "Exposed", "area").summed().sequence().under(SURFACES),
        PageColumn.number("covered", "Covered", "area").summed().under(SURFACES),
        PageColumn.number("body", "All faces", "area").detailOnly().under(SURFACES),
        PageColumn.number("inside", "Inside", "area").detailOnly().under(SURFACES),
        PageColumn.number("ends", "Ends", "area").detailOnly().under(SURFACES),
        PageColumn.number("holes", "Small holes", "area").detailOnly().under(SURFACES),
        PageColumn.number("heated", "Heated perimeter", "perimeter").membersOnly().under(FACTOR),
        PageColumn.number("factor", "Hp/A", "factor").membersOnly().sequence().under(FACTOR),
        PageColumn.number("wd", "W/D, lb/ft/in", "plain").membersOnly().under(FACTOR));
  }

  private static final List<PageColumn> LAST =
      List.of(
          PageColumn.text("frame", "Frame")
              .membersOnly()
              .filtered()
              .categories("primary", "secondary", "unknown"),
          PageColumn.text("frameReason", "Place in the frame").detailOnly(),
          PageColumn.text("status", "Status")
              .filtered()
              .categories("counted", "left out", "unresolved"),
          PageColumn.text("reason", "Reason").sentences(),
          PageColumn.text("name", "Name").under(MODEL),
          PageColumn.text("class", "Class").detailOnly().under(MODEL),
          PageColumn.text("guid", "GlobalId").detailOnly().under(MODEL));

  static final List<PageColumn> FINDINGS =
      List.of(
          PageColumn.text("code", "Code"),
          PageColumn.text("severity", "Severity"),
          PageColumn.text("sentence", "Finding").sentences(),
          PageColumn.text("remedy", "What to do").sentences());

  private TakeoffColumns() {}
}
