package org.coatrun.ifcimport.part21;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bimserver.emf.IdEObject;
import org.bimserver.emf.IfcModelInterface;
import org.bimserver.emf.MetaDataManager;
import org.bimserver.emf.PackageMetaData;
import org.bimserver.emf.Schema;
import org.bimserver.ifc.step.deserializer.Ifc2x3tc1StepDeserializer;
import org.bimserver.ifc.step.deserializer.Ifc4StepDeserializer;
import org.bimserver.ifc.step.deserializer.IfcStepDeserializer;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Drives the independent reader that ours is compared with; it knows IFC2X3 and IFC4 only. */
@SuppressWarnings("deprecation") // its other way in needs a database
final class ReferenceReader {

  private static final Map<EClass, List<EStructuralFeature>> ATTRIBUTES = new HashMap<>();

  private final MetaDataManager manager;

  ReferenceReader(Path temp) {
    manager = new MetaDataManager(temp);
    manager.init(true);
  }

  /** Whether it has tables for a schema. */
  static boolean knows(String schema) {
    return schema.startsWith("IFC2X3") || schema.equals("IFC4");
  }

  /** Reads a file by the schema that its header names. */
  IfcModelInterface read(Path file, String schema) throws Exception {
    if (!knows(schema)) {
      throw new UnsupportedOperationException("no tables for " + schema);
    }
    boolean old = !schema.equals("IFC4");
    PackageMetaData metaData = manager.getPackageMetaData(old ? "ifc2x3tc1" : "ifc4");
    IfcStepDeserializer deserializer =
        old ? new Ifc2x3tc1StepDeserializer() : new Ifc4StepDeserializer(Schema.IFC4);
    deserializer.init(metaData);
    byte[] bytes = Files.readAllBytes(file);
    String name = file.getFileName().toString();
    IfcModelInterface model =
        deserializer.read(new ByteArrayInputStream(bytes), name, bytes.length, null);
    model.fixInverseMismatches();
    return model;
  }

  /** The attributes of an entity in the order of the file, inverses and helpers left out. */
  static List<EStructuralFeature> attributes(IfcModelInterface model, EClass entity) {
    return ATTRIBUTES.computeIfAbsent(entity, e -> listed(model.getPackageMetaData(), e));
  }

  private static List<EStructuralFeature> listed(PackageMetaData metaData, EClass entity) {
    List<EStructuralFeature> attributes = new ArrayList<>();
    for (EStructuralFeature f : entity.getEAllStructuralFeatures()) {
      if (isAttribute(metaData, entity, f)) {
        attributes.add(f);
      }
    }
    return attributes;
  }

  private static boolean isAttribute(
      PackageMetaData metaData, EClass entity, EStructuralFeature feature) {
    boolean helper =
        feature.getName().endsWith("AsString")
            || feature.getEAnnotation("hidden") != null
            || IdEObject.class.getName().equals(feature.getEContainingClass().getName());
    boolean inverse = feature instanceof EReference r && metaData.isInverse(r);
    return !helper && !inverse && metaData.useForSerialization(entity, feature);
  }
}
