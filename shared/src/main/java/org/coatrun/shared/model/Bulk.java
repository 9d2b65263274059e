package org.coatrun.shared.model;

/** Another solid thing that steel may stand in or touch: footing, pile, encasement. */
public record Bulk(Identity identity, Classification classification, Body body)
    implements Element {}
