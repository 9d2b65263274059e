package org.coatrun.testmodels.ifc;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.StepWriter;
import org.coatrun.testmodels.step.Token;

/**
 * Writes one IFC file: hands out the writers for geometry, profiles, solids, products, properties
 * and materials, which share the file, the unit and the schema.
 *
 * <p>All lengths that come in are metres. Records are streamed; only numbers of records that will
 * be referred to again are kept.
 */
public final class IfcWriter implements Closeable {
  private static final String TIMESTAMP = "2026-01-01T00:00:00";
  private static final int EPOCH_SECONDS = 1767225600;

  private final StepWriter step;
  private final ModelOptions options;
  private final GlobalIds ids;
  private final Ref history;
  private final Contexts contexts;
  private final Geometry geometry = new Geometry(this);
  private final Profiles profiles = new Profiles(this);
  private final Solids solids = new Solids(this);
  private final Products products = new Products(this);
  private final Properties properties = new Properties(this);
  private final Materials materials = new Materials(this);
  private final Spatial spatial = new Spatial(this);

  /** Starts a file. */
  public IfcWriter(OutputStream out, ModelOptions options, String fileName) {
    this.options = options;
    this.step = new StepWriter(out, options.schema().name(), fileName, TIMESTAMP);
    this.ids = new GlobalIds(options.seed());
    this.history = ownerHistory();
    this.contexts = new Contexts(this);
  }

  private Ref ownerHistory() {
    Object none = Token.UNSET;
    Ref person = add("IFCPERSON", none, "Modeller", none, none, none, none, none, none);
    Ref firm = add("IFCORGANIZATION", none, "Sample models", none, none, none);
    Ref both = add("IFCPERSONANDORGANIZATION", person, firm, none);
    Ref program = add("IFCAPPLICATION", firm, "1", "Sample model generator", "test-models");
    Token added = Token.of("ADDED");
    return add("IFCOWNERHISTORY", both, program, none, added, none, none, none, EPOCH_SECONDS);
  }

  /** Adds any record. */
  public Ref add(String entity, Object... attributes) {
    return step.add(entity, attributes);
  }

  /** Adds a record that is no element but has an identity: a relation, a set, a type. */
  Ref addRooted(String entity, Object... rest) {
    Object[] all = new Object[rest.length + 2];
    all[0] = ids.other();
    all[1] = history;
    System.arraycopy(rest, 0, all, 2, rest.length);
    return step.add(entity, all);
  }

  String nextElementId() {
    return ids.element();
  }

  Ref history() {
    return history;
  }

  Contexts contexts() {
    return contexts;
  }

  /** Returns a length in the file's unit. */
  public double length(double metres) {
    return metres / options.unit().metres();
  }

  /** Returns an angle in the file's unit: degrees in inch and foot files, else radians. */
  double angle(double radians) {
    return options.unit().isConverted() ? Math.toDegrees(radians) : radians;
  }

  /** Returns an area in the file's unit: square feet in foot files, else square metres. */
  double area(double squareMetres) {
    double foot = LengthUnit.FOOT.metres();
    return options.unit() == LengthUnit.FOOT ? squareMetres / (foot * foot) : squareMetres;
  }

  /** Returns a volume in the file's unit: cubic feet in foot files, else cubic metres. */
  double volume(double cubicMetres) {
    double foot = LengthUnit.FOOT.metres();
    return options.unit() == LengthUnit.FOOT ? cubicMetres / (foot * foot * foot) : cubicMetres;
  }

  /** Returns how the file is written. */
  public ModelOptions options() {
    return options;
  }

  /** Tells whether the schema is IFC2X3. */
  public boolean isOld() {
    return options.schema().isOld();
  }

  public Geometry geometry() {
    return geometry;
  }

  public Profiles profiles() {
    return profiles;
  }

  public Solids solids() {
    return solids;
  }

  public Products products() {
    return products;
  }

  public Properties properties() {
    return properties;
  }

  public Materials materials() {
    return materials;
  }

  public Spatial spatial() {
    return spatial;
  }

  /** Returns how many records have been written. */
  public int records() {
    return step.records();
  }

  /** Returns how many bytes have been written. */
  public long bytes() {
    return step.bytes();
  }

  @Override
  public void close() throws IOException {
    step.close();
  }
}
