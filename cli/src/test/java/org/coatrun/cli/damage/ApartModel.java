package org.coatrun.cli.damage;

/**
 * A model whose elements stand ten metres apart and share nothing but the units, the storey and the
 * axes of the world: four members and a deck, each with all that is commonly said of one.
 */
final class ApartModel {

  /** Numbers of the elements; each has the hundreds to itself. */
  static final int[] ELEMENTS = {1000, 2000, 3000, 4000, 5000};

  private static final String HEAD =
      """
      ISO-10303-21;
      HEADER;
      FILE_DESCRIPTION((''),'2;1');
      FILE_NAME('','',(''),(''),'','','');
      FILE_SCHEMA(('IFC4'));
      ENDSEC;
      DATA;
      #1=IFCPROJECT('0000000000000000000001',$,'P',$,$,$,$,(#9),#3);
      #2=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
      #3=IFCUNITASSIGNMENT((#2));
      #9=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#13,$);
      #10=IFCCARTESIANPOINT((0.,0.,0.));
      #11=IFCDIRECTION((0.,0.,1.));
      #13=IFCAXIS2PLACEMENT3D(#10,$,$);
      #16=IFCLOCALPLACEMENT($,#13);
      #17=IFCBUILDING('0000000000000000000017',$,'B',$,$,#16,$,$,.ELEMENT.,$,$,$);
      #18=IFCBUILDINGSTOREY('0000000000000000000018',$,'Level 1',$,$,#16,$,$,.ELEMENT.,0.);
      #19=IFCRELAGGREGATES('0000000000000000000019',$,$,$,#1,(#17));
      #20=IFCRELAGGREGATES('0000000000000000000020',$,$,$,#17,(#18));
      """;

  /** %1$d is the hundreds, %2$s the entity, %3$s its name, %4$d metres aside. */
  private static final String ELEMENT =
      """
      #%1$d00=%2$s('000000000000000000%1$d00',$,'%3$s',$,'T%1$d',#%1$d01,#%1$d10,'M%1$d',$);
      #%1$d01=IFCLOCALPLACEMENT(#16,#%1$d02);
      #%1$d02=IFCAXIS2PLACEMENT3D(#%1$d03,#%1$d04,#%1$d05);
      #%1$d03=IFCCARTESIANPOINT((%4$d000.,0.,3000.));
      #%1$d04=IFCDIRECTION((1.,0.,0.));
      #%1$d05=IFCDIRECTION((0.,1.,0.));
      #%1$d10=IFCPRODUCTDEFINITIONSHAPE($,$,(#%1$d11));
      #%1$d11=IFCSHAPEREPRESENTATION(#9,'Body','MappedRepresentation',(#%1$d12));
      #%1$d12=IFCMAPPEDITEM(#%1$d13,#%1$d15);
      #%1$d13=IFCREPRESENTATIONMAP(#%1$d17,#%1$d14);
      #%1$d14=IFCSHAPEREPRESENTATION(#9,'Body','Clipping',(#%1$d20));
      #%1$d15=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#%1$d16,$,$);
      #%1$d16=IFCCARTESIANPOINT((0.,0.,0.));
      #%1$d17=IFCAXIS2PLACEMENT3D(#%1$d16,$,$);
      #%1$d20=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#%1$d21,#%1$d30);
      #%1$d21=IFCEXTRUDEDAREASOLID(#%1$d22,#%1$d24,#%1$d25,4000.);
      #%1$d22=IFCISHAPEPROFILEDEF(.AREA.,'W12X26',#%1$d23,165.,310.,5.8,9.7,12.,$,$);
      #%1$d23=IFCAXIS2PLACEMENT2D(#%1$d26,$);
      #%1$d24=IFCAXIS2PLACEMENT3D(#%1$d27,$,$);
      #%1$d25=IFCDIRECTION((0.,0.,1.));
      #%1$d26=IFCCARTESIANPOINT((0.,0.));
      #%1$d27=IFCCARTESIANPOINT((0.,0.,0.));
      #%1$d30=IFCHALFSPACESOLID(#%1$d31,.F.);
      #%1$d31=IFCPLANE(#%1$d32);
      #%1$d32=IFCAXIS2PLACEMENT3D(#%1$d33,$,$);
      #%1$d33=IFCCARTESIANPOINT((0.,0.,3500.));
      #%1$d40=IFCMATERIAL('Steel S355',$,$);
      #%1$d41=IFCRELASSOCIATESMATERIAL('000000000000000000%1$d41',$,$,$,(#%1$d00),#%1$d40);
      #%1$d42=IFCBEAMTYPE('000000000000000000%1$d42',$,'W12X26',$,$,$,$,$,$,.BEAM.);
      #%1$d43=IFCRELDEFINESBYTYPE('000000000000000000%1$d43',$,$,$,(#%1$d00),#%1$d42);
      #%1$d50=IFCPROPERTYSINGLEVALUE('FireRating',$,IFCLABEL('2 h'),$);
      #%1$d51=IFCPROPERTYSET('000000000000000000%1$d51',$,'Pset_BeamCommon',$,(#%1$d50));
      #%1$d52=IFCRELDEFINESBYPROPERTIES('000000000000000000%1$d52',$,$,$,(#%1$d00),#%1$d51);
      #%1$d53=IFCQUANTITYLENGTH('Length',$,$,3500.,$);
      #%1$d54=IFCELEMENTQUANTITY('000000000000000000%1$d54',$,'Qto_BeamBaseQuantities',$,$,(#%1$d53));
      #%1$d55=IFCRELDEFINESBYPROPERTIES('000000000000000000%1$d55',$,$,$,(#%1$d00),#%1$d54);
      #%1$d60=IFCOPENINGELEMENT('000000000000000000%1$d60',$,'O',$,$,#%1$d61,#%1$d62,$,.OPENING.);
      #%1$d61=IFCLOCALPLACEMENT(#%1$d01,#%1$d17);
      #%1$d62=IFCPRODUCTDEFINITIONSHAPE($,$,(#%1$d63));
      #%1$d63=IFCSHAPEREPRESENTATION(#9,'Body','SweptSolid',(#%1$d64));
      #%1$d64=IFCEXTRUDEDAREASOLID(#%1$d65,#%1$d66,#%1$d25,300.);
      #%1$d65=IFCCIRCLEPROFILEDEF(.AREA.,$,$,40.);
      #%1$d66=IFCAXIS2PLACEMENT3D(#%1$d67,#%1$d68,#%1$d25);
      #%1$d67=IFCCARTESIANPOINT((-150.,0.,1000.));
      #%1$d68=IFCDIRECTION((1.,0.,0.));
      #%1$d69=IFCRELVOIDSELEMENT('000000000000000000%1$d69',$,$,$,#%1$d00,#%1$d60);
      #%1$d70=IFCRELCONTAINEDINSPATIALSTRUCTURE('000000000000000000%1$d70',$,$,$,(#%1$d00),#18);
      """;

  private static final String[] KINDS = {
    "IFCBEAM", "IFCCOLUMN", "IFCMEMBER", "IFCCOLUMN", "IFCSLAB"
  };

  private ApartModel() {}

  static String text() {
    StringBuilder text = new StringBuilder(HEAD);
    for (int i = 0; i < ELEMENTS.length; i++) {
      String name = KINDS[i].equals("IFCSLAB") ? "Metal deck" : "E" + i;
      text.append(ELEMENT.formatted(ELEMENTS[i] / 100, KINDS[i], name, 10 * i));
    }
    return text + "ENDSEC;\nEND-ISO-10303-21;\n";
  }
}
