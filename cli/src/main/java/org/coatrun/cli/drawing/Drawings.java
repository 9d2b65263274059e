package org.coatrun.cli.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.coatrun.cli.drawing.paper.PdfBook;
import org.coatrun.cli.drawing.paper.SvgPage;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.cli.output.OutputFolder;

/**
 * Draws a line plan: a plan of each floor from the lowest up, then a section through the risers.
 *
 * <p>Every sheet is laid out once and written as SVG and as a page of the PDF, both in true size.
 * The same job gives the same bytes.
 */
public final class Drawings {

  /** The name of the PDF. */
  public static final String PDF = "drawings.pdf";

  private static final int LONGEST_NAME = 40;

  private final DrawingJob job;

  private Drawings(DrawingJob job) {
    this.job = job;
  }

  /**
   * Writes all sheets into a folder: {@code plan-01-level-1.svg} and so on, {@code section.svg} and
   * {@code drawings.pdf}. Without a floor nothing is written.
   *
   * @return the names of the files, in this order
   */
  public static List<String> write(OutputFolder folder, DrawingJob job) {
    List<Sheet> sheets = new Drawings(job).sheets();
    var names = new ArrayList<String>();
    for (Sheet sheet : sheets) {
      String name = sheet.file() + ".svg";
      folder.write(name, out -> svg(sheet).writeTo(out));
      names.add(name);
    }
    if (!sheets.isEmpty()) {
      folder.writeBytes(PDF, out -> pdf(job, sheets, out));
      names.add(PDF);
    }
    return names;
  }

  /** All sheets, laid out. */
  static List<Sheet> sheets(DrawingJob job) {
    return new Drawings(job).sheets();
  }

  private List<Sheet> sheets() {
    int floors = job.plan().floors().size();
    var sheets = new ArrayList<Sheet>();
    if (floors == 0) {
      return sheets;
    }
    Extent extent = Extent.of(job.request());
    Fit fit = Fit.of(job.units(), extent.width(), extent.height());
    var plan = new PlanSheet(job, fit, extent);
    for (int f = 0; f < floors; f++) {
      String storey = job.plan().floors().get(f).outline().storey();
      SheetTitle title = title("Line plan, " + storey, f + 1, floors + 1);
      sheets.add(plan.draw(f, title, file(f, floors, storey)));
    }
    SheetTitle last = title("Section through the risers", floors + 1, floors + 1);
    sheets.add(new SectionSheet(job).draw(last, fit.paper()));
    return sheets;
  }

  private SheetTitle title(String subject, int number, int of) {
    return new SheetTitle(job.building(), subject, number, of);
  }

  private static SvgPage svg(Sheet sheet) {
    SvgPage page = new SvgPage(sheet.paper(), sheet.title());
    sheet.marks().replay(page);
    return page;
  }

  private static void pdf(DrawingJob job, List<Sheet> sheets, OutputStream out) throws IOException {
    String title = job.building().isBlank() ? "Line plan" : job.building() + ", line plan";
    try (PdfBook book = new PdfBook(title, standIns(job))) {
      for (Sheet sheet : sheets) {
        book.add(sheet.paper(), sheet.marks());
      }
      book.writeTo(out);
    }
  }

  /** Storeys whose names the typeface lacks letters for go by number. */
  private static Map<String, String> standIns(DrawingJob job) {
    var standIns = new TreeMap<String, String>();
    for (int f = 0; f < job.plan().floors().size(); f++) {
      String storey = job.plan().floors().get(f).outline().storey();
      if (!Typeface.get().shows(storey)) {
        standIns.put(storey, "storey " + (f + 1));
      }
    }
    return standIns;
  }

  /** A name that every file system takes and that sorts as the floors do. */
  private static String file(int floor, int floors, String storey) {
    int digits = Math.max(2, String.valueOf(floors).length());
    String number = Measure.format("%0" + digits + "d", floor + 1);
    String plain =
        storey.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String cut = plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
    return "plan-" + number + (cut.isEmpty() ? "" : "-" + cut);
  }
}
