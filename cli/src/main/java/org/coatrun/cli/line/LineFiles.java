package org.coatrun.cli.line;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.coatrun.cli.drawing.DrawingJob;
import org.coatrun.cli.drawing.Drawings;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Column;
import org.coatrun.cli.report.CsvTable;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.shape.Vec3;

/** The files of a line. */
public final class LineFiles {

  private LineFiles() {}

  /**
   * Writes routes.csv, floors.csv, spots.csv, hardware.csv, moves.csv, line.json and the drawings;
   * findings and basis are the caller's, who may have more to say.
   *
   * @return the names of the drawings
   */
  public static List<String> write(OutputFolder folder, LineResult result, UnitSystem units) {
    Vec3 origin = result.building().origin();
    folder.write(
        "routes.csv",
        w ->
            CsvTable.write(
                w,
                marked(LineColumns.routes(result.request(), origin), result),
                CellRow.of(result.plan())));
    folder.write(
        "floors.csv",
        w -> CsvTable.write(w, marked(FloorColumns.of(result), result), result.plan().floors()));
    folder.write(
        "spots.csv",
        w ->
            CsvTable.write(
                w,
                marked(LineColumns.spots(result.request(), origin), result),
                result.plan().comparison()));
    folder.write(
        "hardware.csv",
        w ->
            CsvTable.write(
                w, marked(LineColumns.hardware(), result), HardwareRow.of(result.plan())));
    folder.write(
        "moves.csv",
        w -> CsvTable.write(w, marked(LineColumns.moves(), result), result.plan().moves()));
    folder.write("line.json", w -> LineJson.write(w, result));
    return Drawings.write(
        folder,
        new DrawingJob(
            result.building().name(), units, result.request(), result.plan(), result.cautions()));
  }

  private static <T> List<Column<T>> marked(List<Column<T>> columns, LineResult result) {
    return Cautions.marked(columns, result.cautions());
  }

  /** What the numbers mean, and the cautions: basis.txt. */
  public static void basis(Writer writer, LineResult result) throws IOException {
    LineBasis.write(writer, result);
  }
}
