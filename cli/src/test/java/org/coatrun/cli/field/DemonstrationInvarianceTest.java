package org.coatrun.cli.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.coatrun.geometry.surface.Progress;
import org.coatrun.geometry.surface.SurfaceOptions;
import org.coatrun.geometry.surface.SurfaceTakeoff;
import org.coatrun.ifcimport.read.IfcImport;
import org.coatrun.ifcimport.read.ImportOptions;
import org.coatrun.ifcimport.read.ProgressListener;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.TakeoffAssembly;
import org.coatrun.shared.estimate.Weight;
import org.coatrun.shared.model.Building;
import org.coatrun.testmodels.ifc.LengthUnit;
import org.coatrun.testmodels.ifc.ModelOptions;
import org.coatrun.testmodels.ifc.Schema;
import org.coatrun.testmodels.scenario.DemonstrationBuilding;
import org.coatrun.testmodels.scenario.Models;
import org.coatrun.testmodels.shape.Vec3;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demonstration building measures the same in any unit and schema, turned and moved. */
class DemonstrationInvarianceTest {

  private static final double SAME = 1e-6;

  /** The first so many quantities are areas, held against the whole of the element's faces. */
  private static final int AREAS = 4;

  /**
   * IFC2X3 has no tapered sweep: there the outriggers stand as faces, their fillets as strips, and
   * cover a little more of the plates that they touch.
   */
  private static final List<String> TAPERED = List.of("Outrigger", "Cap plate");

  private static final double FLAT_FILLETS = 0.01;

  @TempDir private static Path folder;
  private static Map<String, double[]> plain;

  @BeforeAll
  static void measureAsItStands() throws IOException {
    plain = lines(ModelOptions.DEFAULT);
    assertThat(plain).hasSizeGreaterThan(700);
  }

  static List<ModelOptions> otherwise() {
    return List.of(
        ModelOptions.DEFAULT.with(Schema.IFC2X3).with(LengthUnit.INCH),
        ModelOptions.DEFAULT
            .with(Schema.IFC4X3_ADD2)
            .with(LengthUnit.METRE)
            .placed(33, 0, new Vec3(4000, -7000, 12)),
        ModelOptions.DEFAULT.with(LengthUnit.FOOT).placed(-71, 0, Vec3.ZERO));
  }

  /** Element by element, by their GlobalIds: faces, ends, what is covered and exposed, weight. */
  @ParameterizedTest
  @MethodSource("otherwise")
  void eachElementMeasuresTheSame(ModelOptions options) throws IOException {
    Map<String, double[]> other = lines(options);
    assertThat(other.keySet()).isEqualTo(plain.keySet());
    double tapered = options.schema() == Schema.IFC2X3 ? FLAT_FILLETS : SAME;
    var apart = new ArrayList<String>();
    var sum = new double[2][];
    for (String key : plain.keySet()) {
      double[] a = plain.get(key);
      double[] b = other.get(key);
      double same = TAPERED.stream().anyMatch(key::endsWith) ? tapered : SAME;
      for (int i = 0; i < a.length; i++) {
        if (Math.abs(a[i] - b[i]) > same * (i < AREAS ? a[0] : a[i])) {
          apart.add(key + ": quantity " + i + " is " + a[i] + " and " + b[i]);
        }
      }
      sum[0] = plus(sum[0], a);
      sum[1] = plus(sum[1], b);
    }
    assertThat(apart).isEmpty();
    for (int i = 0; i < sum[0].length; i++) {
      double same = tapered > SAME ? 1e-4 : SAME;
      assertThat(sum[1][i]).isCloseTo(sum[0][i], within(same * sum[0][i]));
    }
  }

  private static double[] plus(double[] sum, double[] more) {
    double[] out = more.clone();
    for (int i = 0; sum != null && i < out.length; i++) {
      out[i] += sum[i];
    }
    return out;
  }

  private static Map<String, double[]> lines(ModelOptions options) throws IOException {
    Path file = folder.resolve("model.ifc");
    Models.stream(new DemonstrationBuilding(), options, file);
    Building building =
        IfcImport.read(List.of(file), ImportOptions.DEFAULT, ProgressListener.silent());
    Takeoff takeoff =
        TakeoffAssembly.assemble(
            building,
            SurfaceTakeoff.measure(building, SurfaceOptions.defaults(), Progress.silent()));
    var all = new TreeMap<String, double[]>();
    takeoff.members().forEach(l -> add(l, all));
    takeoff.decks().forEach(l -> add(l, all));
    return all;
  }

  private static void add(Line line, Map<String, double[]> all) {
    line.outcome().quantities().ifPresent(q -> all.put(key(line), numbers(q)));
  }

  private static String key(Line line) {
    return line.identity().guid() + " " + line.identity().name();
  }

  private static double[] numbers(Quantities q) {
    return new double[] {
      q.ledger().body().squareMetres(),
      q.ledger().ends().squareMetres(),
      q.ledger().covered().squareMetres(),
      q.ledger().exposed().squareMetres(),
      q.volume().cubicMetres(),
      q.weight().map(Weight::mass).map(m -> m.kilograms()).orElse(0.0)
    };
  }
}
